#include "core/assess/uv_scene.hpp"

#include <algorithm>
#include <limits>

#include "core/assess/fittings.hpp"
#include "core/assess/reach.hpp"
#include "core/assess/substrate.hpp"

namespace loam::assess {

namespace {

// Under the strongest timed lamp that heats, for animals bask in light; where none shines, under what else heats from
// above; where nothing does, under the first UV lamp.
const plan::Device& basked_under(const std::vector<KnownDevice>& all, const UvScene& scene)
{
    const KnownDevice* under = &scene.devices.front();
    std::pair<bool, double> most{false, 0.0}; // shines, watts
    for (const KnownDevice& known : all) {
        const std::pair<bool, double> here{known.traits != nullptr && known.traits->emits_light,
                                           known.power_w ? known.power_w->likely : 0.0};
        if (is_overhead_heat(known.device.kind) && known.timed && here > most) {
            under = &known;
            most = here;
        }
    }
    return under->device;
}

// A patch of the animal's own size, at its middle, sides and corners.
std::vector<light::Point> basking_places(const plan::Enclosure& enclosure, const UvScene& scene,
                                         const plan::Device& lamp)
{
    const plan::Shell& shell = enclosure.shell;
    std::vector<light::Point> places;
    for (const double along : {0.0, -0.5, 0.5}) {
        for (const double across : {0.0, -0.5, 0.5}) {
            const double x_m = std::clamp(lamp.x_m + along * scene.body_m, 0.0, shell.length_m);
            const double y_m = std::clamp(lamp.y_m + across * scene.body_m, 0.0, shell.width_m);
            places.push_back({x_m, y_m, stood_on(enclosure, scene, x_m, y_m).top_m + scene.back_m});
        }
    }
    return places;
}

} // namespace

std::optional<UvScene> uv_scene(const Context& context, const Housed& housed, Notes& notes)
{
    UvScene scene;
    const auto all = equipment_of(context, housed, notes);
    for (const KnownDevice& known : all) {
        if (known.traits != nullptr && known.traits->emits_uv) {
            scene.devices.push_back(known);
            scene.lamps.push_back(as_lamp(context, housed, notes, known));
        }
    }
    if (scene.lamps.empty()) {
        return std::nullopt;
    }
    scene.top = as_top(context, housed, notes);
    scene.places = standing_places(context, housed, notes);
    if (const auto bodies = largest_bodies(context, housed, notes)) {
        scene.back_m = bodies->highest_back_m;
        scene.body_m = bodies->longest_m;
    }
    scene.basking = basking_places(housed.enclosure, scene, basked_under(all, scene));
    return scene;
}

StoodOn stood_on(const plan::Enclosure& enclosure, const UvScene& scene, double x_m, double y_m)
{
    StoodOn best{bed_surface_m(enclosure, x_m), {}};
    for (const light::Standing& place : scene.places) {
        const bool covers = x_m >= place.area.x_m && x_m <= place.area.x_m + place.area.length_m &&
                            y_m >= place.area.y_m && y_m <= place.area.y_m + place.area.width_m;
        if (!place.id.empty() && covers && place.height_m > best.top_m) {
            best = {place.height_m, place.id};
        }
    }
    return best;
}

std::optional<Strongest> strongest_of(const std::vector<light::PreparedLamp>& lamps,
                                      const std::vector<light::Point>& places)
{
    std::optional<Strongest> best;
    double unknown_at_most = 0.0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto uvi = light::uvi_at(lamps, places[i]);
        if (!uvi) {
            constexpr double unbounded = std::numeric_limits<double>::infinity();
            unknown_at_most = std::max(unknown_at_most, light::uvi_at_most(lamps, places[i]).value_or(unbounded));
        } else if (!best || uvi->likely > best->uvi.likely) {
            best = Strongest{i, *uvi};
        }
    }
    return best && unknown_at_most <= best->uvi.high ? best : std::nullopt;
}

light::UvMap uv_map_of(const plan::Enclosure& enclosure, const UvScene& scene)
{
    const light::UvGrid grid = light::uv_grid(enclosure.shell.length_m, enclosure.shell.width_m);
    std::vector<double> back_m;
    back_m.reserve(grid.cells());
    for (std::size_t cell = 0; cell < grid.cells(); ++cell) {
        back_m.push_back(stood_on(enclosure, scene, grid.x_m(cell), grid.y_m(cell)).top_m + scene.back_m);
    }
    return light::uv_map(light::prepared(scene.lamps, scene.top), grid, std::move(back_m));
}

std::size_t main_lamp(const UvScene& scene, const light::Point& place)
{
    std::size_t best = 0;
    double most = -1.0;
    for (std::size_t i = 0; i < scene.lamps.size(); ++i) {
        const auto uvi = light::uvi_from(scene.lamps[i], scene.top, place);
        if (uvi && uvi->likely > most) {
            most = uvi->likely;
            best = i;
        }
    }
    return best;
}

} // namespace loam::assess
