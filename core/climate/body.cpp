#include "core/climate/body.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/balance.hpp"
#include "core/climate/probe.hpp"
#include "core/units.hpp"

namespace loam::climate {

std::vector<double> irradiance_per_watt(const Box& box, const Scene& scene, const Point& at)
{
    std::vector<double> per_watt(box.lamps.size(), 0.0);
    for (std::size_t l = 0; l < box.lamps.size(); ++l) {
        const Lamp& lamp = box.lamps[l];
        for (const PointCast& cast : cast_to_point(box, scene.geometry, lamp, scene.exponents[l], at))
            per_watt[l] += lamp.radiant_share.likely * region_transmittance(box, cast.region, lamp) * cast.per_m2;
    }
    return per_watt;
}

Reading body_reading(const Model& model, const Box& box, const Scene& scene, const Body& body,
                     const std::vector<double>& solution)
{
    const Geometry& g = scene.geometry;
    const Layout& layout = model.layout;
    const std::size_t column = g.column_at(body.at.x_m, body.at.y_m);
    const double above_m = body.at.z_m - g.depth_m[column];
    const double upper = std::clamp(2.0 * above_m / g.air_height_m - 0.5, 0.0, 1.0);
    const Reading air{.temperatures = {{layout.lower_air(), 1.0 - upper}, {layout.upper_air(), upper}}, .radiant = {}};
    const Reading around{.temperatures = {{model.surface(column), body.seen_surface}},
                         .radiant = {{layout.irradiation(model.floor_patch[column]), 1.0 - body.seen_surface}}};
    const std::vector<double> per_watt = irradiance_per_watt(box, scene, body.at);
    double irradiance_w_m2 = 0.0;
    for (std::size_t l = 0; l < per_watt.size(); ++l)
        irradiance_w_m2 += per_watt[l] * power_w(model.devices[l], layout, solution);

    const double air_c = value_of(air, solution);
    const double around_c = value_of(around, solution);
    const Film film{Facing::up, body.length_m / 4.0, box.film_factor.likely};
    // Newton's method: what leaves the body less what it takes of the beam.
    const double taken_w_m2 = body_absorptance * irradiance_w_m2;
    double body_c = air_c + 5.0;
    double film_w = 0.0;
    double longwave_w = 0.0;
    for (int i = 0; i < 30; ++i) {
        constexpr FilmValue hot{5.0, 0.0, 0.0}; // beyond the table a body is hot beyond doubt
        const FilmValue h = film_value(film, body_c, air_c).value_or(hot);
        const double mean_k = units::kelvin_from_celsius(0.5 * (body_c + around_c));
        film_w = h.w_m2k;
        longwave_w = 4.0 * units::stefan_boltzmann_w_m2_k4 * mean_k * mean_k * mean_k;
        const double leaves_w_m2 = film_w * (body_c - air_c) + longwave_w * (body_c - around_c) - taken_w_m2;
        const double slope =
            film_w + h.per_face_k * (body_c - air_c) + longwave_w * (1.0 + 1.5 * (body_c - around_c) / mean_k);
        const double change = leaves_w_m2 / slope;
        if (std::abs(change) < 1e-7)
            break;
        body_c -= change;
    }
    const double sum = film_w + longwave_w;
    Reading reading = mean_of({{air, film_w / sum}, {around, longwave_w / sum}});
    for (std::size_t l = 0; l < per_watt.size(); ++l) {
        const double rise_per_watt = body_absorptance * per_watt[l] / sum;
        if (const auto& regulated = model.devices[l].regulated)
            reading.temperatures.emplace_back(layout.power(*regulated), rise_per_watt);
        else
            reading.constant_c += rise_per_watt * model.devices[l].fixed_w;
    }
    return reading;
}

} // namespace loam::climate
