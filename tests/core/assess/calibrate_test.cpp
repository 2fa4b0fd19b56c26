// What the keeper's readings do to an assessment.
#include <algorithm>
#include <cmath>

#include "core/assess/calibration_result.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

// One box that nothing regulates and whose mesh nobody measured, so that there is much to learn.
plan::Plan setup()
{
    plan::Plan plan = turtle_table();
    plan.enclosures[0].readings.clear();
    plan.enclosures[0].shell.top.open_fraction.reset();
    for (plan::Device& device : plan.enclosures[0].equipment) {
        device.control = {};
    }
    return plan;
}

plan::Reading reading(const std::string& id, double x_m, double y_m, double value_c,
                      plan::LampState lamps = plan::LampState::on)
{
    plan::Reading made;
    made.id = id;
    made.measure = plan::Measure::ground;
    made.x_m = x_m;
    made.y_m = y_m;
    made.value_c = value_c;
    made.accuracy_k = 0.5;
    made.lamps = lamps;
    return made;
}

// What the field of a case says at a place, by the nearest cell.
double ground_c(const assess::HeatCase& heat, double x_m, double y_m)
{
    const climate::FloorField& floor = heat.detail.floor;
    const auto i = std::min(floor.nx - 1, static_cast<std::size_t>(x_m / floor.dx_m));
    const auto j = std::min(floor.ny - 1, static_cast<std::size_t>(y_m / floor.dy_m));
    return floor.ground_c[j * floor.nx + i];
}

// Readings of a winter day that say what is predicted, at three places.
plan::Plan with_readings(const assess::Assessment& before)
{
    plan::Plan plan = setup();
    plan::Enclosure& box = plan.enclosures[0];
    const assess::HeatCase& winter = heat_case(before.enclosures[0], "winter-day");
    int i = 0;
    for (const double share : {0.15, 0.5, 0.85}) {
        const double x_m = share * box.shell.length_m;
        const double y_m = 0.5 * box.shell.width_m;
        plan::Reading made = reading("r" + std::to_string(++i), x_m, y_m, ground_c(winter, x_m, y_m));
        made.room_c = plan.site.room.winter.day_c.value();
        box.readings.push_back(made);
    }
    return plan;
}

double width(const Range& range)
{
    return range.high - range.low;
}

double cool_width(const assess::Assessment& assessment, std::string_view id)
{
    return width(heat_case(assessment.enclosures[0], id).detail.cool.ground_c);
}

} // namespace

TEST_CASE("readings that confirm the prediction narrow the cases like theirs, and leave the nights as wide")
{
    const auto before = whole(setup());
    CHECK_FALSE(before.enclosures[0].calibration);
    const auto after = whole(with_readings(before));
    REQUIRE(after.enclosures[0].calibration);
    const assess::CalibrationResult& calibration = *after.enclosures[0].calibration;
    CHECK(calibration.applied);
    CHECK(calibration.used == 3);
    for (const assess::ReadingResult& row : calibration.readings) {
        INFO(row.id);
        CHECK(row.use == assess::ReadingUse::used);
        REQUIRE(row.after_c);
        CHECK(width(*row.after_c) < width(*row.before_c));
        CHECK(std::abs(*row.residual_k) < 1.0);
    }
    // What is left is mostly the room's own spread and the model's error, which no reading takes away.
    CHECK(cool_width(after, "winter-day") < 0.985 * cool_width(before, "winter-day"));
    CHECK(cool_width(after, "winter-night") == Approx(cool_width(before, "winter-night")).epsilon(0.005));
    CHECK(std::find(calibration.cases.begin(), calibration.cases.end(), "winter-day") != calibration.cases.end());
    CHECK(std::find(calibration.cases.begin(), calibration.cases.end(), "winter-night") == calibration.cases.end());
    CHECK(with_code(after, "reading.inconsistent").empty());
    CHECK(with_code(after, "readings.too-few").empty());
}

TEST_CASE("a wild reading is reported by its id, and the others still count")
{
    plan::Plan plan = with_readings(whole(setup()));
    plan.enclosures[0].readings[2].value_c += 15.0;
    const auto assessment = whole(plan);
    const auto found = with_code(assessment, "reading.inconsistent");
    REQUIRE(found.size() == 1);
    CHECK(found[0].where == "r3");
    CHECK(found[0].verdict == Verdict::not_known);
    CHECK(found[0].direction == Direction::above);
    CHECK(input(found[0], "value") == Approx(plan.enclosures[0].readings[2].value_c));
    CHECK(assessment.enclosures[0].calibration->used == 2);
    CHECK(with_code(assessment, "readings.too-few").size() == 1);
}

TEST_CASE("a reading that can't be compared is set aside, and says what is missing")
{
    plan::Plan plan = setup();
    plan::Enclosure& box = plan.enclosures[0];
    box.readings = {reading("out", box.shell.length_m + 0.1, 0.1, 25.0), reading("when", 0.2, 0.2, 25.0)};
    box.readings[1].lamps.reset();
    const auto assessment = whole(plan);
    CHECK(with_code(assessment, "reading.outside-box").at(0).where == "out");
    CHECK(with_code(assessment, "reading.lamps-not-stated").at(0).where == "when");
    const auto untouched = whole(setup());
    CHECK(assessment.enclosures[0].heat == untouched.enclosures[0].heat);
    CHECK_FALSE(assessment.enclosures[0].calibration->applied);
}

TEST_CASE("under a dimmer at no stated level a reading tells nothing")
{
    plan::Plan plan = setup();
    plan::Enclosure& box = plan.enclosures[0];
    for (plan::Device& device : box.equipment) {
        if (device.kind == plan::DeviceKind::flood_lamp) {
            device.control = {};
            device.control.kind = plan::ControlKind::dimmer;
        }
    }
    box.readings = {reading("dim", 0.2, 0.2, 25.0)};
    const auto assessment = whole(plan);
    CHECK(with_code(assessment, "reading.dimmer-not-stated").at(0).where == "dim");
}

TEST_CASE("a reading from a room that no case knows is told to narrow none")
{
    plan::Plan plan = setup();
    plan.enclosures[0].readings = {reading("cold", 0.2, 0.2, 15.0)};
    plan.enclosures[0].readings[0].room_c = 5.0;
    const auto assessment = whole(plan);
    if (assessment.enclosures[0].calibration->applied) {
        CHECK(with_code(assessment, "reading.other-conditions").at(0).where == "cold");
    }
    CHECK(assessment.enclosures[0].calibration->cases.empty());
}

TEST_CASE("what a reading leaves unsaid is listed as assumed")
{
    plan::Plan plan = setup();
    plan.enclosures[0].readings = {reading("bare", 0.2, 0.2, 24.0)};
    plan.enclosures[0].readings[0].accuracy_k.reset();
    const auto assessment = whole(plan);
    const auto is_listed = [&](const std::string& pointer) {
        return std::any_of(assessment.assumed.begin(), assessment.assumed.end(),
                           [&](const assess::Assumed& one) { return one.where == pointer; });
    };
    CHECK(is_listed("/enclosures/0/readings/0/accuracy_k"));
    CHECK(is_listed("/enclosures/0/readings/0/room_c"));
}

TEST_CASE("an edited reading solves the climate anew, its date does not")
{
    plan::Plan plan = with_readings(whole(setup()));
    assess::Workspace workspace;
    assess::assess(plan, shipped_catalog(), day, workspace);
    const auto deliveries = [&] {
        int count = 0;
        assess::assess(plan, shipped_catalog(), day, workspace, {}, [&](const assess::Assessment&) { ++count; });
        return count;
    };
    plan.enclosures[0].readings[0].date = "2025-11-20";
    CHECK(deliveries() == 1);
    plan.enclosures[0].readings[0].value_c += 0.5;
    CHECK(deliveries() > 1);
    const auto kept = assess::assess(plan, shipped_catalog(), day, workspace);
    CHECK(kept->enclosures[0].calibration == whole(plan).enclosures[0].calibration);
}
