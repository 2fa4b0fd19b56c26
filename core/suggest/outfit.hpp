// What a suggestion chooses for one enclosure, and the plan that wears it.
#pragma once

#include <optional>
#include <string>

#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::suggest {

struct Heater {
    plan::DeviceKind kind = plan::DeviceKind::radiant_panel;
    double power_w = 0.0;             // as sold
    std::optional<double> setpoint_c; // of its thermostat; absent while a search sizes it
    friend bool operator==(const Heater&, const Heater&) = default;
};

struct Lamp {
    double power_w = 0.0; // as sold
    bool dimmed = false;  // by a dimmer that the keeper turns with the season
    friend bool operator==(const Lamp&, const Lamp&) = default;
};

struct Outfit {
    std::optional<Lamp> lamp;    // over the warm side, timed
    std::optional<Heater> day;   // over the warm side, timed; a mat on its wall, always on
    std::optional<Heater> night; // over the warm side, always on
    double covered_share = 0.0;  // of the top
    double misting_l_per_day = 0.0;
    friend bool operator==(const Outfit&, const Outfit&) = default;
};

// Ids that the new devices get, so that a search can find them again in its results.
struct DeviceIds {
    std::string lamp;
    std::string day;
    std::string night;
};
DeviceIds device_ids(const plan::Plan& plan);

// The enclosure with another size: its fittings, and the devices that stay, at the same share of length and width,
// those near the top as far from it as before. Readings are dropped: they were taken in another box.
void resize(plan::Enclosure& enclosure, double length_m, double width_m, double height_m);

// The plan with that outfit in the enclosure `place` in the place of what heats there now; what gives UV stays, as do
// misters, fans and plain lights. Readings are dropped. Covers keep clear of what is hot, so that they may take less
// than the share asks for. nullopt: too little is known of the enclosure for a climate.
std::optional<plan::Plan> dressed(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place,
                                  const Outfit& outfit);

// How deep the bed is, m.
double bed_depth_m(const plan::Enclosure& enclosure);

} // namespace loam::suggest
