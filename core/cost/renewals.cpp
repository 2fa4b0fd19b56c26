#include "core/cost/renewals.hpp"

#include <algorithm>
#include <tuple>

#include "core/cost/timetable.hpp"

namespace loam::cost {

namespace {

using std::chrono::year_month_day;

// Whole months that surely reach to `until`.
double months_between(year_month_day from, year_month_day until)
{
    const auto years = static_cast<int>(until.year()) - static_cast<int>(from.year());
    const auto months =
        static_cast<int>(static_cast<unsigned>(until.month())) - static_cast<int>(static_cast<unsigned>(from.month()));
    return years * months_per_year + months + 1;
}

} // namespace

std::vector<Due> due_dates(const std::vector<Renewal>& renewals, year_month_day from, year_month_day until)
{
    if (!until.ok()) { // a year after 29 February
        until = until.year() / until.month() / std::chrono::last;
    }
    std::vector<Due> result;
    for (const Renewal& renewal : renewals) {
        const auto likely =
            renewal_months(renewal.life_months.likely, renewal.age_months.likely, months_between(from, until));
        double earliest = std::max(0.0, renewal.life_months.low - renewal.age_months.high);
        for (const double months : likely) {
            const year_month_day due = months_after(from, months);
            if (due >= until) {
                break;
            }
            result.push_back(
                {renewal.item, renewal.name, renewal.where, months_after(from, earliest), due, renewal.price});
            // The next one is put in on the likely date; from then the short life counts.
            earliest = months + renewal.life_months.low;
        }
    }
    std::stable_sort(result.begin(), result.end(), [](const Due& a, const Due& b) {
        return std::tie(a.due, a.where, a.item) < std::tie(b.due, b.where, b.item);
    });
    return result;
}

} // namespace loam::cost
