#include "core/climate/damp_hide.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/air.hpp"
#include "core/climate/evaporation.hpp"
#include "core/climate/openings.hpp"
#include "core/climate/psychrometrics.hpp"

namespace loam::climate {

namespace {

// Vapour is 1 / 0.622 times as voluminous as the air it takes the place of.
constexpr double lighter_per_ratio = 1.0 / vapour_mass_ratio - 1.0;

// The humidity ratio at which as much evaporates as the entrance lets out: the gain falls and the loss grows with it.
double settled_ratio(double evaporates_kg_s, double entrance_m3_s, double density_kg_m3, double saturated,
                     double outside)
{
    double low = std::min(outside, saturated);
    double high = std::max(outside, saturated);
    for (int halving = 0; halving < 60; ++halving) {
        const double ratio = 0.5 * (low + high);
        const double over = ratio - outside;
        const double exchanged_kg_s = density_kg_m3 * entrance_m3_s * std::sqrt(lighter_per_ratio * std::abs(over));
        const bool rises = evaporates_kg_s * (saturated - ratio) > exchanged_kg_s * over;
        (rises ? low : high) = ratio;
    }
    return 0.5 * (low + high);
}

} // namespace

std::optional<Range> damp_hide_humidity(const DampHide& hide)
{
    const bool physical = hide.floor_m2 > 0.0 && hide.entrance_m2.low > 0.0 && hide.film_w_m2k.low > 0.0 &&
                          hide.inside_c >= 0.0 && hide.inside_c <= 60.0 && hide.humidity_ratio >= 0.0;
    const auto full = physical ? saturation(hide.inside_c) : std::nullopt;
    if (!full) {
        return std::nullopt;
    }
    const double density_kg_m3 = air_density_kg_m3(hide.inside_c);
    const auto humidity = [&](double entrance_m2, double film_w_m2k) {
        const double ratio = settled_ratio(hide.floor_m2 * lewis_kg_s_m2(film_w_m2k), doorway_coefficient(entrance_m2),
                                           density_kg_m3, full->humidity_ratio, hide.humidity_ratio);
        return hygrometer_reading(hide.inside_c, ratio);
    };
    const double likely = humidity(hide.entrance_m2.likely, hide.film_w_m2k.likely);
    const auto away = [&](double entrance_m2, double film_w_m2k) {
        return std::hypot(humidity(entrance_m2, hide.film_w_m2k.likely) - likely,
                          humidity(hide.entrance_m2.likely, film_w_m2k) - likely);
    };
    return Range{std::max(0.0, likely - away(hide.entrance_m2.high, hide.film_w_m2k.low)), likely,
                 std::min(1.0, likely + away(hide.entrance_m2.low, hide.film_w_m2k.high))};
}

} // namespace loam::climate
