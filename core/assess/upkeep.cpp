#include "core/assess/upkeep.hpp"

#include "core/independent.hpp"

namespace loam::assess {

namespace {

// The sheets give what a keeper is told to reckon with; where they name no least, their one figure is exact.
std::optional<Range> food_of_one(const catalog::Species& species)
{
    const auto& monthly = species.diet.monthly_cost_units;
    if (!monthly || !monthly->max) {
        return std::nullopt;
    }
    const double min = monthly->min.value_or(*monthly->max);
    return Range{min, (min + *monthly->max) / 2.0, *monthly->max};
}

std::optional<Range> of_all(const std::optional<Range>& of_one, double count)
{
    return of_one ? std::optional(scaled(*of_one, count)) : std::nullopt;
}

} // namespace

std::vector<Upkeep> upkeep_of(const Context& context, const plan::Enclosure& enclosure)
{
    const auto calcium = spread_of(context.catalog, "care.calcium_g_per_month");
    const auto visits = spread_of(context.catalog, "health.vet_visits_per_year");
    std::vector<Upkeep> all;
    for (const plan::Animal& animal : enclosure.animals) {
        const catalog::Species* species = context.catalog.find_species(animal.species);
        if (species == nullptr) {
            continue;
        }
        const auto count = static_cast<double>(animal.count);
        const bool whole_prey = species->group == catalog::Group::snake; // which brings its own calcium
        all.push_back({.animal = animal.id,
                       .food_item = species->diet.food_item,
                       .food_per_month = of_all(food_of_one(*species), count),
                       .calcium_g_per_month = whole_prey ? std::nullopt : of_all(calcium, count),
                       .vet_visits_per_year = of_all(visits, count)});
    }
    return all;
}

std::string food_unit(const std::string& food_item)
{
    return food_item == "food.greens" ? "kg" : food_item == "food.powder" ? "g" : "each";
}

} // namespace loam::assess
