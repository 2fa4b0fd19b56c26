// When something comes round: whole days only, by the Gregorian calendar, without a clock or a time zone.
#pragma once

#include <chrono>
#include <optional>
#include <vector>

namespace loam::calendar {

enum class Frequency { once, daily, weekly, monthly, yearly };

struct Recurrence {
    Frequency frequency = Frequency::once;
    int every = 1;                          // 1 or more: every so many days, weeks, months or years
    int times_a_day = 1;                    // 1 or more, on each of its days
    std::vector<std::chrono::weekday> on{}; // of weekly, in the order of the week from the first day; empty: the
                                            // weekday of the first day
    friend bool operator==(const Recurrence&, const Recurrence&) = default;
};

// What: the recurrence that comes nearest to one in so many days.
// Method: under 28 days counted in days, in weeks where they are whole; from 28 days on in months of 365.25/12 days,
// and
//   in years where those are whole, so that a task keeps its day of the month.
// Range: 0.5 days or more, otherwise nullopt (several times a day: times_a_day()).
std::optional<Recurrence> every_days(double interval_d);

// What: the recurrence of something done so often a day, from `first` on, never less often than asked.
// Method: once a day or more: rounded up to whole times; less: whole times a week, rounded up and spread evenly over
// it;
//   less than once a week: every_days(), rounded down to whole days.
// Range: above 0, at most 24, otherwise nullopt.
std::optional<Recurrence> times_per_day(double rate, std::chrono::sys_days first);

// What: the days of [from, until] on which it falls, beginning with `first`.
// Method: weeks are counted from Monday. Where a month lacks the day of `first` (31st, 29 February), its last day
// counts,
//   and the next month goes by `first` again.
std::vector<std::chrono::sys_days> days_of(const Recurrence& recurrence, std::chrono::sys_days first,
                                           std::chrono::sys_days from, std::chrono::sys_days until);

// The day after `first` on which it falls next; nullopt: never.
std::optional<std::chrono::sys_days> next_after(const Recurrence& recurrence, std::chrono::sys_days first);

} // namespace loam::calendar
