// Fields for the drawings, and the share of floor inside a band.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/climate/body.hpp"
#include "core/climate/probe.hpp"
#include "core/climate/psychrometrics.hpp"
#include "core/climate/report.hpp"
#include "core/climate/zones.hpp"

namespace loam::climate {

FloorField floor_field(const Box& box, const Scene& scene, const Model& model, const std::vector<double>& solution)
{
    const Geometry& g = scene.geometry;
    FloorField field{.nx = g.nx,
                     .ny = g.ny,
                     .dx_m = g.dx_m,
                     .dy_m = g.dy_m,
                     .surface_c = {},
                     .ground_c = {},
                     .operative_c = {},
                     .humidity = {},
                     .beam_w_m2 = irradiance_w_m2(model, box, scene, solution)};
    for (std::size_t c = 0; c < g.columns(); ++c) {
        field.surface_c.push_back(solution[model.surface(c)]);
        const double ground_c = value_of(ground_reading(model, c), solution);
        field.ground_c.push_back(ground_c);
        field.humidity.push_back(hygrometer_reading(ground_c, solution[model.layout.lower_vapour()]));
        const Body body{.at = {g.x_m(c), g.y_m(c), g.depth_m[c] + box.animal_back_m}, .length_m = box.animal_length_m};
        field.operative_c.push_back(value_of(body_reading(model, box, scene, body, solution), solution));
    }
    return field;
}

double FloorField::ground_at(double x_m, double y_m) const
{
    const auto cell = [](double at_m, double step_m, std::size_t count) {
        return static_cast<std::size_t>(std::clamp(at_m / step_m, 0.0, static_cast<double>(count) - 0.5));
    };
    return ground_c.at(cell(y_m, dy_m, ny) * nx + cell(x_m, dx_m, nx));
}

namespace {

// Temperature of one column at a height over the base pane, linear between brick centres.
double at_height(const Geometry& g, const std::vector<double>& solution, std::size_t column, double z_m)
{
    const std::size_t pane = g.place_of(BrickKind::pane);
    double below_z_m = 0.0;
    double below_c = solution[column * g.nz() + pane];
    double lower_m = 0.0;
    for (std::size_t k = pane + 1; k < g.nz(); ++k) {
        const double thickness_m = g.stack[k].of_depth * g.depth_m[column];
        const double centre_m = lower_m + 0.5 * thickness_m;
        const double here_c = solution[column * g.nz() + k];
        if (z_m <= centre_m) {
            const double span_m = centre_m - below_z_m;
            return span_m > 0.0 ? std::lerp(below_c, here_c, (z_m - below_z_m) / span_m) : here_c;
        }
        below_z_m = centre_m;
        below_c = here_c;
        lower_m += thickness_m;
    }
    return below_c;
}

} // namespace

SectionField section_field(const Scene& scene, const Model& model, const std::vector<double>& solution, std::size_t row)
{
    const Geometry& g = scene.geometry;
    SectionField field{.nx = g.nx, .nz = 0, .z_m = {}, .temperature_c = {}};
    field.lower_air_c = solution[model.layout.lower_air()];
    field.upper_air_c = solution[model.layout.upper_air()];
    const double deepest_m = *std::max_element(g.depth_m.begin(), g.depth_m.end());
    field.nz = static_cast<std::size_t>(std::clamp(std::ceil(deepest_m / 0.01), 1.0, 40.0));
    for (std::size_t k = 0; k < field.nz; ++k) {
        field.z_m.push_back((static_cast<double>(k) + 0.5) * deepest_m / static_cast<double>(field.nz));
        for (std::size_t i = 0; i < g.nx; ++i) {
            const std::size_t column = row * g.nx + i;
            const bool in_air = field.z_m[k] > g.depth_m[column] && deepest_m > 0.0;
            field.temperature_c.push_back(in_air ? field.lower_air_c : at_height(g, solution, column, field.z_m[k]));
        }
    }
    return field;
}

Range share_in_band(const CaseResult& result, Measure measure, std::optional<double> min_c, std::optional<double> max_c)
{
    const FloorField& floor = result.floor;
    const auto& values = measure == Measure::surface  ? floor.surface_c
                         : measure == Measure::ground ? floor.ground_c
                                                      : floor.operative_c;
    const auto range_in = [measure](const ZoneReading& zone) {
        return measure == Measure::surface  ? zone.surface_c
               : measure == Measure::ground ? zone.ground_c
                                            : zone.operative_c;
    };
    const Range warm = range_in(result.warm);
    const Range cool = range_in(result.cool);
    const double down_k = 0.5 * (warm.low - warm.likely + cool.low - cool.likely);
    const double up_k = 0.5 * (warm.high - warm.likely + cool.high - cool.likely);
    const auto share_at = [&](double shift_k) {
        const auto inside = std::count_if(values.begin(), values.end(), [&](double value) {
            return !(min_c && value + shift_k < *min_c) && !(max_c && value + shift_k > *max_c);
        });
        return values.empty() ? 0.0 : static_cast<double>(inside) / static_cast<double>(values.size());
    };
    const double likely = share_at(0.0);
    Range shares = exactly(likely);
    constexpr int steps = 8;
    for (int i = 0; i <= steps; ++i) {
        const double share = share_at(std::lerp(down_k, up_k, static_cast<double>(i) / steps));
        shares.low = std::min(shares.low, share);
        shares.high = std::max(shares.high, share);
    }
    return shares;
}

} // namespace loam::climate
