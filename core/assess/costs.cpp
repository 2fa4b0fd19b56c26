#include "core/assess/costs.hpp"

#include <algorithm>

#include "core/assess/life_costs.hpp"
#include "core/cost/horizon.hpp"
#include "core/cost/months.hpp"
#include "core/cost/present_value.hpp"
#include "core/cost/renewals.hpp"
#include "core/cost/startup.hpp"

namespace loam::assess {

namespace {

CostKind kind_of(cost::Kind kind)
{
    switch (kind) {
    case cost::Kind::electricity:
        return CostKind::electricity;
    case cost::Kind::replacement:
        return CostKind::replacement;
    case cost::Kind::substrate:
        return CostKind::substrate;
    case cost::Kind::food:
        return CostKind::food;
    case cost::Kind::water:
        return CostKind::water;
    case cost::Kind::health:
        return CostKind::health;
    case cost::Kind::other:
        return CostKind::other;
    }
    return CostKind::other;
}

void take_running(Costs& costs, const cost::Running& running)
{
    costs.running_per_year = running.total;
    for (const cost::Line& line : running.lines) {
        costs.lines.push_back({kind_of(line.kind), line.item, line.name, line.per_year, line.every_months});
        if (line.kind == cost::Kind::electricity) {
            costs.electricity_per_year = line.per_year;
        }
    }
}

void take_horizon(const Context& context, Notes& notes, Costs& costs, const std::vector<cost::Consumption>& used,
                  const std::vector<cost::Renewal>& renewed)
{
    const plan::Budget& budget = context.plan.budget;
    const std::optional<double> given =
        budget.horizon_years ? std::optional(static_cast<double>(*budget.horizon_years)) : std::nullopt;
    const auto years = given_or_assumed(notes, context.catalog, given, "/budget/horizon_years", "budget.horizon_years");
    const auto rate =
        given_or_assumed(notes, context.catalog, budget.discount_rate, "/budget/discount_rate", "budget.discount_rate");
    if (!years || !rate) {
        return;
    }
    const auto course =
        cost::horizon(costs.startup, used, renewed, static_cast<std::int64_t>(years->likely), costs.currency);
    if (!course) {
        report(notes, "money.too-large", {Verdict::not_known, Direction::none}, {"/budget", ""},
               because("rule.price-list", {}, {}));
        return;
    }
    for (const cost::Year& year : *course) {
        costs.horizon.push_back({year.year, year.spent, year.cumulative});
    }
    costs.net_present_cost = cost::net_present_cost(*course, rate->likely);
    costs.equivalent_annual_cost = cost::equivalent_annual_cost(*course, rate->likely);
}

std::array<Range, 12> kwh_by_month(const std::vector<RunningInputs>& enclosures)
{
    std::array<Range, 12> sums{};
    for (const RunningInputs& one : enclosures) {
        for (std::size_t m = 0; m < sums.size(); ++m) {
            const Range& kwh = one.power->result.month_kwh[m];
            sums[m] = {sums[m].low + kwh.low, sums[m].likely + kwh.likely, sums[m].high + kwh.high};
        }
    }
    return sums;
}

void take_months(Costs& costs, const std::vector<cost::Month>& months)
{
    for (const cost::Month& month : months) {
        costs.months.push_back({month.month, month.electricity, month.replaced, month.others, month.spent});
    }
}

void take_heads(Costs& costs)
{
    if (costs.animals > 0) {
        const double share = 1.0 / static_cast<double>(costs.animals);
        const MoneyRange& all = costs.running_per_year;
        costs.running_per_animal = {all.low.scaled(share), all.typical.scaled(share), all.high.scaled(share)};
    }
}

MoneyRange startup_of(const Context& context, Notes& notes, const buying::Purchase& bought, const Currency& currency)
{
    std::vector<MoneyRange> totals;
    for (const buying::Line& line : bought.order.lines) {
        if (line.total) {
            totals.push_back(*line.total);
        }
    }
    for (const buying::Delivered& one : bought.deliveries) {
        totals.push_back(one.delivery);
        totals.push_back(one.tax);
    }
    const auto contingency = given_or_assumed(notes, context.catalog, context.plan.budget.contingency,
                                              "/budget/contingency", "budget.contingency");
    return cost::startup(totals, contingency.value_or(exactly(0.0)), currency).total;
}

// Whether it is a lamp that is replaced because its UV has faded, before it would be worn out.
bool is_for_uv(const std::vector<cost::Renewal>& renewed, const std::vector<RunningInputs>& enclosures,
               const cost::Due& due)
{
    const auto faded = uv_life_months(enclosures, due.where);
    return std::any_of(renewed.begin(), renewed.end(), [&](const cost::Renewal& one) {
        return faded && one.where == due.where && one.item == due.item && one.life_months.likely == faded->likely;
    });
}

} // namespace

CostStage assess_costs(const Context& context, const std::vector<buying::Need>& needs, const buying::Purchase& bought,
                       const std::vector<RunningInputs>& enclosures)
{
    CostStage stage;
    Costs& costs = stage.costs;
    costs.currency = currency_of(context.plan);
    costs.prices_match_currency = prices_match(context.plan, context.catalog);
    costs.price_date = context.catalog.prices.date;
    costs.price_illustrative = context.catalog.prices.illustrative;
    costs.startup = startup_of(context, stage.notes, bought, costs.currency);
    costs.deliveries = delivery_costs(bought);
    costs.running_per_year = MoneyRange::zero(costs.currency);
    double kwh_per_year = 0.0;
    for (const RunningInputs& one : enclosures) {
        kwh_per_year += one.power->kwh_per_year.likely;
        costs.animals += animal_count(one.housed.enclosure);
    }
    costs.without_electricity = !context.plan.site.electricity_price_per_kwh && kwh_per_year > 0.0;
    const auto used = consumptions(context, enclosures);
    const auto renewed = renewals(context, needs, enclosures, stage.notes);
    if (const auto running = cost::running(used, renewed, costs.currency)) {
        take_running(costs, *running);
        take_horizon(context, stage.notes, costs, used, renewed);
        take_months(costs, cost::months(*running, renewed, kwh_by_month(enclosures), context.today, costs.currency));
        take_heads(costs);
        costs.life = life_cost(context, costs);
        const std::chrono::year_month_day next_year{context.today.year() + std::chrono::years{1}, context.today.month(),
                                                    context.today.day()};
        for (const cost::Due& due : cost::due_dates(renewed, context.today, next_year)) {
            costs.replacements.push_back(
                {due.item, due.name, due.where, due.earliest, due.due, due.price, is_for_uv(renewed, enclosures, due)});
        }
    } else {
        report(stage.notes, "money.too-large", {Verdict::not_known, Direction::none}, {"/budget", ""},
               because("rule.price-list", {}, {}));
    }
    for (const buying::Line& line : bought.order.lines) {
        if (line.unpriced) {
            costs.unpriced.push_back(line.need);
        }
    }
    append(stage.notes, judge_money(context, costs, kwh_per_year));
    return stage;
}

} // namespace loam::assess
