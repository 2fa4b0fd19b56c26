#include "core/climate/psychrometrics.hpp"

#include <algorithm>
#include <cmath>

namespace loam::climate {

namespace {

struct LogPressure {
    double value = 0.0;
    double per_kelvin = 0.0;
};

LogPressure over_water(double kelvin)
{
    const double t = kelvin;
    return {.value = -5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t +
                     6.5459673 * std::log(t),
            .per_kelvin = 5.8002206e3 / (t * t) - 4.8640239e-2 + 2.0 * 4.1764768e-5 * t - 3.0 * 1.4452093e-8 * t * t +
                          6.5459673 / t};
}

LogPressure over_ice(double kelvin)
{
    const double t = kelvin;
    return {.value = -5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t * t + 2.0747825e-9 * t * t * t -
                     9.484024e-13 * t * t * t * t + 4.1635019 * std::log(t),
            .per_kelvin = 5.6745359e3 / (t * t) - 9.677843e-3 + 2.0 * 6.2215701e-7 * t + 3.0 * 2.0747825e-9 * t * t -
                          4.0 * 9.484024e-13 * t * t * t + 4.1635019 / t};
}

std::optional<LogPressure> log_pressure(double celsius)
{
    if (!(celsius >= -100.0 && celsius <= 200.0))
        return std::nullopt;
    const double kelvin = units::kelvin_from_celsius(celsius);
    return celsius < 0.0 ? over_ice(kelvin) : over_water(kelvin);
}

} // namespace

std::optional<double> saturation_pressure_pa(double celsius)
{
    const auto log = log_pressure(celsius);
    return log ? std::optional(std::exp(log->value)) : std::nullopt;
}

std::optional<Saturation> saturation(double celsius, double pressure_pa)
{
    const auto log = log_pressure(celsius);
    if (!log || celsius > 95.0)
        return std::nullopt;
    const double vapour_pa = std::exp(log->value);
    const double dry_pa = pressure_pa - vapour_pa;
    if (dry_pa <= 0.0)
        return std::nullopt;
    return Saturation{.humidity_ratio = vapour_mass_ratio * vapour_pa / dry_pa,
                      .per_kelvin = vapour_mass_ratio * vapour_pa * log->per_kelvin * pressure_pa / (dry_pa * dry_pa)};
}

std::optional<double> humidity_ratio(double vapour_pressure_pa, double pressure_pa)
{
    if (!(vapour_pressure_pa >= 0.0 && vapour_pressure_pa < pressure_pa))
        return std::nullopt;
    return vapour_mass_ratio * vapour_pressure_pa / (pressure_pa - vapour_pressure_pa);
}

double vapour_pressure_pa(double humidity_ratio, double pressure_pa)
{
    return pressure_pa * humidity_ratio / (vapour_mass_ratio + humidity_ratio);
}

std::optional<double> relative_humidity(double celsius, double humidity_ratio)
{
    const auto full_pa = saturation_pressure_pa(celsius);
    return full_pa ? std::optional(vapour_pressure_pa(humidity_ratio) / *full_pa) : std::nullopt;
}

double hygrometer_reading(double celsius, double humidity_ratio)
{
    return std::clamp(relative_humidity(celsius, humidity_ratio).value_or(0.0), 0.0, 1.0);
}

std::optional<double> humidity_ratio_at(double celsius, double relative_humidity)
{
    const auto full_pa = saturation_pressure_pa(celsius);
    return full_pa ? humidity_ratio(*full_pa * relative_humidity) : std::nullopt;
}

std::optional<double> dew_point_c(double humidity_ratio)
{
    if (!(humidity_ratio > 0.0))
        return std::nullopt;
    const double target = std::log(vapour_pressure_pa(humidity_ratio));
    double celsius = 15.0; // ln p is nearly straight in T, so Newton comes in from either side
    for (int i = 0; i < 40; ++i) {
        const auto log = log_pressure(celsius);
        if (!log)
            return std::nullopt;
        const double step = (target - log->value) / log->per_kelvin;
        celsius += step;
        if (std::abs(step) < 1e-10)
            break;
    }
    return celsius >= -60.0 && celsius <= 90.0 ? std::optional(celsius) : std::nullopt;
}

std::optional<double> wet_bulb_c(double celsius, double humidity_ratio)
{
    if (!(celsius >= 0.0 && celsius <= 90.0 && humidity_ratio >= 0.0))
        return std::nullopt;
    const auto ratio_at = [celsius](double bulb_c) {
        const double full = saturation(bulb_c)->humidity_ratio;
        return ((2501.0 - 2.326 * bulb_c) * full - 1.006 * (celsius - bulb_c)) /
               (2501.0 + 1.86 * celsius - 4.186 * bulb_c);
    };
    double low = 0.0;
    double high = celsius;
    if (ratio_at(low) > humidity_ratio || ratio_at(high) < humidity_ratio - 1e-12)
        return std::nullopt; // frozen bulb, or air that is more than saturated
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (ratio_at(middle) < humidity_ratio ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

} // namespace loam::climate
