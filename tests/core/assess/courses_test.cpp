// Days, drills and the first warming up, as a plan has them.
#include <algorithm>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

const assess::CourseResult& named(const std::vector<assess::CourseResult>& courses, const std::string& id)
{
    const auto found = std::find_if(courses.begin(), courses.end(), [&](const auto& one) { return one.id == id; });
    REQUIRE(found != courses.end());
    return *found;
}

} // namespace

TEST_CASE("a plan has a day for each season, a warming up, and the drills that its devices can bring")
{
    const assess::Assessment assessed = whole(example("upgrade"));
    const assess::EnclosureResult& box = assessed.enclosures[0];
    CHECK(named(box.days, "winter").course.points.back().hour == Approx(24.0));
    CHECK(named(box.days, "summer").course.unrest_k < 0.02);
    REQUIRE(box.warm_up);
    CHECK(box.warm_up->course.points.back().warm_c > box.warm_up->course.points.front().warm_c);
    for (const std::string id : {"power-cut", "lamp-out", "mat-stuck-on", "heat-wave"})
        CHECK(named(box.drills, id).course.complete);
}

TEST_CASE("the stated length and room of a power cut are taken, and their ends only where they are not stated")
{
    plan::Plan plan = example("upgrade");
    plan.site.room.power_cut = plan::PowerCut{};
    plan.site.room.power_cut->hours = 5.0;
    plan.site.room.power_cut->room_c = 9.0;
    const assess::Assessment stated = whole(plan);
    const auto& points = named(stated.enclosures[0].drills, "power-cut").course.points;
    CHECK(points.back().hour == Approx(5.0));
    CHECK(points.back().room_c == Approx(9.0));
    CHECK(points.back().power_w == 0.0);
    plan.site.room.power_cut.reset();
    const assess::Assessment assumed = whole(plan);
    CHECK(named(assumed.enclosures[0].drills, "power-cut").course.points.back().hour == Approx(24.0)); // its high end
}

// Source: ISO 13732-1 (from memory), 48 degC for ten minutes: a thermostat holds a strong lamp well below it in the
// steady state, and drives it at full power each morning while its probe is cool.
TEST_CASE("a lamp that is too strong for its thermostat burns in the morning, and is told so")
{
    plan::Plan plan = turtle_table();
    const auto with_power = [&](double power_w) {
        plan.enclosures[0].equipment[0].power_w = power_w;
        return whole(plan);
    };
    const assess::Assessment strong = with_power(150.0);
    CHECK(heat_case(strong.enclosures[0], "winter-day").detail.hottest_surface_c.high < 48.0);
    CHECK(has(strong, "danger.day-peak", Verdict::danger));
    const auto found = with_code(strong, "danger.day-peak");
    REQUIRE_FALSE(found.empty());
    CHECK(input(found[0], "hour") < 6.0);
    CHECK(input(found[0], "high") > 48.0);
    CHECK_FALSE(has(with_power(40.0), "danger.day-peak", Verdict::danger));
}

// A species that can't bear less than the room after the cut must be told when; one that bears all of it must not.
TEST_CASE("the time to a limit is told where a course passes it, the earliest before the likely")
{
    plan::Plan plan = example("upgrade");
    plan.site.room.power_cut = plan::PowerCut{};
    plan.site.room.power_cut->hours = 20.0;
    plan.site.room.power_cut->room_c = 2.0;
    const assess::Assessment cold = whole(plan);
    bool told = false;
    for (const assess::TimeToLimit& limit : named(cold.enclosures[0].drills, "power-cut").limits) {
        if (limit.direction != Direction::below || limit.limit_c < 4.0) {
            continue;
        }
        told = true;
        REQUIRE(limit.earliest_h);
        REQUIRE(limit.likely_h);
        CHECK(*limit.earliest_h <= *limit.likely_h);
        CHECK(*limit.likely_h <= 20.0);
    }
    CHECK(told == !with_code(cold, "danger.drill").empty());
    plan.site.room.power_cut->room_c = 20.0;
    const assess::Assessment mild = whole(plan);
    for (const assess::TimeToLimit& limit : named(mild.enclosures[0].drills, "power-cut").limits)
        CHECK_FALSE(limit.likely_h);
}
