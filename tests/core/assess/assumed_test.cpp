// What a plan does not say is assumed, and listed with where it would stand and what was used.
#include <algorithm>

#include "core/assess/assumption_ids.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

TEST_CASE("every optional that a minimal plan leaves out and that a figure needs is listed as assumed")
{
    const auto assessment = whole(minimal_plan());
    const auto is_listed = [&](const std::string& pointer) {
        return std::any_of(assessment.assumed.begin(), assessment.assumed.end(),
                           [&](const assess::Assumed& one) { return one.where == pointer; });
    };
    for (const char* pointer : {"/site/latitude_deg",
                                "/site/electricity_price_per_kwh",
                                "/site/room/winter/day_c",
                                "/site/room/winter/night_c",
                                "/site/room/winter/relative_humidity",
                                "/site/room/summer/day_c",
                                "/site/room/summer/night_c",
                                "/site/room/summer/relative_humidity",
                                "/site/room/heat_wave_c",
                                "/site/room/sun_reaches",
                                "/site/circuits/0/other_load_w",
                                "/site/strips/0/rating_a",
                                "/site/strips/0/timed_outlets",
                                "/site/strips/0/always_on_outlets",
                                "/site/stands/0/rated_load_kg",
                                "/enclosures/0/shell/wall_thickness_m",
                                "/enclosures/0/shell/base_thickness_m",
                                "/enclosures/0/shell/top/open_fraction",
                                "/enclosures/0/animals/0/length_m",
                                "/enclosures/0/animals/0/mass_kg",
                                "/enclosures/0/substrate/0/water_fraction",
                                "/enclosures/0/fittings/0/water_depth_m",
                                "/enclosures/0/fittings/0/walkable",
                                "/enclosures/0/fittings/0/mass_kg",
                                "/enclosures/0/fittings/1/height_m",
                                "/enclosures/0/fittings/1/walkable",
                                "/enclosures/0/equipment/0/power_w",
                                "/enclosures/0/equipment/0/height_above_base_m",
                                "/enclosures/0/equipment/0/beam_deg",
                                "/enclosures/0/equipment/0/supply",
                                "/enclosures/0/equipment/1/length_m",
                                "/enclosures/0/equipment/1/width_m",
                                "/enclosures/0/equipment/1/air_gap_m",
                                "/enclosures/0/equipment/1/below",
                                "/enclosures/0/equipment/1/control/setpoint_c",
                                "/enclosures/0/equipment/1/supply",
                                "/enclosures/0/equipment/2/age_hours",
                                "/enclosures/0/equipment/2/control/level",
                                "/enclosures/0/photoperiod",
                                "/enclosures/0/moisture/misting_l_per_day",
                                "/enclosures/0/moisture/water_changes_per_day",
                                "/budget/horizon_years",
                                "/budget/discount_rate",
                                "/budget/contingency"}) {
        INFO(pointer);
        CHECK(is_listed(pointer));
    }
}

TEST_CASE("each assumed pointer stands once, and its bracket is in order")
{
    auto assumed = whole(minimal_plan()).assumed;
    for (const assess::Assumed& one : assumed) {
        INFO(one.where);
        if (one.bracket) {
            CHECK(one.bracket->low <= one.bracket->likely);
            CHECK(one.bracket->likely <= one.bracket->high);
        }
    }
    std::vector<std::string> pointers;
    for (const assess::Assumed& one : assumed) {
        pointers.push_back(one.where);
    }
    std::sort(pointers.begin(), pointers.end());
    CHECK(std::adjacent_find(pointers.begin(), pointers.end()) == pointers.end());
}

TEST_CASE("what a plan says is not listed as assumed")
{
    for (const assess::Assumed& one : whole(turtle_table()).assumed) {
        CHECK(one.where.rfind("/site/room", 0) != 0);
        CHECK(one.where.find("power_w") == std::string::npos);
    }
}

TEST_CASE("a minimal plan asks for what only the keeper knows instead of judging it")
{
    const auto assessment = whole(minimal_plan());
    CHECK(has(assessment, "danger.sun-through-glass", Verdict::not_known));
    CHECK(has(assessment, "money.no-tariff", Verdict::not_known));
    CHECK(has(assessment, "stand.rating-not-known", Verdict::not_known));
    CHECK(has(assessment, "device.power-not-stated", Verdict::not_known));
    CHECK_FALSE(assessment.costs.electricity_per_year);
    CHECK(assessment.stands[0].judgement.verdict == Verdict::not_known);
}

TEST_CASE("the shipped assumptions hold every entry that assess asks for, in its unit")
{
    for (const assess::AssumptionId& wanted : assess::assumption_ids) {
        INFO(wanted.id);
        const catalog::Assumption* entry = shipped_catalog().find_assumption(wanted.id);
        REQUIRE(entry != nullptr);
        CHECK(entry->unit == wanted.unit);
    }
}
