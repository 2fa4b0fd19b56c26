#include "core/assess/needs.hpp"
#include "core/assess/upkeep.hpp"

namespace loam::assess {

std::vector<buying::Need> care_needs(const Context& context, const Housed& housed, const WaterStage& water)
{
    constexpr double days_a_year = 365.0;
    std::vector<buying::Need> needs;
    if (water.order_conditioner_ml && water.order_conditioner_ml->likely > 0.0) {
        needs.push_back(need("water.conditioner", water.order_conditioner_ml->likely * days_a_year, "ml",
                             "need.conditioner", housed.at()));
    }
    if (water.result.cartridges_per_year && water.result.cartridges_per_year->likely > 0.0) {
        // Counted in part: several enclosures share a filter, and packs are whole only in the order.
        needs.push_back(need("water.filter-cartridge", water.result.cartridges_per_year->likely, "each",
                             "need.filter-cartridge", housed.at()));
    }
    for (const Upkeep& one : upkeep_of(context, housed.enclosure)) {
        if (one.food_per_month) { // the first month's
            needs.push_back(need(one.food_item, one.food_per_month->high, food_unit(one.food_item), "need.food",
                                 housed.at(one.animal)));
        }
        if (one.calcium_g_per_month) {
            needs.push_back(
                need("care.calcium", one.calcium_g_per_month->likely, "g", "need.calcium", housed.at(one.animal)));
        }
        if (one.vet_visits_per_year) {
            needs.push_back(
                need("health.vet-visit", one.vet_visits_per_year->likely, "each", "need.vet", housed.at(one.animal)));
        }
    }
    return needs;
}

} // namespace loam::assess
