#include "core/assess/needs.hpp"

namespace loam::assess {

std::vector<buying::Need> care_needs(const Context& context, const Housed& housed, const WaterStage& water)
{
    constexpr double days_a_year = 365.0;
    std::vector<buying::Need> needs;
    if (water.result.conditioner_ml_per_day && water.result.conditioner_ml_per_day->likely > 0.0) {
        needs.push_back(need("water.conditioner", water.result.conditioner_ml_per_day->likely * days_a_year, "ml",
                             "need.conditioner", housed.at()));
    }
    const auto calcium = spread_of(context.catalog, "care.calcium_g_per_month");
    const auto visits = spread_of(context.catalog, "health.vet_visits_per_year");
    for (const plan::Animal& animal : housed.enclosure.animals) {
        const catalog::Species* species = context.catalog.find_species(animal.species);
        if (species == nullptr) {
            continue;
        }
        const auto count = static_cast<double>(animal.count);
        const auto& monthly = species->diet.monthly_cost_units;
        if (monthly && monthly->max) {
            // The units of each kind of food are those of the kinds in resources/prices/README.md.
            const std::string& item = species->diet.food_item;
            const std::string unit = item == "food.greens" ? "kg" : item == "food.powder" ? "g" : "each";
            needs.push_back(need(item, count * *monthly->max, unit, "need.food", housed.at(animal.id)));
        }
        if (calcium && species->group != catalog::Group::snake) { // whole prey brings its own
            needs.push_back(need("care.calcium", count * calcium->likely, "g", "need.calcium", housed.at(animal.id)));
        }
        if (visits) {
            needs.push_back(need("health.vet-visit", count * visits->likely, "each", "need.vet", housed.at(animal.id)));
        }
    }
    return needs;
}

} // namespace loam::assess
