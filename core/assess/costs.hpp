// Startup, running costs, replacements and the years ahead.
#pragma once

#include <vector>

#include "core/assess/context.hpp"
#include "core/assess/needs.hpp"
#include "core/assess/shopping.hpp"
#include "core/cost/running.hpp"

namespace loam::assess {

// What one enclosure adds to the running costs.
struct RunningInputs {
    Housed housed;
    const PowerStage* power = nullptr;
    const WaterStage* water = nullptr;
    const UvResult* uv = nullptr;
};

struct CostStage {
    Costs costs;
    Notes notes;
};

CostStage assess_costs(const Context& context, const std::vector<buying::Need>& needs, const buying::Purchase& bought,
                       const std::vector<RunningInputs>& enclosures);

std::vector<cost::Consumption> consumptions(const Context& context, const std::vector<RunningInputs>& enclosures);
std::vector<cost::Renewal> renewals(const Context& context, const std::vector<buying::Need>& needs,
                                    const std::vector<RunningInputs>& enclosures, Notes& notes);

// Months for which a new lamp in the place of this one keeps the UV of its animals in their zone, short, likely and
// long. nullopt: it gives none, or never falls out of it, or a new one isn't in it, or it is not known.
std::optional<Range> uv_life_months(const std::vector<RunningInputs>& enclosures, const std::string& device);

// The item of the list that serves a kind of need and whose typical price by the unit is least; nullptr: none priced.
struct UnitPrice {
    const catalog::Item* item = nullptr;
    const catalog::Pack* pack = nullptr;
};
std::optional<UnitPrice> cheapest_by_unit(const catalog::PriceList& prices, const std::string& kind);

// Money findings: list in another currency, illustrative, old, what has no price, no tariff.
Notes judge_money(const Context& context, const Costs& costs, double kwh_per_year);

} // namespace loam::assess
