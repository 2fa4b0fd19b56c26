#include "core/season/winter_share.hpp"

#include <cmath>
#include <numbers>

namespace loam::season {

std::optional<Hemisphere> hemisphere_of(double latitude_deg)
{
    if (!(std::abs(latitude_deg) <= 90.0) || latitude_deg == 0.0) {
        return std::nullopt;
    }
    return latitude_deg > 0.0 ? Hemisphere::north : Hemisphere::south;
}

std::optional<double> winter_share(Hemisphere hemisphere, int day_of_year, double lag_d)
{
    if (day_of_year < 1 || day_of_year > 366) {
        return std::nullopt;
    }
    constexpr double december_solstice = 355.0;
    constexpr double june_solstice = 172.0;
    const double coldest = (hemisphere == Hemisphere::north ? december_solstice : june_solstice) + lag_d;
    return (1.0 + std::cos(2.0 * std::numbers::pi * (day_of_year - coldest) / 365.0)) / 2.0;
}

} // namespace loam::season
