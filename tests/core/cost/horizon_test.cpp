#include "core/cost/horizon.hpp"

#include "core/cost/renewals.hpp"
#include "core/cost/timetable.hpp"
#include "tests/catch.hpp"
#include "tests/core/cost/usd.hpp"

using namespace loam;
using namespace loam::cost;
using test::price;
using test::usd;
using namespace std::chrono_literals;

namespace {

Renewal renewal(const Range& life_months, double age_months, std::string where = "d1")
{
    return {Kind::replacement,  "tube", "Tube", std::move(where), price(900, 1000, 1200), life_months,
            exactly(age_months)};
}

Consumption a_hundred_a_year()
{
    return {Kind::electricity, "electricity", "Electricity", exactly(500.0), 1.0, {2, 1}, {2, 1}, {2, 1}};
}

std::vector<std::int64_t> typical(const std::vector<Year>& course)
{
    std::vector<std::int64_t> result;
    for (const Year& year : course) {
        result.push_back(year.spent.typical.minor_units());
    }
    return result;
}

} // namespace

TEST_CASE("Replacements fall in the year in which they happen, not as a share")
{
    // By hand: a life of 20 months from new: months 20, 40, 60, 80; the one in month 60 opens the sixth year.
    const auto course = horizon(price(5000, 6000, 7000), {a_hundred_a_year()}, {renewal(exactly(20.0), 0.0)}, 5, usd);
    REQUIRE(course);
    CHECK(typical(*course) == std::vector<std::int64_t>{6000, 10000, 11000, 10000, 11000, 10000});
    CHECK(course->back().cumulative.typical.minor_units() == 58000);
    CHECK(course->back().cumulative.low.minor_units() == 5000 + 50000 + 2 * 900);
    CHECK(course->back().cumulative.high.minor_units() == 7000 + 50000 + 2 * 1200);
    CHECK(course->front().year == 0);
    CHECK(course->front().spent == price(5000, 6000, 7000));
}

TEST_CASE("Something with a life of a year is replaced at the start of the second year and never on the last day")
{
    const auto course = horizon(MoneyRange::zero(usd), {}, {renewal(exactly(12.0), 0.0)}, 3, usd);
    CHECK(typical(*course) == std::vector<std::int64_t>{0, 0, 1000, 1000});
    const auto thirds = horizon(MoneyRange::zero(usd), {}, {renewal(exactly(12.0 / 3.0), 0.0)}, 2, usd);
    CHECK(typical(*thirds) == std::vector<std::int64_t>{0, 2000, 3000});
}

TEST_CASE("Age brings the first replacement forward, and what is past its life is due at once")
{
    CHECK(renewal_months(20.0, 5.0, 60.0) == std::vector<double>{15.0, 35.0, 55.0});
    CHECK(renewal_months(20.0, 33.0, 60.0) == std::vector<double>{0.0, 20.0, 40.0});
    CHECK(renewal_months(0.0, 0.0, 60.0).empty());
    const auto course = horizon(MoneyRange::zero(usd), {}, {renewal(exactly(20.0), 33.0)}, 2, usd);
    CHECK(typical(*course) == std::vector<std::int64_t>{0, 1000, 1000});
}

TEST_CASE("The cumulative cost is the running sum and stays ordered although lives differ")
{
    const auto course = horizon(price(1, 2, 3), {a_hundred_a_year()},
                                {renewal({7.0, 11.0, 13.0}, 2.0), renewal({20.0, 23.0, 25.0}, 30.0)}, 30, usd);
    REQUIRE(course);
    MoneyRange sum = MoneyRange::zero(usd);
    for (const Year& year : *course) {
        sum += year.spent;
        REQUIRE(year.cumulative == sum);
        REQUIRE(sum.low.minor_units() <= sum.typical.minor_units());
        REQUIRE(sum.typical.minor_units() <= sum.high.minor_units());
    }
}

TEST_CASE("Over a common multiple of the lives the events cost what the shares cost, but for the one at the very end")
{
    // 60 months hold 12 lives of 5 months; the twelfth replacement would fall on the last day.
    const std::vector<Renewal> things{renewal(exactly(5.0), 0.0)};
    const auto course = horizon(MoneyRange::zero(usd), {}, things, 5, usd);
    CHECK(course->back().cumulative.typical.minor_units() + 1000 ==
          5 * running({}, things, usd)->total.typical.minor_units());
}

TEST_CASE("A horizon that can't be is refused")
{
    CHECK_FALSE(horizon(MoneyRange::zero(usd), {}, {}, -1, usd));
    CHECK_FALSE(horizon(MoneyRange::zero(usd), {}, {}, 101, usd));
    CHECK_FALSE(horizon(MoneyRange::zero(usd), {}, {renewal(exactly(0.0), 0.0)}, 5, usd));
    CHECK_FALSE(horizon(MoneyRange::zero({"EUR", 2}), {}, {}, 5, usd));
    CHECK(horizon(MoneyRange::zero(usd), {}, {}, 0, usd)->size() == 1);
}

TEST_CASE("Whole months go by the calendar, a missing day is the month's last, and the rest by days")
{
    CHECK(months_after(2024y / 1 / 15, 6.0) == 2024y / 7 / 15);
    CHECK(months_after(2024y / 8 / 31, 6.0) == 2025y / 2 / 28);
    CHECK(months_after(2023y / 8 / 31, 6.0) == 2024y / 2 / 29);
    CHECK(months_after(2024y / 1 / 15, 0.0) == 2024y / 1 / 15);
    CHECK(months_after(2024y / 1 / 15, 1.5) == 2024y / 2 / 29); // half of the 29 days to 15 March, rounded down
    CHECK(months_after(2024y / 12 / 31, 12.0) == 2025y / 12 / 31);
}

TEST_CASE("Due dates lie in the span asked for, by date, each with its earliest")
{
    const std::vector<Renewal> things{renewal({4.0, 6.0, 8.0}, 1.0, "d1"), renewal({9.0, 12.0, 15.0}, 24.0, "d2"),
                                      renewal({11.0, 12.0, 13.0}, 0.0, "d3")};
    const auto due = due_dates(things, 2025y / 3 / 10, 2026y / 3 / 10);
    REQUIRE(due.size() == 3); // d3 falls on the first day after
    CHECK(due[0].where == "d2");
    CHECK(due[0].due == 2025y / 3 / 10); // overdue
    CHECK(due[0].earliest == 2025y / 3 / 10);
    CHECK(due[1].where == "d1");
    CHECK(due[1].due == 2025y / 8 / 10); // in 6 - 1 months
    CHECK(due[1].earliest == 2025y / 6 / 10);
    CHECK(due[2].due == 2026y / 2 / 10);       // six months after the last
    CHECK(due[2].earliest == 2025y / 12 / 10); // four months after the last
    CHECK(due[0].price == price(900, 1000, 1200));
}

TEST_CASE("A year from a leap day ends on the last of February")
{
    const std::vector<Renewal> yearly{renewal(exactly(12.0), 0.0)};
    CHECK(due_dates(yearly, 2024y / 2 / 29, 2024y / 2 / 29 + std::chrono::years(1)).empty());
    CHECK(due_dates(yearly, 2024y / 2 / 29, 2025y / 3 / 1).front().due == 2025y / 2 / 28);
}

TEST_CASE("The first year's dates and the horizon's first year count the same replacements")
{
    for (int day = 1; day <= 28; ++day) {
        for (int tenths = 5; tenths < 140; ++tenths) {
            const std::vector<Renewal> things{renewal(exactly(tenths / 10.0), 0.0)};
            const std::chrono::year_month_day from = 2025y / 2 / day;
            const auto count = due_dates(things, from, from + std::chrono::years(1)).size();
            const auto course = horizon(MoneyRange::zero(usd), {}, things, 1, usd);
            CAPTURE(day, tenths);
            REQUIRE(static_cast<std::int64_t>(count) * 1000 == course->back().spent.typical.minor_units());
        }
    }
}

TEST_CASE("A thing of unknown age is as new in the cheap course and due at once in the dear one")
{
    Renewal old = renewal({10.0, 20.0, 40.0}, 0.0);
    old.age_months = {0.0, 10.0, 40.0};
    const auto course = horizon(MoneyRange::zero(usd), {}, {old}, 1, usd);
    REQUIRE(course);
    // By hand: low: month 40 of a long life. Typical: month 10. High: months 0 and 10 of a short life.
    CHECK(course->back().spent == price(0, 1000, 2 * 1200));
    const auto due = due_dates({old}, 2026y / 1 / 15, 2027y / 1 / 15);
    REQUIRE(due.size() == 1);
    CHECK(due[0].earliest == 2026y / 1 / 15);
    CHECK(due[0].due == 2026y / 11 / 15);
}
