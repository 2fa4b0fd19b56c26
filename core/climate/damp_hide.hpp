// The air inside a hide that is kept moist.
#pragma once

#include <optional>

#include "core/explain.hpp"

namespace loam::climate {

struct DampHide {
    double floor_m2 = 0.0;       // moist, under its roof
    Range entrance_m2;           // its opening, as high as it is wide
    Range film_w_m2k;            // of the still air in it over its floor
    double inside_c = 0.0;       // as warm as the ground it stands on
    double humidity_ratio = 0.0; // of the air before its entrance, kg/kg
};

// What: relative humidity, 0..1, of the air in the hide.
// Method: vapour from the moist floor by the Lewis relation, h / cp, against what the entrance exchanges: Cd/3 A
// sqrt(g h drho/rho) each way, driven by how much lighter moist air is than drier air (doorway_coefficient() and its
// source), no draught. Ends combine as independent.
// Range: 0 to 60 degC, floor, entrance and film above 0; else nullopt. An animal in it, which warms and moistens it, is
// left out, as is a floor that dries.
std::optional<Range> damp_hide_humidity(const DampHide& hide);

} // namespace loam::climate
