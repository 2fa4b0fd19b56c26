// What a thermometer shows.
#pragma once

#include <span>

#include "core/climate/geometry.hpp"
#include "core/climate/model.hpp"

namespace loam::climate {

// A shaded thermometer lying on the ground: a body of about 15 mm.
// Method: its heat balance. Its lower half sees the bed, its upper half the rest of the box (long-wave 5.7 W/m2K over
// the whole). Air touches it at 9 W/m2K (small body), and through its height that air is on average 0.29 of the way
// from the lower air to the surface (a conducting layer k / h = 9 mm thick). It rests on loose bed: 2 W/m2K.
// That gives 0.45 of the surface, 0.38 of the lower air, 0.17 of the radiant temperature above.
// Own estimate; the spread is part of the model's error.
struct GroundWeights {
    double surface = 0.0;
    double air = 0.0;
    double radiant = 0.0;
};
constexpr GroundWeights ground_weights()
{
    constexpr double film = 9.0;
    constexpr double longwave = 5.7;
    constexpr double contact = 2.0;
    constexpr double layer_share = 0.29;
    constexpr double sum = film + longwave + contact;
    return {.surface = (film * layer_share + 0.5 * longwave + contact) / sum,
            .air = film * (1.0 - layer_share) / sum,
            .radiant = 0.5 * longwave / sum};
}

// Ground reading over one column.
Reading ground_reading(const Model& model, std::size_t column);

// A thermostat's probe: in the bed the bed there, within 30 mm of its surface the ground reading, in the air a mix of
// air (linear between the two) and radiant temperature, 0.6 to 0.4 by the same film and long-wave coefficients.
Reading probe_reading(const Model& model, const Geometry& geometry, const Point& at);

double radiant_temperature_c(double irradiation_w_m2);
double value_of(const Reading& reading, std::span<const double> solution);

// Slopes against the solution, by place.
std::vector<std::pair<std::size_t, double>> slopes_of(const Reading& reading, std::span<const double> solution);

// Weighted sum of readings.
Reading mean_of(const std::vector<std::pair<Reading, double>>& parts);

} // namespace loam::climate
