// A day of invented temperatures: lit through its first half, warmest at noon, the cool side 20, 25, 26, 22, 19 degC.
#pragma once

#include <string>
#include <tuple>

#include "core/assess/assessment.hpp"

namespace loam {

inline climate::CoursePoint invented_point(double hour, bool lit, double cool_c)
{
    climate::CoursePoint point;
    point.hour = hour;
    point.lamps_on = lit;
    point.room_c = 18.0;
    point.basking_c = cool_c + 15.0;
    point.warm_c = cool_c + 5.0;
    point.cool_c = cool_c;
    point.hottest_c = cool_c + 20.0;
    point.coldest_c = cool_c - 2.0;
    point.digging_c = cool_c + 6.0;
    return point;
}

inline assess::CourseResult invented_course(const std::string& id)
{
    assess::CourseResult result;
    result.id = id;
    result.basking_spread_k = {-3.0, 0.0, 4.0};
    result.warm_spread_k = {-2.0, 0.0, 2.0};
    result.cool_spread_k = {-1.0, 0.0, 1.0};
    result.course.complete = true;
    result.course.energy_kwh = 1.5;
    for (const auto& [hour, lit, cool_c] :
         {std::tuple{0.0, true, 20.0}, std::tuple{6.0, true, 25.0}, std::tuple{12.0, true, 26.0},
          std::tuple{18.0, false, 22.0}, std::tuple{24.0, false, 19.0}}) {
        result.course.points.push_back(invented_point(hour, lit, cool_c));
    }
    return result;
}

} // namespace loam
