#include "core/climate/domes.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/climate/geometry.hpp"

namespace loam::climate {

double under_domes_m2(const Box& box, const Rect& part)
{
    double sum_m2 = 0.0;
    for (const Lamp& lamp : box.lamps) {
        if (!lamp.above_top || lamp.dome_m <= 0.0)
            continue;
        const double side_m = lamp.dome_m * std::sqrt(std::numbers::pi) / 2.0;
        sum_m2 += overlap_m2({lamp.at.x_m - 0.5 * side_m, lamp.at.y_m - 0.5 * side_m, side_m, side_m}, part);
    }
    return std::min(sum_m2, part.length_m * part.width_m);
}

} // namespace loam::climate
