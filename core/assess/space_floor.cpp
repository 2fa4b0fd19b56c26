#include <algorithm>

#include "core/assess/fittings.hpp"
#include "core/assess/space_parts.hpp"

namespace loam::assess {

namespace {

// Where the plan is silent: an animal uses the floor inside a hide and under a flat dish, not that under a bowl, a
// rock, a log or a pot.
bool walkable(const Housed& housed, std::size_t index, Notes& notes)
{
    const plan::Fitting& fitting = housed.enclosure.fittings[index];
    if (fitting.walkable) {
        return *fitting.walkable;
    }
    const bool usual = is_hide(fitting.kind) || fitting.kind == plan::FittingKind::feeding_dish;
    assume(notes, {housed.pointer("/fittings/" + std::to_string(index) + "/walkable"),
                   "1",
                   Range{0.0, usual ? 1.0 : 0.0, 1.0},
                   {"Our own reading of the kinds of fitting", Confidence::practice}});
    return usual;
}

} // namespace

FloorPlan floor_plan(const Context&, const Housed& housed, Notes& notes)
{
    const plan::Shell& shell = housed.enclosure.shell;
    FloorPlan floor;
    floor.size = {shell.length_m, shell.width_m};
    for (std::size_t i = 0; i < housed.enclosure.fittings.size(); ++i) {
        const plan::Fitting& fitting = housed.enclosure.fittings[i];
        if (!walkable(housed, i, notes)) {
            floor.blocked.push_back(
                {fitting.x_m, fitting.y_m, fitting.length_m, fitting.width_m, fitting.rotation_deg.value_or(0.0)});
        }
    }
    floor.floor_m2 = shell.length_m * shell.width_m;
    floor.usable_m2 = space::usable_area_m2(floor.size, floor.blocked);
    floor.whole = {shell.length_m, shell.width_m, shell.height_m, floor.floor_m2};
    floor.usable = {shell.length_m, shell.width_m, shell.height_m, floor.usable_m2};
    return floor;
}

} // namespace loam::assess
