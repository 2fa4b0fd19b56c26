#include "core/assess/compose.hpp"
#include "core/assess/costs.hpp"
#include "core/assess/needs.hpp"
#include "core/assess/shopping.hpp"
#include "core/assess/wishes.hpp"

namespace loam::assess {

namespace {

buying::Household household_of(const plan::Plan& plan, const catalog::Catalog& catalog,
                               std::chrono::year_month_day today)
{
    const Context context{plan, catalog, today};
    std::vector<InstantStage> stages;
    stages.reserve(plan.enclosures.size()); // the parts point into it
    std::vector<Part> parts;
    std::vector<Supplies> supplies;
    for (std::size_t i = 0; i < plan.enclosures.size(); ++i) {
        const Housed housed{plan.enclosures[i], i};
        stages.push_back(assess_instant(context, housed));
        parts.push_back({housed, &stages.back(), nullptr, nullptr});
        supplies.push_back(supplies_of(context, parts.back()));
    }
    return {as_wished(all_needs(context, parts, supplies), plan.wishes), owned_of(plan)};
}

} // namespace

MergedOrder merged_order(const std::vector<plan::Plan>& plans, const catalog::Catalog& catalog,
                         std::chrono::year_month_day today, std::optional<buying::Aim> aim)
{
    if (plans.empty()) {
        return {};
    }
    std::vector<buying::Household> households;
    bool comparable = true;
    for (const plan::Plan& plan : plans) {
        households.push_back(household_of(plan, catalog, today));
        comparable = comparable && prices_match(plan, catalog);
    }
    // One order has one currency: where a plan counts in another than the list, none is priced.
    const Currency list = Currency::find(catalog.prices.currency).value_or(currency_of(plans.front()));
    const auto offers = offers_of(catalog.prices, comparable ? list : Currency{"", 2});
    buying::Purchase bought =
        buying::purchase(households, offers, comparable ? terms_of(catalog.prices, list) : std::vector<buying::Terms>{},
                         list, aim.value_or(aim_of(plans.front())), level_of(plans.front()));
    for (const plan::Plan& plan : plans) {
        if (comparable) {
            add_own_lines(bought.order, plan, list);
        }
    }
    return {shopping_lines(bought.order, catalog.prices), delivery_costs(bought)};
}

} // namespace loam::assess
