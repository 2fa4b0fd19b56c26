#include "core/assess/life_costs.hpp"
#include "core/assess/proving.hpp"

#include <algorithm>

namespace loam::assess {

namespace {

std::optional<Range> years_left(const catalog::Species& species, const plan::Animal& animal)
{
    const catalog::Band& span = species.lifespan_years;
    if (!span.max && !span.min) {
        return std::nullopt;
    }
    const double longest = span.max.value_or(span.min.value_or(0.0));
    const double shortest = span.min.value_or(longest);
    const auto left = [](double years) { return std::max(1.0, years); };
    if (!animal.age_years) {
        return Range{1.0, left(0.5 * (shortest + longest) / 2.0), left(longest)};
    }
    const double age = *animal.age_years;
    return Range{left(shortest - age), left(0.5 * (shortest + longest) - age), left(longest - age)};
}

} // namespace

Money in_round_figures(const Money& amount, Towards towards)
{
    std::int64_t step = 1;
    while (amount.minor_units() / step >= 100) {
        step *= 10;
    }
    const std::int64_t whole = amount.minor_units() / step;
    const std::int64_t rest = amount.minor_units() % step;
    const bool up = towards == Towards::higher ? rest > 0 : towards == Towards::nearest && rest >= (step + 1) / 2;
    return {(whole + (up && rest > 0 ? 1 : 0)) * step, amount.currency()};
}

std::optional<CostOverYears> cost_over(const Costs& costs, std::int64_t years)
{
    if (!costs.prices_match_currency || costs.horizon.empty()) {
        return std::nullopt;
    }
    const auto row = std::find_if(costs.horizon.begin(), costs.horizon.end(),
                                  [&](const HorizonYear& year) { return year.year == years; });
    if (row != costs.horizon.end()) {
        return CostOverYears{row->cumulative, true};
    }
    const auto sum = [&](Money MoneyRange::*price) {
        return costs.startup.*price + (costs.running_per_year.*price).scaled(static_cast<double>(years));
    };
    const MoneyRange cost{sum(&MoneyRange::low), sum(&MoneyRange::typical), sum(&MoneyRange::high)};
    if (cost.low.overflowed() || cost.typical.overflowed() || cost.high.overflowed()) {
        return std::nullopt;
    }
    return CostOverYears{cost, false};
}

std::optional<LifeCost> life_cost(const Context& context, const Costs& costs)
{
    std::optional<LifeCost> longest;
    for (const plan::Enclosure& enclosure : context.plan.enclosures) {
        if (is_replaced(context.plan, enclosure.id)) {
            continue; // its animals stand in the box that takes its place
        }
        for (const plan::Animal& animal : enclosure.animals) {
            const catalog::Species* species = context.catalog.find_species(animal.species);
            const auto left = species != nullptr ? years_left(*species, animal) : std::nullopt;
            if (left && (!longest || left->high > longest->years.high)) {
                longest = LifeCost{animal.id, *left, !species->lifespan_years.max, {}};
            }
        }
    }
    if (!longest || !costs.prices_match_currency || costs.horizon.empty()) {
        return std::nullopt;
    }
    const Range& years = longest->years;
    const auto sum = [&](Money MoneyRange::*price, double in_years) {
        return costs.startup.*price + (costs.running_per_year.*price).scaled(in_years);
    };
    const Money low = sum(&MoneyRange::low, years.low);
    const Money typical = sum(&MoneyRange::typical, years.likely);
    const Money high = sum(&MoneyRange::high, years.high);
    if (low.overflowed() || typical.overflowed() || high.overflowed()) {
        return std::nullopt;
    }
    longest->cost = {in_round_figures(low, Towards::lower), in_round_figures(typical, Towards::nearest),
                     in_round_figures(high, Towards::higher)};
    return longest;
}

} // namespace loam::assess
