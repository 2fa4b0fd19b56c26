#include "core/cost/months.hpp"

#include <algorithm>
#include <numeric>

#include "core/cost/renewals.hpp"

namespace loam::cost {

namespace {

constexpr std::size_t count = 12;
using Weights = std::array<double, count>;

// `whole` by the weights: each month gets what is due by its end less what was given before, so that nothing is lost
// to rounding.
std::array<Money, count> shared_out(const Money& whole, const Weights& weights)
{
    const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
    std::array<Money, count> parts;
    Money given(0, whole.currency());
    double reached = 0.0;
    for (std::size_t m = 0; m < count; ++m) {
        reached += weights[m];
        const Money due = m + 1 == count ? whole : whole.scaled(std::min(1.0, reached / sum));
        parts[m] = due - given;
        given = due;
    }
    return parts;
}

// Of January to December, from the month that comes first.
Weights in_order(const std::array<Range, count>& of_months, double Range::*end, unsigned first_month)
{
    Weights weights{};
    for (std::size_t m = 0; m < count; ++m) {
        weights[m] = of_months[(first_month - 1 + m) % count].*end;
    }
    return weights;
}

Weights days_of(const std::vector<Month>& months)
{
    Weights days{};
    for (std::size_t m = 0; m < count; ++m) {
        days[m] = static_cast<double>(static_cast<unsigned>((months[m].month / std::chrono::last).day()));
    }
    return days;
}

bool all_zero(const Weights& weights)
{
    return std::all_of(weights.begin(), weights.end(), [](double one) { return !(one > 0.0); });
}

// How one member of the ranges goes, with the member of the energy that belongs to it.
struct Course {
    Money MoneyRange::*price;
    double Range::*use;
};

void spread(std::vector<Month>& months, const Running& running, const std::array<Range, count>& month_kwh,
            const Course& by)
{
    const Weights days = days_of(months);
    const Weights kwh = in_order(month_kwh, by.use, static_cast<unsigned>(months.front().month.month()));
    for (const Line& line : running.lines) {
        if (line.every_months) {
            continue; // a replacement: it has its own month
        }
        const bool electric = line.kind == Kind::electricity;
        const auto parts = shared_out(line.per_year.*by.price, electric && !all_zero(kwh) ? kwh : days);
        for (std::size_t m = 0; m < count; ++m) {
            (electric ? months[m].electricity : months[m].others).*by.price += parts[m];
        }
    }
}

void put_replacements(std::vector<Month>& months, const std::vector<Renewal>& renewals,
                      std::chrono::year_month_day from)
{
    const auto end = months.back().month + std::chrono::months{1};
    for (const Due& due : due_dates(renewals, from, end / std::chrono::day{1})) {
        const std::chrono::year_month in = due.due.year() / due.due.month();
        for (Month& month : months) {
            if (month.month == in) {
                month.replaced += due.price;
            }
        }
    }
}

} // namespace

std::vector<Month> months(const Running& running, const std::vector<Renewal>& renewals,
                          const std::array<Range, count>& month_kwh, std::chrono::year_month_day from,
                          const Currency& currency)
{
    const MoneyRange zero = MoneyRange::zero(currency);
    std::vector<Month> result;
    for (std::size_t m = 0; m < count; ++m) {
        result.push_back(
            {from.year() / from.month() + std::chrono::months{static_cast<int>(m)}, zero, zero, zero, zero});
    }
    for (const Course& by : {Course{&MoneyRange::low, &Range::low}, Course{&MoneyRange::typical, &Range::likely},
                             Course{&MoneyRange::high, &Range::high}}) {
        spread(result, running, month_kwh, by);
    }
    put_replacements(result, renewals, from);
    for (Month& month : result) {
        for (const MoneyRange* part : {&month.electricity, &month.replaced, &month.others}) {
            month.spent += *part;
        }
    }
    return result;
}

} // namespace loam::cost
