// What decides whether water condenses, and where it does first.
#pragma once

#include <optional>

#include "core/climate/steady.hpp"

namespace loam::climate {

// Humidity ratio of the lower air, likely, kg/kg. nullopt where the case did not converge.
std::optional<double> lower_humidity_ratio(const CaseResult& result);

// Likely dew point of the lower air, degC. nullopt: the case has no solution.
std::optional<double> lower_dew_point_c(const CaseResult& result);

// The coldest place of the inside of walls and top.
struct ColdPlace {
    Plane plane = Plane::front;
    Point at;
    double inside_c = 0.0;
    friend bool operator==(const ColdPlace&, const ColdPlace&) = default;
};
// nullopt: nothing is closed, or the case has no fields of them.
std::optional<ColdPlace> coldest_place(const CaseResult& result);

} // namespace loam::climate
