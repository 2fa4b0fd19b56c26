#include "core/light/uv_field.hpp"

#include <algorithm>
#include <cmath>

namespace loam::light {

namespace {

constexpr double cell_m = 0.025;

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

// Whether a spot stays below the limit: surely, surely not, or neither.
enum class Dark { surely, unsure, surely_not };

Dark dark_at(const std::vector<UvLamp>& lamps, const Top& top, const Point& point, double limit_uvi)
{
    const std::optional<double> most = uvi_at_most(lamps, top, point);
    if (most && *most < limit_uvi) {
        return Dark::surely;
    }
    const std::optional<Range> uvi = uvi_at(lamps, top, point);
    return uvi && uvi->low >= limit_uvi ? Dark::surely_not : Dark::unsure;
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

FloorShare dark_share(const std::vector<UvLamp>& lamps, const Top& top, const Patch& floor, double back_m,
                      const std::vector<Patch>& roofs, double limit_uvi)
{
    const int columns = std::max(1, static_cast<int>(std::ceil(floor.length_m / cell_m)));
    const int rows = std::max(1, static_cast<int>(std::ceil(floor.width_m / cell_m)));
    int surely = 0;
    int at_most = 0;
    for (int column = 0; column < columns; ++column) {
        for (int row = 0; row < rows; ++row) {
            const double x_m = floor.x_m + (column + 0.5) * floor.length_m / columns;
            const double y_m = floor.y_m + (row + 0.5) * floor.width_m / rows;
            const bool roofed =
                std::any_of(roofs.begin(), roofs.end(), [&](const Patch& roof) { return holds(roof, x_m, y_m); });
            const Dark dark = roofed ? Dark::surely : dark_at(lamps, top, {x_m, y_m, back_m}, limit_uvi);
            surely += dark == Dark::surely ? 1 : 0;
            at_most += dark != Dark::surely_not ? 1 : 0;
        }
    }
    const double cells = static_cast<double>(columns) * rows;
    return {surely / cells, at_most / cells};
}

} // namespace loam::light
