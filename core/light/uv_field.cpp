#include "core/light/uv_field.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace loam::light {

namespace {

constexpr double cell_m = 0.025;
constexpr double most_cells = 1600.0;

bool holds(const Patch& patch, double x_m, double y_m)
{
    return x_m >= patch.x_m && x_m <= patch.x_m + patch.length_m && y_m >= patch.y_m &&
           y_m <= patch.y_m + patch.width_m;
}

// The nearest that a back comes to a lamp on one standing place.
Nearest nearest_on(const Standing& place, const UvLamp& lamp, double back_height_m)
{
    const double right_m = place.area.x_m + place.area.length_m;
    const double half_tube_m = lamp.length_m / 2.0;
    const double x_m = std::clamp(lamp.at.x_m, place.area.x_m, right_m);
    const double y_m = std::clamp(lamp.at.y_m, place.area.y_m, place.area.y_m + place.area.width_m);
    const double z_m = std::min(place.height_m + back_height_m, lamp.at.z_m);
    const double past_tube_m = std::max(0.0, std::abs(x_m - lamp.at.x_m) - half_tube_m);
    Nearest nearest;
    nearest.lamp = lamp.id;
    nearest.standing = place.id;
    nearest.back = {x_m, y_m, z_m};
    nearest.distance_m = std::hypot(past_tube_m, y_m - lamp.at.y_m, lamp.at.z_m - z_m);
    return nearest;
}

} // namespace

std::vector<Nearest> nearest_to_lamps(const std::vector<UvLamp>& lamps, const Top& top,
                                      const std::vector<Standing>& places, double back_height_m)
{
    std::vector<Nearest> result;
    if (places.empty()) {
        return result;
    }
    for (const UvLamp& lamp : lamps) {
        Nearest nearest = nearest_on(places.front(), lamp, back_height_m);
        for (const Standing& place : places) {
            const Nearest here = nearest_on(place, lamp, back_height_m);
            if (here.distance_m < nearest.distance_m) {
                nearest = here;
            }
        }
        nearest.uvi = uvi_at(lamps, top, nearest.back);
        result.push_back(nearest);
    }
    return result;
}

UvGrid uv_grid(double length_m, double width_m)
{
    assert(length_m > 0.0 && width_m > 0.0);
    const double side_m = std::max(cell_m, std::sqrt(length_m * width_m / most_cells));
    const auto cells = [side_m](double m) {
        return std::max<std::size_t>(1, static_cast<std::size_t>(std::ceil(m / side_m - 1e-9)));
    };
    UvGrid grid{cells(length_m), cells(width_m), 0.0, 0.0};
    grid.dx_m = length_m / static_cast<double>(grid.nx);
    grid.dy_m = width_m / static_cast<double>(grid.ny);
    return grid;
}

UvMap uv_map(const std::vector<PreparedLamp>& lamps, const UvGrid& grid, std::vector<double> back_m)
{
    assert(back_m.size() == grid.cells());
    UvMap map{grid, std::move(back_m), {}, {}};
    map.uvi.reserve(grid.cells());
    map.at_most.reserve(grid.cells());
    for (std::size_t cell = 0; cell < grid.cells(); ++cell) {
        const Point back = {grid.x_m(cell), grid.y_m(cell), map.back_m[cell]};
        const std::optional<Range> uvi = uvi_at(lamps, back);
        map.uvi.push_back(uvi);
        map.at_most.push_back(uvi ? uvi->high
                                  : uvi_at_most(lamps, back).value_or(std::numeric_limits<double>::infinity()));
    }
    return map;
}

FloorShare dark_share(const UvMap& map, const std::vector<Patch>& roofs, double limit_uvi)
{
    std::size_t surely = 0;
    std::size_t at_most = 0;
    for (std::size_t cell = 0; cell < map.grid.cells(); ++cell) {
        const bool roofed = std::any_of(roofs.begin(), roofs.end(), [&](const Patch& roof) {
            return holds(roof, map.grid.x_m(cell), map.grid.y_m(cell));
        });
        const bool dark = roofed || map.at_most[cell] < limit_uvi;
        const bool lit = !dark && map.uvi[cell] && map.uvi[cell]->low >= limit_uvi;
        surely += dark ? 1 : 0;
        at_most += lit ? 0 : 1;
    }
    const auto cells = static_cast<double>(map.grid.cells());
    return {static_cast<double>(surely) / cells, static_cast<double>(at_most) / cells};
}

std::optional<std::size_t> strongest_cell(const UvMap& map)
{
    std::optional<std::size_t> strongest;
    for (std::size_t cell = 0; cell < map.grid.cells(); ++cell) {
        if (map.uvi[cell] && (!strongest || map.uvi[cell]->likely > map.uvi[*strongest]->likely)) {
            strongest = cell;
        }
    }
    return strongest;
}

} // namespace loam::light
