#include "core/light/safe_distance.hpp"

namespace loam::light {

std::optional<double> safe_distance_m(const PreparedLamp& lamp, double limit_uvi)
{
    const std::optional<Reach> reach = lamp.readings().reach();
    if (!reach) {
        return std::nullopt;
    }
    const auto is_safe = [&](double distance_m) {
        const std::optional<Range> uvi = lamp.uvi_below(distance_m);
        return uvi && uvi->high <= limit_uvi;
    };
    if (!is_safe(reach->farthest_m)) {
        return std::nullopt;
    }
    double unsafe_m = reach->nearest_m;
    double safe_m = is_safe(unsafe_m) ? unsafe_m : reach->farthest_m;
    constexpr double precise_m = 1e-4;
    while (safe_m - unsafe_m > precise_m) {
        const double middle_m = (safe_m + unsafe_m) / 2.0;
        (is_safe(middle_m) ? safe_m : unsafe_m) = middle_m;
    }
    return safe_m;
}

} // namespace loam::light
