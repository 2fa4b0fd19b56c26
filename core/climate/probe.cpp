#include "core/climate/probe.hpp"

#include <algorithm>
#include <cmath>

#include "core/units.hpp"

namespace loam::climate {

Reading ground_reading(const Model& model, std::size_t column)
{
    constexpr GroundWeights weights = ground_weights();
    return {.temperatures = {{model.surface(column), weights.surface}, {model.layout.lower_air(), weights.air}},
            .radiant = {{model.layout.irradiation(model.floor_patch[column]), weights.radiant}}};
}

namespace {

Reading in_the_bed(const Geometry& g, std::size_t column, double z_m)
{
    double lower_m = 0.0;
    std::size_t k = g.place_of(BrickKind::pane);
    for (std::size_t place = k + 1; place < g.nz() && lower_m < z_m; ++place)
        if (g.stack[place].kind == BrickKind::bed) {
            lower_m += g.depth_m[column] * g.stack[place].of_depth;
            k = place;
        }
    return {.temperatures = {{column * g.nz() + k, 1.0}}, .radiant = {}};
}

} // namespace

Reading probe_reading(const Model& model, const Geometry& geometry, const Point& at)
{
    constexpr double touch_m = 0.03;
    const std::size_t column = geometry.column_at(at.x_m, at.y_m);
    const double above_m = at.z_m - geometry.depth_m[column];
    if (above_m < -0.5 * touch_m || at.z_m <= 0.0)
        return in_the_bed(geometry, column, at.z_m);
    if (above_m <= touch_m)
        return ground_reading(model, column);
    const double upper = std::clamp(2.0 * above_m / geometry.air_height_m - 0.5, 0.0, 1.0);
    constexpr double air = 0.6;
    return {.temperatures = {{model.layout.lower_air(), air * (1.0 - upper)}, {model.layout.upper_air(), air * upper}},
            .radiant = {{model.layout.irradiation(model.floor_patch[column]), 1.0 - air}}};
}

double radiant_temperature_c(double irradiation_w_m2)
{
    return units::celsius_from_kelvin(std::pow(irradiation_w_m2 / units::stefan_boltzmann_w_m2_k4, 0.25));
}

double value_of(const Reading& reading, std::span<const double> solution)
{
    double sum = reading.constant_c;
    for (const auto& [place, weight] : reading.temperatures)
        sum += weight * solution[place];
    for (const auto& [place, weight] : reading.radiant)
        sum += weight * radiant_temperature_c(solution[place]);
    return sum;
}

std::vector<std::pair<std::size_t, double>> slopes_of(const Reading& reading, std::span<const double> solution)
{
    auto slopes = reading.temperatures;
    for (const auto& [place, weight] : reading.radiant) {
        const double kelvin = units::kelvin_from_celsius(radiant_temperature_c(solution[place]));
        slopes.emplace_back(place, weight * 0.25 * kelvin / solution[place]);
    }
    return slopes;
}

Reading mean_of(const std::vector<std::pair<Reading, double>>& parts)
{
    Reading sum;
    for (const auto& [reading, share] : parts) {
        sum.constant_c += share * reading.constant_c;
        for (const auto& [place, weight] : reading.temperatures)
            sum.temperatures.emplace_back(place, share * weight);
        for (const auto& [place, weight] : reading.radiant)
            sum.radiant.emplace_back(place, share * weight);
    }
    return sum;
}

} // namespace loam::climate
