// Laws of what runs over hours.
#include <algorithm>
#include <cmath>

#include "core/climate/course.hpp"
#include "tests/catch.hpp"
#include "tests/core/climate/boxes.hpp"

using namespace loam::climate;

namespace {

Case home_night()
{
    Case night = test::home_day();
    night.id = "night";
    night.day = false;
    night.room.temperature_c = {15.0, 17.0, 19.0};
    return night;
}

const CoursePoint& at_end(const Course& course)
{
    return course.points.back();
}

} // namespace

TEST_CASE("a steady state stays where it is")
{
    Workspace workspace;
    const Case day = test::home_day();
    const auto course = follow(test::furnished_box(), {day, {{day, 12.0, day.room.temperature_c.likely}}}, workspace);
    REQUIRE(course);
    REQUIRE(course->complete);
    CHECK(at_end(*course).warm_c == Approx(course->points[0].warm_c).margin(1e-3));
    CHECK(at_end(*course).digging_c == Approx(course->points[0].digging_c).margin(1e-3));
    CHECK(at_end(*course).hour == Approx(12.0));
    CHECK(course->energy_kwh == Approx(course->points[0].power_w * 12.0 / 1000.0).epsilon(1e-6));
}

TEST_CASE("a box warms up to its steady state from below, and is never warmer on the way")
{
    Workspace workspace;
    const Case day = test::home_day();
    const auto course = warm_up(test::furnished_box(), day, 96.0, workspace);
    const auto steady = follow(test::furnished_box(), {day, {{day, 1.0, day.room.temperature_c.likely}}}, workspace);
    REQUIRE(course);
    REQUIRE(steady);
    CHECK(course->points[0].warm_c == Approx(day.room.temperature_c.likely));
    CHECK(at_end(*course).warm_c == Approx(at_end(*steady).warm_c).margin(0.05));
    CHECK(at_end(*course).digging_c == Approx(at_end(*steady).digging_c).margin(0.1));
    for (const CoursePoint& point : course->points)
        CHECK(point.digging_c < at_end(*steady).digging_c + 0.05);
}

TEST_CASE("without power a box ends at the room's temperature where it is dry, and no warmer where it is wet")
{
    for (const bool damp : {false, true}) {
        Workspace workspace;
        Case cut = test::home_day();
        cut.fault = Fault::power_cut;
        Box box = test::furnished_box(0.10, damp);
        if (!damp)
            box.bowls.clear(); // an open bowl is wet
        const auto course = follow(box, {test::home_day(), {{cut, 2.0, 12.0}, {cut, 150.0, 12.0}}}, workspace);
        REQUIRE(course);
        REQUIRE(course->complete);
        CHECK(at_end(*course).power_w == 0.0);
        CHECK(at_end(*course).warm_c <= 12.02);
        CHECK(at_end(*course).cool_c > 10.0);
        if (!damp)
            CHECK(at_end(*course).digging_c == Approx(12.0).margin(0.02));
        for (std::size_t i = 2; i < course->points.size(); ++i)
            CHECK(course->points[i].warm_c <= course->points[i - 1].warm_c + 1e-3);
    }
}

TEST_CASE("a day ends as it began, and lies between the steady night and the steady day")
{
    Workspace workspace;
    const Box box = test::furnished_box();
    const DayPlan plan{.day = test::home_day(), .night = home_night(), .lit_h = 12.0, .ramp_h = 2.0};
    const auto day = periodic_day(box, plan, workspace);
    REQUIRE(day);
    REQUIRE(day->complete);
    CHECK(day->unrest_k < 0.02);
    CHECK(at_end(*day).hour == Approx(24.0));
    CHECK(at_end(*day).cool_c == Approx(day->points[0].cool_c).margin(0.02));
    const auto highest = std::max_element(day->points.begin(), day->points.end(),
                                          [](const auto& a, const auto& b) { return a.warm_c < b.warm_c; });
    const auto lit = follow(box, {plan.day, {{plan.day, 1.0, plan.day.room.temperature_c.likely}}}, workspace);
    const auto dark = follow(box, {plan.night, {{plan.night, 1.0, plan.night.room.temperature_c.likely}}}, workspace);
    CHECK(highest->warm_c < lit->points[0].warm_c + 0.02);
    CHECK(at_end(*day).digging_c > dark->points[0].digging_c - 0.02);
    CHECK(day->energy_kwh == Approx((118.0 * 12.0 + 18.0 * 12.0) / 1000.0).epsilon(0.01));
}

TEST_CASE("a day under constant devices and room is the steady state")
{
    Workspace workspace;
    Box box = test::furnished_box();
    box.lamps[0].at_night = true;
    Case night = test::home_day();
    night.id = "night";
    night.day = false;
    const auto day = periodic_day(box, {.day = test::home_day(), .night = night}, workspace);
    REQUIRE(day);
    CHECK(at_end(*day).warm_c == Approx(day->points[0].warm_c).margin(0.01));
    CHECK(at_end(*day).basking_c == Approx(day->points[0].basking_c).margin(0.01));
}

TEST_CASE("a covered box whose covers are forgotten off goes on from where it was")
{
    Workspace workspace;
    const Box box = test::furnished_box();
    REQUIRE_FALSE(box.covers.empty());
    Case bare = test::home_day();
    bare.fault = Fault::covers_off;
    const auto course =
        follow(box, {test::home_day(), {{bare, 24.0, test::home_day().room.temperature_c.likely}}}, workspace);
    REQUIRE(course);
    REQUIRE(course->complete);
    CHECK(course->points[1].digging_c == Approx(course->points[0].digging_c).margin(0.1));
    CHECK(at_end(*course).humidity < course->points[0].humidity);
}
