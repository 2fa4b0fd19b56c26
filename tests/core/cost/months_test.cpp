#include "core/cost/months.hpp"

#include <numeric>

#include "tests/catch.hpp"
#include "tests/core/cost/usd.hpp"

using namespace loam;
using namespace loam::cost;
using test::price;
using test::usd;
using namespace std::chrono_literals;

namespace {

Renewal tube(const Range& life_months, const Range& age_months)
{
    return {Kind::replacement, "tube", "Tube", "d1", price(900, 1000, 1200), life_months, age_months};
}

Consumption used(Kind kind, const Range& per_year)
{
    return {kind, "thing", "Thing", per_year, 1.0, {1, 1}, {2, 1}, {3, 1}};
}

// Half of the year's energy in January, the rest in July.
std::array<Range, 12> winter_heavy()
{
    std::array<Range, 12> kwh{};
    kwh[0] = exactly(500.0);
    kwh[6] = exactly(500.0);
    return kwh;
}

std::int64_t typical(const Month& month, MoneyRange Month::*part)
{
    return (month.*part).typical.minor_units();
}

} // namespace

TEST_CASE("Electricity falls in the months that use it, from the month of the day on")
{
    const Running year = *running({used(Kind::electricity, exactly(1000.0))}, {}, usd);
    const auto course = months(year, {}, winter_heavy(), 2026y / 11 / 27, usd);
    REQUIRE(course.size() == 12);
    CHECK(course.front().month == 2026y / 11);
    CHECK(course.back().month == 2027y / 10);
    // By hand: 1000 kWh at 0.2, half of it in January.
    CHECK(typical(course[2], &Month::electricity) == 10000);
    CHECK(typical(course[8], &Month::electricity) == 10000);
    CHECK(typical(course[0], &Month::spent) == 0);
}

TEST_CASE("Twelve months add up to the year's lines, to the minor unit, whatever does not divide")
{
    const Running year = *running({used(Kind::electricity, {333.3, 777.7, 999.9}), used(Kind::food, {1.0, 7.77, 10.01}),
                                   used(Kind::health, exactly(0.05))},
                                  {}, usd);
    const auto course = months(year, {}, winter_heavy(), 2024y / 2 / 29, usd);
    MoneyRange sum = MoneyRange::zero(usd);
    for (const Month& month : course) {
        CHECK(month.spent.low.minor_units() >= 0);
        sum += month.spent;
    }
    CHECK(sum == year.total);
}

TEST_CASE("What is used up evenly goes by days: February costs 28 of 365")
{
    const Running year = *running({used(Kind::food, exactly(1825.0))}, {}, usd); // 1 a day, at 0.2
    const auto course = months(year, {}, {}, 2026y / 1 / 1, usd);
    CHECK(typical(course[1], &Month::others) == 28 * 100);
    CHECK(typical(course[2], &Month::others) == 31 * 100);
}

TEST_CASE("A replacement is paid whole in the month in which its likely life ends")
{
    const std::vector<Renewal> renewals{tube({8.0, 12.0, 14.0}, exactly(9.0)), tube(exactly(60.0), exactly(0.0))};
    const Running year = *running({}, renewals, usd);
    const auto course = months(year, renewals, {}, 2026y / 11 / 27, usd);
    for (const Month& month : course) {
        CHECK(month.replaced == (month.month == 2027y / 2 ? price(900, 1000, 1200) : MoneyRange::zero(usd)));
        CHECK(month.spent == month.replaced);
    }
}
