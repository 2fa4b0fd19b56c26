// Materials of shells, covers and beds, and what devices do with their watts.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"
#include "core/json/node.hpp"

namespace loam::catalog {

// A range that keeps its source.
struct Spread {
    double low = 0.0;
    double likely = 0.0;
    double high = 0.0;
    Source source;
    Range range() const { return {low, likely, high}; }
    friend bool operator==(const Spread&, const Spread&) = default;
};

enum class MaterialUse { panel, cover, substrate, underlay };

// Conductivity and heat capacity are linear in the water fraction theta: k = k_dry + k_per_theta * theta.
struct Material {
    std::string id;
    std::string name;
    std::vector<MaterialUse> uses;
    Spread conductivity_w_mk;                          // dry
    std::optional<Spread> conductivity_per_water_w_mk; // substrates
    Spread density_kg_m3;                              // dry, in the bed
    Spread specific_heat_j_kgk;                        // dry
    Spread emissivity;                                 // long-wave
    std::optional<Spread> solar_absorptance;           // of lamp light (visible and near infrared)
    std::optional<Spread> lamp_transmittance;          // of lamp light through a pane as sold; UV-B is taken as 0
    std::optional<double> default_thickness_m;
    std::optional<Spread> air_permeability_share; // of a cover: share of the open area that it leaves (towel, foil 0)
    bool combustible = false;
    // Substrates
    std::optional<Spread> settling;            // share of the filled depth lost
    std::optional<Spread> water_fraction_damp; // volume share kept damp
    std::optional<Spread> water_fraction_dry;  // the same left to dry out under a lamp
    std::optional<Spread> surface_wetness;     // evaporating share of a damp surface, 0..1
    std::optional<Spread> replace_months;
    json::Extras extras;
    friend bool operator==(const Material&, const Material&) = default;
};

enum class LoadKind { resistive, ballast, electronic, motor };

// What a kind of device does with its watts. Shares of electrical input; they sum to at most 1.
struct DeviceTraits {
    std::string kind;                    // one of plan::device_kind_names
    std::optional<Spread> radiant_share; // visible and infrared into the beam
    std::optional<Spread> convective_share;
    std::optional<Spread> beam_deg;  // where the plan does not say
    std::optional<Spread> power_w;   // where the plan does not say
    std::optional<Spread> flux_w_m2; // mats
    std::optional<Spread> life_hours;
    std::optional<Spread> life_months;
    std::optional<Spread> uv_decay_per_1000_h; // share of UV lost
    Spread clearance_m;                        // from combustibles where the maker is silent
    LoadKind load = LoadKind::resistive;
    bool dimmable = false;
    bool emits_light = false;
    bool emits_uv = false;
    bool burns_at_touch = false; // its own surface
    std::vector<std::string> notes;
    json::Extras extras;
    friend bool operator==(const DeviceTraits&, const DeviceTraits&) = default;
};

// The bracket used where the plan is silent, or the spread of a coefficient, with the reason for it.
struct Assumption {
    std::string id; // for example "room.winter.day_c", "mesh.open_fraction", "model.film_factor"
    std::string unit;
    Spread spread;
    std::string reason;
    json::Extras extras;
    friend bool operator==(const Assumption&, const Assumption&) = default;
};

} // namespace loam::catalog
