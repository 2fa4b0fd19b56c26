// The year of one enclosure: hours of light, kilowatt-hours and their cost by month.
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

plan::Plan with_the_sky(std::optional<double> latitude_deg)
{
    plan::Plan plan = turtle_table();
    plan.site.latitude_deg = latitude_deg;
    plan.enclosures[0].photoperiod =
        plan::Photoperiod{.on = "07:00", .off = "19:00", .through_year = plan::LightYear::with_the_sky, .extras = {}};
    return plan;
}

const assess::LightDay& on(const assess::EnclosureResult& box, int month, int day)
{
    for (const assess::LightDay& one : box.light_year) {
        if (one.month == month && one.day == day) {
            return one;
        }
    }
    FAIL("no such day");
    return box.light_year[0];
}

} // namespace

TEST_CASE("the same hours all year are the stated ones, to the minute, beside the sky's")
{
    plan::Plan plan = with_the_sky(47.0);
    plan.enclosures[0].photoperiod->through_year.reset();
    plan.enclosures[0].photoperiod->on = "06:32";
    const auto assessment = instant(plan);
    const auto& box = assessment.enclosures[0];
    REQUIRE(box.light_year.size() == 24);
    for (const assess::LightDay& one : box.light_year) {
        CHECK(one.planned->on == "06:32");
        CHECK(one.planned->off == "19:00");
    }
    // PyEphem 4.1.4, as tests/reference/day_length.py: 47 N, 16 June and 16 December 2025, 15.882 h and 8.528 h.
    CHECK(*on(box, 6, 16).sky_h == Approx(15.882).margin(0.08));
    CHECK(*on(box, 12, 16).sky_h == Approx(8.528).margin(0.08));
}

TEST_CASE("hours that follow the sky stay within the sheet's, about the same middle")
{
    const auto north = instant(with_the_sky(47.0));
    // The ornate box turtle's sheet: 12 to 14 h.
    CHECK(on(north.enclosures[0], 6, 16).planned == assess::LightTimes{14.0, "06:00", "20:00"});
    CHECK(on(north.enclosures[0], 12, 16).planned == assess::LightTimes{12.0, "07:00", "19:00"});
    CHECK(with_code(north, "photoperiod.hours").empty());
    const auto south = instant(with_the_sky(-47.0));
    CHECK(on(south.enclosures[0], 12, 16).planned->hours == 14.0);
    CHECK(on(south.enclosures[0], 6, 16).planned->hours == 12.0);
}

TEST_CASE("without a latitude there is no sky to follow, and it is said")
{
    const auto assessment = instant(with_the_sky(std::nullopt));
    CHECK(has(assessment, "photoperiod.sky-not-known", Verdict::not_known));
    CHECK_FALSE(assessment.enclosures[0].light_with_the_sky);
    CHECK_FALSE(assessment.enclosures[0].light_year[0].sky_h);
    CHECK(assessment.enclosures[0].light_year[0].planned->hours == 12.0);
}

TEST_CASE("longer summer days cost more in summer, and a lamp's months are watts times hours")
{
    plan::Plan plan = with_the_sky(47.0);
    plan::Device lamp = plan.enclosures[0].equipment[0];
    lamp.power_w = 100.0;
    lamp.supply = plan::Supply::timed;
    lamp.control = {};
    plan.enclosures[0].equipment = {lamp};
    const auto sky = instant(plan);
    const auto& power = sky.enclosures[0].power;
    // By hand: 100 W x 14 h x 30 d in June, 100 W x 12 h x 31 d in December and January, the sheet's ends.
    CHECK(power.month_kwh[5].likely == Approx(42.0).margin(1e-6));
    CHECK(power.month_kwh[11].likely == Approx(37.2).margin(1e-6));
    CHECK(power.month_kwh[0].likely == Approx(37.2).margin(1e-6));
    plan.enclosures[0].photoperiod->through_year.reset();
    CHECK(instant(plan).enclosures[0].power.year_kwh.likely == Approx(438.0)); // 100 W x 12 h x 365 d
}

TEST_CASE("a month's cost is its kilowatt-hours at the plan's tariff, and not known without one")
{
    plan::Plan plan = turtle_table();
    plan.site.electricity_price_per_kwh = Decimal::parse("0.30");
    const auto priced = instant(plan);
    const auto& power = priced.enclosures[0].power;
    for (std::size_t month = 0; month < 12; ++month) {
        REQUIRE(power.month_cost[month]);
        CHECK(power.month_cost[month]->decimal().value() ==
              Approx(0.30 * power.month_kwh[month].likely).margin(0.0051));
    }
    plan.site.electricity_price_per_kwh.reset();
    CHECK_FALSE(instant(plan).enclosures[0].power.month_cost[0]);
}

TEST_CASE("months add up to the year, and an unknown hemisphere widens them alone")
{
    plan::Plan plan = turtle_table();
    plan.site.latitude_deg = 47.0;
    const auto known = whole(plan);
    const auto& power = known.enclosures[0].power;
    double sum = 0.0;
    for (const Range& month : power.month_kwh) {
        sum += month.likely;
    }
    CHECK(sum == Approx(power.year_kwh.likely));
    plan.site.latitude_deg.reset();
    const auto unknown = whole(plan);
    const auto& open = unknown.enclosures[0].power;
    CHECK(open.year_kwh.likely == Approx(power.year_kwh.likely));
    CHECK_FALSE(unknown.enclosures[0].hemisphere_known);
    CHECK(open.month_kwh[0].low <= power.month_kwh[0].likely);
    CHECK(open.month_kwh[0].high >= power.month_kwh[0].likely * 0.999);
}
