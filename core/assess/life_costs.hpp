// What an animal costs, by the head and for the rest of its life.
#pragma once

#include "core/assess/assessment.hpp"
#include "core/assess/context.hpp"

namespace loam::assess {

// Of the animal of the plan that may live longest from now. nullopt: no animal, none of a known life span, or the
// plan isn't costed.
// Method: startup + years left x the yearly cost at today's prices, nothing discounted, low with low and high with
// high; rounded outwards to two significant figures, for nobody knows prices of decades ahead.
// Range: years left are those of the species' sheet less the animal's age, at least one; of an animal of unknown age
// anything from one year to the longest life.
std::optional<LifeCost> life_cost(const Context& context, const Costs& costs);

// What beginning and so many years cost. Where the plan looks at as many years, as it has them: with whole prices in
// the years in which things fall due. Else startup + years x the yearly cost at today's prices, nothing discounted.
// nullopt: the plan isn't costed.
struct CostOverYears {
    MoneyRange cost;
    bool from_horizon = false;
    friend bool operator==(const CostOverYears&, const CostOverYears&) = default;
};
std::optional<CostOverYears> cost_over(const Costs& costs, std::int64_t years);

// To two significant figures; down, to the nearest, or up. Zero stays zero.
enum class Towards { lower, nearest, higher };
Money in_round_figures(const Money& amount, Towards towards);

} // namespace loam::assess
