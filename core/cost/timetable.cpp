#include "core/cost/timetable.hpp"

#include <algorithm>
#include <cmath>

#include "core/cost/running.hpp"

namespace loam::cost {

namespace {

using std::chrono::year_month_day;

// Three lives of four months must end on the year although 12 / 3 may not be exact: about three seconds.
constexpr double slack_months = 1e-6;

year_month_day whole_months_after(year_month_day day, int months)
{
    const year_month_day moved = day + std::chrono::months(months);
    return moved.ok() ? moved : year_month_day(moved.year() / moved.month() / std::chrono::last);
}

} // namespace

std::vector<double> renewal_months(double life_months, double age_months, double until_months)
{
    std::vector<double> result;
    if (!(life_months >= shortest_life_months)) {
        return result;
    }
    const double first = std::max(0.0, life_months - age_months);
    for (int count = 0;; ++count) {
        const double due = first + count * life_months; // no sum of sums: no drift
        if (!(due < until_months - slack_months)) {
            return result;
        }
        result.push_back(due);
    }
}

year_month_day months_after(year_month_day day, double months)
{
    const double whole = std::floor(months + slack_months);
    const double rest = std::max(0.0, months - whole);
    const year_month_day before = whole_months_after(day, static_cast<int>(whole));
    const std::chrono::sys_days start = before;
    const std::chrono::sys_days end = whole_months_after(day, static_cast<int>(whole) + 1);
    const auto span = static_cast<double>((end - start).count());
    return start + std::chrono::days(static_cast<int>(std::floor(rest * span + slack_months)));
}

} // namespace loam::cost
