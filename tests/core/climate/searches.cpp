// What searches rely on: likely values alone, and boxes of one shape laid out once.
#include "core/climate/steady.hpp"
#include "tests/catch.hpp"
#include "tests/core/climate/boxes.hpp"

using namespace loam::climate;

namespace {

// A workspace that has the shape of a box, but neither a start nor what its solver was conditioned with.
Workspace shape_only(const Box& box)
{
    Workspace workspace;
    REQUIRE(solve_steady(box, test::home_day(), workspace));
    for (Workspace::Level* level : {&workspace.field, &workspace.ranges}) {
        level->starts.clear();
        level->conditioner.reset();
    }
    return workspace;
}

} // namespace

// Own promise of solve_likely: within 0.01 K.
TEST_CASE("likely values alone agree with those that come with ranges")
{
    for (const bool damp : {false, true}) {
        const Box box = test::furnished_box(0.10, damp);
        Workspace one;
        Workspace other;
        const auto whole = solve_steady(box, test::home_day(), one);
        const auto likely = solve_likely(box, test::home_day(), other);
        REQUIRE(whole);
        REQUIRE(likely);
        CHECK(likely->converged);
        CHECK(likely->warm.ground_c.likely == Approx(whole->warm.ground_c.likely).margin(0.01));
        CHECK(likely->cool.ground_c.likely == Approx(whole->cool.ground_c.likely).margin(0.01));
        CHECK(likely->basking.surface_c.likely == Approx(whole->basking.surface_c.likely).margin(0.01));
        CHECK(likely->hottest_surface_c.likely == Approx(whole->hottest_surface_c.likely).margin(0.01));
        CHECK(likely->ground_humidity.likely == Approx(whole->ground_humidity.likely).margin(0.001));
        CHECK(likely->warm.ground_c.low == likely->warm.ground_c.high);
    }
}

TEST_CASE("a box laid out before gives the same result as one laid out anew, to the last bit")
{
    const Box box = test::furnished_box(0.10, true);
    SECTION("with other watts on its lamp, which dry more of the bed")
    {
        Box stronger = box;
        stronger.lamps[0].power_w = loam::exactly(1.5 * box.lamps[0].power_w.likely);
        Workspace kept = shape_only(box);
        Workspace empty;
        CHECK(solve_steady(stronger, test::home_day(), kept) == solve_steady(stronger, test::home_day(), empty));
    }
    SECTION("with its lamp moved, which is another shape")
    {
        Box moved = box;
        moved.lamps[0].at.x_m += 0.05;
        Workspace kept = shape_only(box);
        Workspace empty;
        CHECK(solve_steady(moved, test::home_day(), kept) == solve_steady(moved, test::home_day(), empty));
    }
    SECTION("with one of two lamps moved, so that only that one is cast anew, and with a third")
    {
        Box lamps = box;
        lamps.lamps.push_back(test::flood(40.0));
        lamps.lamps.back().at = {0.6, 0.2, 0.5};
        Box moved = lamps;
        moved.lamps[1].at.x_m += 0.05;
        Workspace kept = shape_only(lamps);
        Workspace empty;
        CHECK(solve_steady(moved, test::home_day(), kept) == solve_steady(moved, test::home_day(), empty));
        moved.lamps.push_back(lamps.lamps[1]);
        Workspace fewer = shape_only(lamps);
        Workspace none;
        CHECK(solve_steady(moved, test::home_day(), fewer) == solve_steady(moved, test::home_day(), none));
    }
    SECTION("with more water in its bed")
    {
        Box wetter = box;
        wetter.bed.back().water_damp.likely += 0.02;
        Workspace kept = shape_only(box);
        Workspace empty;
        CHECK(solve_steady(wetter, test::home_day(), kept) == solve_steady(wetter, test::home_day(), empty));
    }
}
