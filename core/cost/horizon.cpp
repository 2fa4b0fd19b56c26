#include "core/cost/horizon.hpp"

#include <algorithm>
#include <cmath>

#include "core/cost/timetable.hpp"

namespace loam::cost {

namespace {

constexpr std::int64_t most_years = 100;

// One of the three courses: which member of the ranges it takes.
struct Course {
    Money MoneyRange::*price;
    double Range::*life;
    double Range::*age;
};

constexpr Course low_course{&MoneyRange::low, &Range::high, &Range::low};
constexpr Course typical_course{&MoneyRange::typical, &Range::likely, &Range::likely};
constexpr Course high_course{&MoneyRange::high, &Range::low, &Range::high};

void replace_on_time(std::vector<Year>& course, const Renewal& renewal, const Course& by)
{
    const double years = static_cast<double>(course.size()) - 1.0;
    for (const double months :
         renewal_months(renewal.life_months.*by.life, renewal.age_months.*by.age, years * months_per_year)) {
        // In [12 (k - 1), 12 k) for year k; the same slack as the timetable's end of the last year.
        const auto year = static_cast<std::size_t>(std::floor(months / months_per_year + 1e-6)) + 1;
        course[std::min(year, course.size() - 1)].spent.*by.price += renewal.price.*by.price;
    }
}

bool overflowed(const MoneyRange& range)
{
    return range.low.overflowed() || range.typical.overflowed() || range.high.overflowed();
}

} // namespace

std::optional<std::vector<Year>> horizon(const MoneyRange& startup, const std::vector<Consumption>& consumptions,
                                         const std::vector<Renewal>& renewals, std::int64_t years,
                                         const Currency& currency)
{
    const auto even = running(consumptions, {}, currency);
    const bool renewals_good =
        std::all_of(renewals.begin(), renewals.end(), [&](const Renewal& one) { return valid(one, currency); });
    if (years < 0 || years > most_years || !even || !renewals_good || startup.typical.currency() != currency) {
        return std::nullopt;
    }
    std::vector<Year> course;
    for (std::int64_t year = 0; year <= years; ++year) {
        course.push_back({year, year == 0 ? startup : even->total, MoneyRange::zero(currency)});
    }
    for (const Renewal& renewal : renewals) {
        for (const Course& by : {low_course, typical_course, high_course}) {
            replace_on_time(course, renewal, by);
        }
    }
    MoneyRange sum = MoneyRange::zero(currency);
    for (Year& year : course) {
        sum += year.spent;
        year.cumulative = sum;
    }
    return overflowed(sum) ? std::nullopt : std::optional<std::vector<Year>>(course);
}

} // namespace loam::cost
