#include "core/light/timer_year.hpp"

#include <algorithm>
#include <cmath>

#include "core/light/photoperiod.hpp"

namespace loam::light {

std::optional<double> hours_with_the_sky(double latitude_deg, int day_of_year, const HoursAsked& asked)
{
    const std::optional<double> sky_h = day_length_h(latitude_deg, day_of_year);
    if (!sky_h || !(asked.least_h <= asked.most_h)) {
        return std::nullopt;
    }
    return std::clamp(*sky_h, asked.least_h, asked.most_h);
}

std::optional<OnOff> about_the_same_middle(const OnOff& planned, double hours)
{
    constexpr int day_min = 24 * 60;
    if (planned.on == planned.off || !(hours > 0.0 && hours < 24.0)) {
        return std::nullopt;
    }
    const double lit_min = (planned.off - planned.on + day_min) % day_min;
    const double middle = planned.on + lit_min / 2.0;
    const auto on_the_clock = [](double minutes) {
        const int rounded = static_cast<int>(std::lround(minutes / 5.0)) * 5;
        return (rounded % day_min + day_min) % day_min;
    };
    return OnOff{on_the_clock(middle - hours * 30.0), on_the_clock(middle + hours * 30.0)};
}

} // namespace loam::light
