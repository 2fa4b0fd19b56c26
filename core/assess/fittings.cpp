#include "core/assess/fittings.hpp"
#include "core/plan/measured.hpp"

#include <algorithm>

#include "core/plan/names.hpp"

namespace loam::assess {

std::optional<Range> fitting_height(const Context& context, const Housed& housed, std::size_t index, Notes& notes)
{
    const plan::Fitting& fitting = housed.enclosure.fittings[index];
    std::string assumption = "fitting.height_m." + std::string(plan::name_of(fitting.kind));
    if (context.catalog.find_assumption(assumption) == nullptr) {
        assumption = "fitting.height_m"; // a kind without a row of its own
    }
    return given_or_assumed(notes, context.catalog, fitting.height_m,
                            housed.pointer("/fittings/" + std::to_string(index) + "/height_m"), assumption);
}

std::optional<Range> bowl_water_depth(const Context& context, const Housed& housed, std::size_t index, Notes& notes)
{
    return given_or_assumed(notes, context.catalog, housed.enclosure.fittings[index].water_depth_m,
                            housed.pointer("/fittings/" + std::to_string(index) + "/water_depth_m"),
                            "bowl.water_depth_m");
}

bool is_hide(plan::FittingKind kind)
{
    return kind == plan::FittingKind::hide || kind == plan::FittingKind::humid_hide;
}

bool can_be_stood_on(plan::FittingKind kind)
{
    return is_hide(kind) || kind == plan::FittingKind::rock || kind == plan::FittingKind::log;
}

std::optional<Range> body_length(const Context& context, const Housed& housed, std::size_t index, Notes& notes)
{
    const plan::Animal& animal = housed.enclosure.animals[index];
    const catalog::Species* species = context.catalog.find_species(animal.species);
    std::optional<Range> adult;
    if (species != nullptr && species->adult_length_m.max) {
        const double max_m = *species->adult_length_m.max;
        const double min_m = species->adult_length_m.min.value_or(max_m);
        adult = Range{min_m, (min_m + max_m) / 2.0, max_m};
    }
    return given_or(notes, plan::length_now_m(animal),
                    housed.pointer("/animals/" + std::to_string(index) + "/length_m"), "m", adult,
                    species ? species->adult_length_m.source : Source{});
}

std::optional<Bodies> largest_bodies(const Context& context, const Housed& housed, Notes& notes)
{
    std::optional<Bodies> bodies;
    for (std::size_t i = 0; i < housed.enclosure.animals.size(); ++i) {
        const auto length = body_length(context, housed, i, notes);
        const catalog::Species* species = context.catalog.find_species(housed.enclosure.animals[i].species);
        if (!length || species == nullptr) {
            continue;
        }
        bodies = bodies.value_or(Bodies{});
        bodies->longest_m = std::max(bodies->longest_m, length->high);
        bodies->highest_back_m = std::max(bodies->highest_back_m, length->high * species->back_height_ratio);
        bodies->climbs = bodies->climbs || species->habit == catalog::Habit::climbing;
    }
    return bodies;
}

} // namespace loam::assess
