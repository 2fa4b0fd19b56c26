// Days are counted by hand on the Gregorian calendar; the same rules are compared with python-dateutil in
// tests/scripts/calendar_parity.py.
#include "core/calendar/recurrence.hpp"

#include "tests/catch.hpp"

using namespace loam::calendar;
using namespace std::chrono_literals;
using std::chrono::sys_days;

namespace {

std::vector<sys_days> on(std::initializer_list<std::chrono::year_month_day> days)
{
    return {days.begin(), days.end()};
}

} // namespace

TEST_CASE("What is done monthly on the 31st is done on the last day of a shorter month, and then on the 31st again")
{
    const Recurrence monthly{.frequency = Frequency::monthly};
    CHECK(days_of(monthly, 2027y / 10 / 31, 2027y / 10 / 1, 2028y / 4 / 30) ==
          on({2027y / 10 / 31, 2027y / 11 / 30, 2027y / 12 / 31, 2028y / 1 / 31, 2028y / 2 / 29, 2028y / 3 / 31,
              2028y / 4 / 30}));
}

TEST_CASE("What is done yearly on a leap day is done on the 28th in other years")
{
    const Recurrence yearly{.frequency = Frequency::yearly};
    CHECK(days_of(yearly, 2028y / 2 / 29, 2028y / 1 / 1, 2032y / 12 / 31) ==
          on({2028y / 2 / 29, 2029y / 2 / 28, 2030y / 2 / 28, 2031y / 2 / 28, 2032y / 2 / 29}));
}

TEST_CASE("Every tenth day goes through a leap February without a gap")
{
    const Recurrence tenth{.frequency = Frequency::daily, .every = 10};
    CHECK(days_of(tenth, 2028y / 2 / 15, 2028y / 2 / 20, 2028y / 3 / 10) == on({2028y / 2 / 25, 2028y / 3 / 6}));
}

TEST_CASE("Every second week counts weeks from Monday")
{
    // 3 January 2027 is a Sunday: the next week but one begins on Monday 11 January.
    const Recurrence second{.frequency = Frequency::weekly, .every = 2};
    CHECK(days_of(second, 2027y / 1 / 3, 2027y / 1 / 1, 2027y / 2 / 1) ==
          on({2027y / 1 / 3, 2027y / 1 / 17, 2027y / 1 / 31}));
}

TEST_CASE("Nothing falls before its first day, and what is done once falls once")
{
    CHECK(days_of({}, 2027y / 5 / 1, 2027y / 5 / 2, 2028y / 5 / 1).empty());
    CHECK(days_of({}, 2027y / 5 / 1, 2027y / 5 / 1, 2027y / 5 / 1).size() == 1);
    const Recurrence daily{.frequency = Frequency::daily};
    CHECK(days_of(daily, 2027y / 5 / 3, 2027y / 5 / 1, 2027y / 5 / 4) == on({2027y / 5 / 3, 2027y / 5 / 4}));
}

TEST_CASE("A rate a day is never rounded down to less care")
{
    const sys_days friday = 2027y / 1 / 1;
    CHECK(times_per_day(1.0, friday) == Recurrence{.frequency = Frequency::daily});
    CHECK(times_per_day(1.5, friday) == Recurrence{.frequency = Frequency::daily, .times_a_day = 2});
    CHECK(times_per_day(0.9, friday) == Recurrence{.frequency = Frequency::daily});
    // 0.28 a day is how a sheet says twice a week.
    const auto twice = times_per_day(0.28, friday);
    REQUIRE(twice);
    CHECK(days_of(*twice, friday, friday, 2027y / 1 / 14) ==
          on({2027y / 1 / 1, 2027y / 1 / 4, 2027y / 1 / 8, 2027y / 1 / 11}));
    CHECK(times_per_day(1.0 / 7.0, friday) == Recurrence{.frequency = Frequency::weekly});
    CHECK(times_per_day(0.007, friday).has_value());
    CHECK_FALSE(times_per_day(0.0, friday));
    CHECK_FALSE(times_per_day(-1.0, friday));
}

TEST_CASE("An interval in days becomes days, weeks, months or years")
{
    CHECK(every_days(1.0) == Recurrence{.frequency = Frequency::daily});
    CHECK(every_days(10.15) == Recurrence{.frequency = Frequency::daily, .every = 10});
    CHECK(every_days(14.0) == Recurrence{.frequency = Frequency::weekly, .every = 2});
    CHECK(every_days(30.0) == Recurrence{.frequency = Frequency::monthly});
    CHECK(every_days(91.0) == Recurrence{.frequency = Frequency::monthly, .every = 3});
    CHECK(every_days(365.25) == Recurrence{.frequency = Frequency::yearly});
    CHECK_FALSE(every_days(0.0));
    CHECK_FALSE(every_days(std::numeric_limits<double>::infinity()));
}

TEST_CASE("The next of its days follows the first")
{
    CHECK(next_after({.frequency = Frequency::monthly}, 2027y / 1 / 31) == sys_days(2027y / 2 / 28));
    CHECK(next_after({.frequency = Frequency::yearly, .every = 4}, 2028y / 2 / 29) == sys_days(2032y / 2 / 29));
    CHECK(next_after({.frequency = Frequency::weekly}, 2027y / 1 / 1) == sys_days(2027y / 1 / 8));
    CHECK_FALSE(next_after({}, 2027y / 1 / 1));
}
