#include "core/calendar/recurrence.hpp"

#include <algorithm>
#include <cmath>

namespace loam::calendar {

namespace {

using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::weekday;
using std::chrono::year_month;
using std::chrono::year_month_day;
using std::chrono::year_month_day_last;

constexpr double days_a_month = 365.25 / 12.0;
constexpr double days_a_week = 7.0;
// 0.28 a day is what a sheet says for twice a week; it must not become three times.
constexpr double rounding = 0.05;

sys_days same_day_in(year_month month, std::chrono::day wanted)
{
    const year_month_day_last last{month.year(), std::chrono::month_day_last{month.month()}};
    return sys_days(year_month_day{month.year(), month.month(), std::min(wanted, last.day())});
}

int day_of_week(sys_days day) // 0: Monday
{
    return static_cast<int>(weekday(day).iso_encoding()) - 1;
}

bool in_week_pattern(const Recurrence& recurrence, sys_days first, sys_days day)
{
    const auto monday = [](sys_days of) { return of - days(day_of_week(of)); };
    const auto weeks = (monday(day) - monday(first)).count() / 7;
    if (weeks % recurrence.every != 0) {
        return false;
    }
    return recurrence.on.empty()
               ? weekday(day) == weekday(first)
               : std::find(recurrence.on.begin(), recurrence.on.end(), weekday(day)) != recurrence.on.end();
}

// Steps of whole days: each is tried, as no span asked for is longer than some years.
template <class Falls> std::vector<sys_days> each_day(sys_days from, sys_days until, Falls falls)
{
    std::vector<sys_days> found;
    for (sys_days day = from; day <= until; day += days(1)) {
        if (falls(day)) {
            found.push_back(day);
        }
    }
    return found;
}

std::vector<sys_days> each_month(sys_days first, sys_days from, sys_days until, int every_months)
{
    std::vector<sys_days> found;
    const year_month_day begins(first);
    for (year_month month = begins.year() / begins.month();; month += std::chrono::months(every_months)) {
        const sys_days day = same_day_in(month, begins.day());
        if (day > until) {
            return found;
        }
        if (day >= from) {
            found.push_back(day);
        }
    }
}

} // namespace

std::optional<Recurrence> every_days(double interval_d)
{
    constexpr double shortest_month_d = 28.0;
    constexpr long months_a_year = 12;
    if (!(interval_d >= 0.5) || !std::isfinite(interval_d)) {
        return std::nullopt;
    }
    if (interval_d < shortest_month_d) {
        const long whole = std::lround(interval_d);
        if (whole % 7 == 0) {
            return Recurrence{.frequency = Frequency::weekly, .every = static_cast<int>(whole / 7)};
        }
        return Recurrence{.frequency = Frequency::daily, .every = static_cast<int>(whole)};
    }
    const long months = std::max(1L, std::lround(interval_d / days_a_month));
    if (months % months_a_year == 0) {
        return Recurrence{.frequency = Frequency::yearly, .every = static_cast<int>(months / months_a_year)};
    }
    return Recurrence{.frequency = Frequency::monthly, .every = static_cast<int>(months)};
}

std::optional<Recurrence> times_per_day(double rate, sys_days first)
{
    constexpr double most = 24.0;
    if (!(rate > 0.0) || rate > most) {
        return std::nullopt;
    }
    const int a_week = static_cast<int>(std::ceil(rate * days_a_week - rounding));
    if (a_week < 1) {
        return every_days(std::floor(1.0 / rate));
    }
    if (a_week >= 7) {
        const int a_day = static_cast<int>(std::ceil(rate - rounding));
        return Recurrence{.frequency = Frequency::daily, .times_a_day = std::max(1, a_day)};
    }
    Recurrence weekly{.frequency = Frequency::weekly};
    if (a_week > 1) {
        for (int i = 0; i < a_week; ++i) {
            weekly.on.push_back(weekday(first) + days(i * 7 / a_week));
        }
    }
    return weekly;
}

std::vector<sys_days> days_of(const Recurrence& recurrence, sys_days first, sys_days from, sys_days until)
{
    const sys_days begin = std::max(first, from);
    const int every = std::max(1, recurrence.every);
    switch (recurrence.frequency) {
    case Frequency::once:
        return first >= from && first <= until ? std::vector{first} : std::vector<sys_days>{};
    case Frequency::daily:
        return each_day(begin, until, [&](sys_days day) { return (day - first).count() % every == 0; });
    case Frequency::weekly:
        return each_day(begin, until, [&](sys_days day) { return in_week_pattern(recurrence, first, day); });
    case Frequency::monthly:
        return each_month(first, from, until, every);
    case Frequency::yearly:
        return each_month(first, from, until, 12 * every);
    }
    return {};
}

std::optional<sys_days> next_after(const Recurrence& recurrence, sys_days first)
{
    constexpr int longest_month_d = 31;
    constexpr int longest_year_d = 366;
    const int unit_d = recurrence.frequency == Frequency::yearly    ? longest_year_d
                       : recurrence.frequency == Frequency::monthly ? longest_month_d
                       : recurrence.frequency == Frequency::weekly  ? 7
                                                                    : 1;
    const auto found = days_of(recurrence, first, first + days(1), first + days(unit_d * recurrence.every));
    return found.empty() ? std::nullopt : std::optional(found.front());
}

} // namespace loam::calendar
