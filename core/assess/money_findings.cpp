#include <algorithm>

#include "core/assess/costs.hpp"
#include "core/catalog/price_state.hpp"

namespace loam::assess {

namespace {

constexpr Judgement unknown{Verdict::not_known, Direction::none};

std::string joined(const std::vector<std::string>& names)
{
    std::string text;
    for (const std::string& name : names) {
        text += (text.empty() ? "" : ", ") + name;
    }
    return text;
}

void judge_list(const Context& context, Notes& notes)
{
    const catalog::PriceList& prices = context.catalog.prices;
    if (prices.illustrative) {
        report(notes, "money.prices-illustrative", {Verdict::fits, Direction::none}, {"/budget", ""},
               because("rule.price-list", {}, {{"date", prices.date}}));
    }
    const auto age_months = catalog::age_months(prices, context.today);
    if (age_months && *age_months > catalog::old_prices_months) {
        report(notes, "money.prices-old", {Verdict::tight, Direction::none}, {"/budget", ""},
               because("rule.price-age", {{"age_months", *age_months, "mo"}}, {{"date", prices.date}}));
    }
}

void judge_owned(const Context& context, Notes& notes)
{
    for (const plan::OwnedItem& owned : context.plan.owned) {
        if (catalog::find_item(context.catalog.prices, owned.item) == nullptr) {
            report(notes, "money.owned-not-in-list", unknown, {owned.id, ""},
                   because("rule.price-list", {{"quantity", owned.quantity, "1"}}, {{"item", owned.item}}));
        }
    }
}

} // namespace

Notes judge_money(const Context& context, const Costs& costs, double kwh_per_year)
{
    Notes notes;
    if (!costs.prices_match_currency) {
        report(notes, "money.currency-mismatch", unknown, {"/currency", ""},
               because("rule.price-list", {},
                       {{"plan_currency", costs.currency.code}, {"list_currency", context.catalog.prices.currency}}))
            .remedy = remedy("remedy.other-price-list", {}, {{"currency", costs.currency.code}});
    } else if (!costs.unpriced.empty()) {
        const std::string needs = joined(costs.unpriced);
        report(notes, "money.unpriced", unknown, {"/budget", ""},
               because("rule.price-list", {{"count", static_cast<double>(costs.unpriced.size()), "1"}},
                       {{"needs", needs}}))
            .remedy = remedy("remedy.add-prices", {}, {{"needs", needs}});
    }
    if (context.plan.budget.channel && !only_channel(context.plan, context.catalog.prices)) {
        report(notes, "money.channel-not-in-list", unknown, {"/budget/channel", ""},
               because("rule.price-list", {}, {{"channel", *context.plan.budget.channel}}));
    }
    for (const DeliveryCost& one : costs.deliveries) {
        if (one.below_minimum) {
            report(notes, "money.below-minimum", {Verdict::tight, Direction::below}, {"/budget", ""},
                   because("rule.price-list", {{"goods", one.goods.typical.decimal().value(), costs.currency.code}},
                           {{"channel", one.channel}}));
        }
    }
    if (!context.plan.site.electricity_price_per_kwh && kwh_per_year > 0.0) {
        const std::string pointer = "/site/electricity_price_per_kwh";
        assume(notes, {pointer, costs.currency.code + "/kWh", std::nullopt, {}});
        report(notes, "money.no-tariff", unknown, {pointer, ""},
               because("rule.stated-by-keeper", {{"kwh_per_year", kwh_per_year, "kWh"}}, {}))
            .remedy = state(pointer);
    }
    judge_list(context, notes);
    judge_owned(context, notes);
    return notes;
}

} // namespace loam::assess
