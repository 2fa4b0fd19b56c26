#include <algorithm>

#include "core/assess/iso_day.hpp"
#include "core/calendar/parts.hpp"

namespace loam::calendar {

namespace {

using std::chrono::days;
using std::chrono::sys_days;

sys_days a_year_after(sys_days day)
{
    const std::chrono::year_month_day date(day);
    const std::chrono::year_month_day next = date + std::chrono::years(1);
    return next.ok() ? sys_days(next) : sys_days(next.year() / next.month() / std::chrono::last);
}

} // namespace

std::vector<Task> paper_tasks(const Scope& scope)
{
    std::vector<Task> tasks;
    const std::string& priced = scope.assessment.costs.price_date;
    if (const auto day = assess::day_of(priced)) {
        Task prices = task(scope, "renew-prices", Kind::paper, nullptr, {});
        prices.first = std::max(scope.start, a_year_after(*day));
        prices.labels = {{"date", priced}};
        prices.recurrence = {.frequency = Frequency::yearly};
        prices.basis = Basis::computed;
        tasks.push_back(prices);
    }
    // What is to be replaced is known for a year from the day the plan was worked out, or from the first day of care.
    const sys_days known_until = a_year_after(std::max(scope.start, sys_days(scope.assessment.date)));
    Task plan = task(scope, "renew-plan", Kind::paper, nullptr, {});
    plan.first = known_until - days(1);
    plan.labels = {{"date", assess::iso_of(known_until)}};
    plan.basis = Basis::computed;
    tasks.push_back(plan);
    return tasks;
}

} // namespace loam::calendar
