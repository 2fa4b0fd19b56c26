#include "core/cost/running.hpp"

#include <algorithm>
#include <cmath>

namespace loam::cost {

namespace {

constexpr double days_per_month = days_per_year / months_per_year;

bool ordered(const Range& range)
{
    return std::isfinite(range.high) && range.low <= range.likely && range.likely <= range.high;
}

bool acceptable(const Money& money, const Currency& currency)
{
    return money.currency() == currency && money.minor_units() >= 0 && !money.overflowed();
}

// nullopt where one of them is absent or did not fit.
std::optional<MoneyRange> together(const std::optional<Money>& low, const std::optional<Money>& typical,
                                   const std::optional<Money>& high)
{
    if (!low || !typical || !high || low->overflowed() || typical->overflowed() || high->overflowed()) {
        return std::nullopt;
    }
    return MoneyRange{*low, *typical, *high};
}

} // namespace

std::optional<Range> life_months(const std::optional<Range>& life_hours, double hours_per_day,
                                 const std::optional<Range>& by_calendar_months)
{
    if (!life_hours || !(hours_per_day > 0.0)) {
        return by_calendar_months;
    }
    const double hours_per_month = hours_per_day * days_per_month;
    const Range by_use{life_hours->low / hours_per_month, life_hours->likely / hours_per_month,
                       life_hours->high / hours_per_month};
    if (!by_calendar_months) {
        return by_use;
    }
    return Range{std::min(by_use.low, by_calendar_months->low), std::min(by_use.likely, by_calendar_months->likely),
                 std::min(by_use.high, by_calendar_months->high)};
}

bool valid(const Renewal& renewal, const Currency& currency)
{
    return acceptable(renewal.price.low, currency) && acceptable(renewal.price.typical, currency) &&
           acceptable(renewal.price.high, currency) && ordered(renewal.life_months) &&
           renewal.life_months.low >= shortest_life_months && ordered(renewal.age_months) &&
           renewal.age_months.low >= 0.0;
}

std::optional<Line> line(const Consumption& consumption, const Currency& currency)
{
    const bool prices_good = consumption.price_low.coefficient >= 0 && consumption.price_typical.coefficient >= 0 &&
                             consumption.price_high.coefficient >= 0;
    if (!ordered(consumption.per_year) || consumption.per_year.low < 0.0 || !(consumption.price_per > 0.0) ||
        !prices_good) {
        return std::nullopt;
    }
    const Range& amount = consumption.per_year;
    const double each = consumption.price_per;
    const auto total = together(Money::of(amount.low / each, consumption.price_low, currency),
                                Money::of(amount.likely / each, consumption.price_typical, currency),
                                Money::of(amount.high / each, consumption.price_high, currency));
    if (!total) {
        return std::nullopt;
    }
    return Line{consumption.kind, consumption.item, consumption.name, *total, std::nullopt};
}

std::optional<Line> line(const Renewal& renewal, const Currency& currency)
{
    if (!valid(renewal, currency)) {
        return std::nullopt;
    }
    const Range& life = renewal.life_months;
    const auto share = together(renewal.price.low.scaled(months_per_year / life.high),
                                renewal.price.typical.scaled(months_per_year / life.likely),
                                renewal.price.high.scaled(months_per_year / life.low));
    if (!share) {
        return std::nullopt;
    }
    return Line{renewal.kind, renewal.item, renewal.name, *share, life.likely};
}

std::optional<Running> running(const std::vector<Consumption>& consumptions, const std::vector<Renewal>& renewals,
                               const Currency& currency)
{
    Running result;
    result.total = MoneyRange::zero(currency);
    const auto add = [&](const std::optional<Line>& next) {
        if (next) {
            result.total += next->per_year;
            result.lines.push_back(*next);
        }
        return next.has_value();
    };
    for (const Consumption& consumption : consumptions) {
        if (!add(line(consumption, currency))) {
            return std::nullopt;
        }
    }
    for (const Renewal& renewal : renewals) {
        if (!add(line(renewal, currency))) {
            return std::nullopt;
        }
    }
    const bool fits = together(result.total.low, result.total.typical, result.total.high).has_value();
    return fits ? std::optional<Running>(result) : std::nullopt;
}

} // namespace loam::cost
