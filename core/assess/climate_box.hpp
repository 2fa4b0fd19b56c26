// From the plan and the catalog to the box that the climate balance solves.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "core/assess/context.hpp"
#include "core/climate/box.hpp"

namespace loam::assess {

// Why no balance can be set up: a code for label `reason` of heat.not-computable, and the element.
struct NotComputable {
    std::string reason; // material-not-known, material-incomplete, power-not-known, assumption-missing
    std::string where;
    friend bool operator==(const NotComputable&, const NotComputable&) = default;
};

// A device that is there to heat; a strip of LEDs or a UV tube is not.
struct HeatSource {
    std::string id;
    plan::DeviceKind kind = plan::DeviceKind::flood_lamp;
    bool takes_dimmer = false;
    bool takes_thermostat = false; // of some kind; one that shines takes a dimming one only
    bool shines = false;
    friend bool operator==(const HeatSource&, const HeatSource&) = default;
};

struct ClimateBox {
    climate::Box box;
    std::vector<std::string> free_dimmers; // devices whose dimmer level the plan leaves open
    double clearance_m = 0.0;              // that a cover keeps from any lamp: the largest stated or usual one
    std::vector<HeatSource> heaters;
    std::vector<std::string>
        solid_perches; // rocks and logs, of which a lower one would serve as well; a hide would not
    friend bool operator==(const ClimateBox&, const ClimateBox&) = default;
};

std::variant<ClimateBox, NotComputable> climate_box(const Context& context, const Housed& housed, Notes& notes);

// The cases that are solved for every box: winter and summer, day and night, the heat wave; and the stuck mat where
// there is one. A case whose room is not known is left out.
std::vector<climate::Case> climate_cases(const Context& context, const climate::Box& box, Notes& notes);

// A sheet of a material; nullopt where the material's entry lacks what a sheet needs.
std::optional<climate::Sheet> sheet_of(const catalog::Material& material, double thickness_m);

// The thickness given, else the material's usual one with its bracket, written down as assumed.
std::optional<Range> thickness_of(Notes& notes, const catalog::Catalog& catalog, const catalog::Material& material,
                                  std::optional<double> given_m, std::string pointer);

} // namespace loam::assess
