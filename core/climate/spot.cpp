#include "core/climate/spot.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/climate/probe.hpp"

namespace loam::climate {

namespace {

struct Between {
    std::size_t first = 0;
    std::size_t second = 0;
    double share = 0.0; // of the second
};

Between between(double at_m, double step_m, std::size_t count)
{
    const double last = static_cast<double>(count - 1);
    const double place = std::clamp(at_m / step_m - 0.5, 0.0, last);
    const auto first = static_cast<std::size_t>(std::floor(place));
    return {first, std::min(first + 1, count - 1), place - std::floor(place)};
}

Reading mean_around(const Geometry& g, const Spot& spot, const auto& reading_at)
{
    const Between x = between(spot.x_m, g.dx_m, g.nx);
    const Between y = between(spot.y_m, g.dy_m, g.ny);
    std::vector<std::pair<Reading, double>> parts;
    for (const auto& [j, of_y] : {std::pair(y.first, 1.0 - y.share), std::pair(y.second, y.share)})
        for (const auto& [i, of_x] : {std::pair(x.first, 1.0 - x.share), std::pair(x.second, x.share)})
            parts.emplace_back(reading_at(j * g.nx + i), of_x * of_y);
    return mean_of(parts);
}

// The highest that lies there.
std::optional<Perch> perch_at(const Box& box, const Spot& spot)
{
    std::optional<Perch> highest;
    for (const Perch& perch : box.perches)
        if (holds(perch.area, spot.x_m, spot.y_m) && (!highest || perch.height_m > highest->height_m))
            highest = perch;
    return highest;
}

} // namespace

bool is_inside(const Box& box, const Spot& spot)
{
    return spot.x_m >= 0.0 && spot.x_m <= box.length_m && spot.y_m >= 0.0 && spot.y_m <= box.width_m;
}

Reading spot_reading(const Model& model, const Box& box, const Scene& scene, const Spot& spot,
                     const std::vector<double>& solution)
{
    const Geometry& g = scene.geometry;
    const auto perch = perch_at(box, spot);
    Body body{.at = {spot.x_m, spot.y_m, g.depth_m[g.column_at(spot.x_m, spot.y_m)]}};
    if (perch)
        body.at.z_m += perch->height_m;
    switch (spot.measure) {
    case Measure::operative:
        body.at.z_m += box.animal_back_m;
        body.length_m = box.animal_length_m;
        body.seen_surface = perch ? 0.0 : body.seen_surface;
        return body_reading(model, box, scene, body, solution);
    case Measure::surface:
        if (perch) {
            body.length_m = std::min(perch->area.length_m, perch->area.width_m);
            body.seen_surface = 0.0;
            return body_reading(model, box, scene, body, solution);
        }
        return mean_around(g, spot, [&](std::size_t c) {
            return Reading{.temperatures = {{model.surface(c), 1.0}}, .radiant = {}};
        });
    case Measure::ground:
        break;
    }
    return mean_around(g, spot, [&](std::size_t c) { return ground_reading(model, c); });
}

} // namespace loam::climate
