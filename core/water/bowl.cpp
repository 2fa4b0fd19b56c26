#include "core/water/bowl.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace loam::water {

std::optional<double> coil_diameter_m(double length_m, double mass_kg)
{
    if (!(length_m > 0.0) || !(mass_kg > 0.0)) {
        return std::nullopt;
    }
    constexpr double density_kg_m3 = 1000.0;
    const double thickness_m = std::sqrt(4.0 * mass_kg / (density_kg_m3 * std::numbers::pi * length_m));
    return std::sqrt(4.0 * length_m * thickness_m / std::numbers::pi);
}

Sides missing(const Sides& bowl, const Sides& least)
{
    return {std::max(0.0, least.long_m - std::max(bowl.long_m, bowl.short_m)),
            std::max(0.0, least.short_m - std::min(bowl.long_m, bowl.short_m))};
}

} // namespace loam::water
