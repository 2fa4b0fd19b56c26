#include "core/cost/running.hpp"

#include <cmath>

#include "core/cost/startup.hpp"
#include "tests/catch.hpp"
#include "tests/core/cost/usd.hpp"

using namespace loam;
using namespace loam::cost;
using test::price;
using test::usd;

namespace {

Consumption electricity(const Range& kwh, const char* tariff)
{
    const Decimal each = Decimal::parse(tariff).value();
    return {Kind::electricity, "electricity", "Electricity", kwh, 1.0, each, each, each};
}

Renewal uv_tube()
{
    return {Kind::replacement, "uv-tube", "UV tube", "d2", price(2200, 3500, 6000), {6.0, 9.0, 12.0}, 0.0};
}

} // namespace

TEST_CASE("Electricity is kilowatt-hours times the tariff, one line, rounded once")
{
    // By hand: 1234.5 kWh x 0.1837 = 226.77765.
    const auto low_to_high = line(electricity({1000.0, 1234.5, 1500.0}, "0.1837"), usd);
    REQUIRE(low_to_high);
    CHECK(low_to_high->per_year == price(18370, 22678, 27555));
    CHECK_FALSE(low_to_high->every_months);
    // In won, which have no minor unit: 300 kWh x 120.5.
    CHECK(line(electricity(exactly(300.0), "120.5"), {"KRW", 0})->per_year.typical.text() == "36150");
    CHECK(line(electricity(exactly(300.0), "0.0295"), {"KWD", 3})->per_year.typical.text() == "8.850");
}

TEST_CASE("A pack's price is shared by what it yields")
{
    // By hand: 250 crickets of a tub of 100 at 4.00, 5.00, 6.50; uses 200, 250, 400.
    Consumption food{Kind::food, "crickets", "Crickets", {200.0, 250.0, 400.0}, 100.0, {4, 0}, {5, 0}, {65, 1}};
    CHECK(line(food, usd)->per_year == price(800, 1250, 2600));
    food.price_per = 0.0;
    CHECK_FALSE(line(food, usd));
}

TEST_CASE("A renewal costs its price over its life, the long life with the low price and the other way round")
{
    // By hand: 22.00 x 12/12, 35.00 x 12/9 = 46.67, 60.00 x 12/6.
    const auto tube = line(uv_tube(), usd);
    REQUIRE(tube);
    CHECK(tube->per_year == price(2200, 4667, 12000));
    CHECK(tube->every_months == 9.0);
}

TEST_CASE("A bed changed twice a year costs two beds a year")
{
    // Common practice: every 6 months, at most yearly.
    const Renewal bed{Kind::substrate, "coir", "Coir", "l1", price(3000, 4000, 5000), {3.0, 6.0, 12.0}, 0.0};
    CHECK(line(bed, usd)->per_year == price(3000, 8000, 20000));
}

TEST_CASE("Hours of burning become months by the hours a day, and whichever life ends first counts")
{
    const Range hours{2000.0, 4000.0, 6000.0};
    const auto months = life_months(hours, 12.0, std::nullopt);
    REQUIRE(months);
    CHECK(months->likely == Approx(4000.0 / 12.0 / 365.25 * 12.0)); // 333 days are 10.95 months
    CHECK(months->likely == Approx(10.95).margin(0.005));
    const auto first = life_months(hours, 12.0, Range{6.0, 9.0, 24.0});
    CHECK(first->low == Approx(5.476).margin(0.001));
    CHECK(first->likely == 9.0);
    CHECK(first->high == Approx(16.43).margin(0.005));
    CHECK_FALSE(life_months(hours, 0.0, std::nullopt));
    CHECK(life_months(hours, 0.0, Range{6.0, 9.0, 12.0}) == Range{6.0, 9.0, 12.0});
    CHECK_FALSE(life_months(std::nullopt, 12.0, std::nullopt));
}

TEST_CASE("The running cost is the sum of its lines as printed")
{
    std::vector<Consumption> uses;
    for (int i = 1; i <= 30; ++i) {
        uses.push_back(electricity({i * 0.31, i * 0.77, i * 1.13}, "0.1849"));
    }
    const auto year = running(uses, {uv_tube(), uv_tube()}, usd);
    REQUIRE(year);
    REQUIRE(year->lines.size() == 32);
    MoneyRange sum = MoneyRange::zero(usd);
    for (const Line& one : year->lines) {
        sum += one.per_year;
        CHECK(one.per_year.low.minor_units() <= one.per_year.typical.minor_units());
        CHECK(one.per_year.typical.minor_units() <= one.per_year.high.minor_units());
    }
    CHECK(year->total == sum);
}

TEST_CASE("The startup is the sum of the order's lines, and a contingency is one more line rounded once")
{
    // By hand: 10.05 + 20.10 = 30.15, ten per cent 3.015.
    const Startup first = startup({price(505, 1005, 1505), price(1010, 2010, 3010)}, exactly(0.1), usd);
    CHECK(first.lines == price(1515, 3015, 4515));
    CHECK(first.contingency == price(152, 302, 452));
    CHECK(first.total == price(1667, 3317, 4967));
    CHECK(startup({}, exactly(0.1), usd).total == MoneyRange::zero(usd));
    CHECK(startup({price(1, 2, 3)}, exactly(0.0), usd).contingency == MoneyRange::zero(usd));
}

TEST_CASE("A contingency that is only roughly known widens the startup: little at low prices, much at high ones")
{
    // By hand: 5 % of 100.00, 10 % of 200.00, 20 % of 300.00.
    CHECK(startup({price(10000, 20000, 30000)}, {0.05, 0.1, 0.2}, usd).contingency == price(500, 2000, 6000));
}

TEST_CASE("What can't be a cost is refused")
{
    CHECK_FALSE(line(electricity({-1.0, 1.0, 2.0}, "0.2"), usd));
    CHECK_FALSE(line(electricity({3.0, 2.0, 4.0}, "0.2"), usd));
    CHECK_FALSE(line(electricity({1.0, 2.0, std::nan("")}, "0.2"), usd));
    CHECK_FALSE(line(electricity(exactly(1.0), "-0.2"), usd));
    CHECK_FALSE(line(electricity(exactly(1e30), "0.2"), usd));
    Renewal tube = uv_tube();
    tube.life_months = {0.0, 9.0, 12.0};
    CHECK_FALSE(line(tube, usd));
    tube = uv_tube();
    tube.age_months = exactly(-1.0);
    CHECK_FALSE(line(tube, usd));
    CHECK_FALSE(line(uv_tube(), {"EUR", 2}));
    CHECK_FALSE(running({}, {tube}, usd));
    tube = uv_tube();
    tube.price.high = Money(9'000'000'000'000'000'000, usd);
    CHECK_FALSE(line(tube, usd));
}
