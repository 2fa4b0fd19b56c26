// UV on the whole path from a plan to its assessment.
#include "tests/catch.hpp"

#include <chrono>
#include <cmath>

#include "core/light/ferguson.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

constexpr std::size_t tube = 1; // of the equipment of "first-setup"

plan::Plan table_plan()
{
    return turtle_table();
}

plan::Device& uv_lamp(plan::Plan& plan)
{
    return plan.enclosures[0].equipment[tube];
}

assess::UvResult uv_of(const plan::Plan& plan)
{
    return instant(plan).enclosures[0].uv;
}

// One point lamp 0.16 / d^2 over the middle of a bare box with a species of zone 3, read without mesh, new.
plan::Plan point_plan(double height_m)
{
    plan::Plan plan = table_plan();
    plan::Enclosure& box = plan.enclosures[0];
    box.shell.top = {};
    box.shell.top.kind = plan::TopKind::open;
    box.fittings.clear();
    box.animals = {animal("a1", "testudo-hermanni", 0.15)};
    plan::Device lamp;
    lamp.id = "d9";
    lamp.kind = plan::DeviceKind::mercury_vapour_lamp;
    lamp.x_m = 0.7;
    lamp.y_m = 0.375;
    lamp.height_above_base_m = height_m;
    lamp.beam_deg = 60.0;
    lamp.age_hours = 0.0;
    lamp.guarded = true;
    lamp.clearance_m = 0.05;
    lamp.uvi_table = {{0.1, 40.0, {}}, {0.2, 10.0, {}}, {0.4, 2.5, {}}, {0.8, 0.625, {}}}; // 0.4 / d^2
    lamp.supply = plan::Supply::timed;
    box.equipment = {lamp};
    return plan;
}

double amount(const Remedy& remedy, std::string_view name)
{
    for (const Input& one : remedy.amounts) {
        if (one.name == name) {
            return one.value;
        }
    }
    FAIL("no such amount: " << name);
    return 0.0;
}

std::optional<Finding> only(const plan::Plan& plan, std::string_view code)
{
    const auto found = with_code(instant(plan), code);
    REQUIRE(found.size() <= 1);
    return found.empty() ? std::nullopt : std::optional(found.front());
}

} // namespace

TEST_CASE("the map covers the floor, at the back's height over bed, rock and hide")
{
    const plan::Plan plan = table_plan();
    const assess::UvResult uv = uv_of(plan);
    const light::UvGrid& grid = uv.map.grid;
    const plan::Enclosure& box = plan.enclosures[0];
    CHECK(static_cast<double>(grid.nx) * grid.dx_m == Approx(box.shell.length_m));
    CHECK(static_cast<double>(grid.ny) * grid.dy_m == Approx(box.shell.width_m));
    REQUIRE(uv.map.uvi.size() == grid.cells());
    const auto back_at = [&](double x_m, double y_m) {
        const auto column = static_cast<std::size_t>(x_m / grid.dx_m);
        const auto row = static_cast<std::size_t>(y_m / grid.dy_m);
        return uv.map.back_m[row * grid.nx + column];
    };
    const double on_bed_m = back_at(0.05, 0.05);
    CHECK(on_bed_m > 0.09);                                         // the bed alone is 9 cm
    CHECK(back_at(0.38, 0.375) == Approx(on_bed_m + 0.02));         // the rock, 2 cm high
    CHECK(back_at(0.62, 0.59) == Approx(on_bed_m + 0.10));          // the hide's roof
    CHECK(uv.basking.back.z_m == Approx(on_bed_m).margin(0.02001)); // on the bed or the rock
}

TEST_CASE("the strongest of the basking place is a place of the animal's size under the basking lamp")
{
    const plan::Plan plan = table_plan();
    const assess::UvResult uv = uv_of(plan);
    const plan::Device& lamp = plan.enclosures[0].equipment[0];
    REQUIRE(uv.uvi_at_basking);
    const double half_m = *plan.enclosures[0].animals[0].length_m / 2.0;
    CHECK(std::abs(uv.basking.back.x_m - lamp.x_m) <= half_m + 1e-9);
    CHECK(std::abs(uv.basking.back.y_m - lamp.y_m) <= half_m + 1e-9);
    REQUIRE(uv.strongest);
    CHECK(uv.strongest->uvi->likely >= uv.uvi_at_basking->likely);
    for (const auto& cell : uv.map.uvi) {
        CHECK((!cell || cell->likely <= uv.strongest->uvi->likely + 1e-12));
    }
}

TEST_CASE("the verdict is that of the published zone, no surer than the sheet's")
{
    const assess::UvResult uv = uv_of(table_plan());
    const auto zone = light::ferguson_zone(2); // the sheet of the ornate box turtle
    CHECK(uv.ferguson_zone == 2);
    CHECK(uv.target_uvi.min == zone->maximum_uvi.min);
    CHECK(uv.target_uvi.max == zone->maximum_uvi.max);
    CHECK(uv.sheet.confidence == Confidence::memory);
    plan::Plan strong = table_plan();
    for (plan::UvPoint& point : uv_lamp(strong).uvi_table) {
        point.uvi *= 4.0;
    }
    const auto level = only(strong, "uv.level");
    REQUIRE(level);
    CHECK(level->verdict == Verdict::falls_short);
    CHECK(level->direction == Direction::above);
    CHECK(level->because.source.confidence == Confidence::memory); // the zones themselves are secondary
}

TEST_CASE("the height told puts the strongest UV inside the zone, and none outside it does so whole")
{
    // 0.4 / d^2 with 10 % of reading: over the bed of 9 cm and a back, by hand from the likely 2.9 / 0.9 and 7.4 / 1.1.
    plan::Plan plan = point_plan(0.48);
    const assess::UvResult uv = uv_of(plan);
    REQUIRE(uv.heights);
    CHECK(uv.heights->whole_range);
    const double back_m = uv.basking.back.z_m;
    CHECK(uv.heights->from_m == Approx(back_m + std::sqrt(0.4 * 1.1 / 7.4)).margin(0.0101));
    CHECK(uv.heights->to_m == Approx(back_m + std::sqrt(0.4 * 0.9 / 2.9)).margin(0.0101));
    for (const double z_m : {uv.heights->from_m, uv.heights->to_m}) {
        plan.enclosures[0].equipment[0].height_above_base_m = z_m;
        CHECK(uv_of(plan).judgement.verdict == Verdict::fits);
    }
    for (const double z_m : {uv.heights->from_m - 0.011, uv.heights->to_m + 0.011}) {
        plan.enclosures[0].equipment[0].height_above_base_m = z_m;
        CHECK(uv_of(plan).judgement.verdict != Verdict::fits);
    }
}

TEST_CASE("another height as a remedy holds when it is assessed again")
{
    for (const double height_m : {0.30, 0.34, 0.55, 0.60, 0.80}) {
        plan::Plan plan = point_plan(height_m);
        CAPTURE(height_m);
        const auto level = only(plan, "uv.level");
        REQUIRE(level);
        REQUIRE(level->remedy);
        CHECK(level->remedy->code == (height_m < 0.4 ? "remedy.raise-lamp" : "remedy.lower-lamp"));
        plan.enclosures[0].equipment[0].height_above_base_m = amount(*level->remedy, "to");
        CHECK_FALSE(only(plan, "uv.level"));
        CHECK_FALSE(only(plan, "uv.strong-elsewhere"));
    }
}

TEST_CASE("where no height does it, a lamp that many times as strong does")
{
    for (const double factor : {0.02, 40.0}) {
        plan::Plan plan = table_plan();
        CAPTURE(factor);
        for (plan::UvPoint& point : uv_lamp(plan).uvi_table) {
            point.uvi *= factor;
        }
        const auto level = only(plan, "uv.level");
        REQUIRE(level);
        REQUIRE(level->remedy);
        REQUIRE(level->remedy->code == "remedy.other-uv-lamp");
        for (plan::UvPoint& point : uv_lamp(plan).uvi_table) {
            point.uvi *= amount(*level->remedy, "times");
        }
        CHECK(uv_of(plan).judgement.verdict != Verdict::falls_short);
    }
}

TEST_CASE("an aged lamp is replaced where a new one does it, and the day it fell out of its zone is the day the light "
          "fades to it")
{
    plan::Plan plan = table_plan();
    for (plan::UvPoint& point : uv_lamp(plan).uvi_table) {
        point.uvi *= 0.6;
    }
    const assess::UvResult fresh = uv_of(plan);
    REQUIRE(fresh.judgement.verdict == Verdict::fits);
    REQUIRE(fresh.left.likely_h);
    REQUIRE(fresh.left.earliest_h);
    CHECK(*fresh.left.earliest_h <= *fresh.left.likely_h);
    CHECK(*fresh.from_new.likely_h == *fresh.left.likely_h);
    // (1 - decay)^(h / 1000) = least / now, by hand, with the sheet's likely decay of 0.15.
    const double by_hand_h =
        1000.0 * std::log(*fresh.target_uvi.min / fresh.uvi_at_basking->likely) / std::log(1.0 - 0.15);
    CHECK(*fresh.left.likely_h == Approx(by_hand_h).margin(2.0));
    uv_lamp(plan).age_hours = *fresh.left.likely_h + 5.0;
    const auto level = only(plan, "uv.level");
    REQUIRE(level);
    CHECK(level->verdict == Verdict::falls_short);
    CHECK(level->direction == Direction::below);
    CHECK(level->remedy->code == "remedy.replace-lamp");
    CHECK(*uv_of(plan).left.likely_h == 0.0);
    CHECK(*uv_of(plan).from_new.likely_h == *fresh.left.likely_h);
}

TEST_CASE("the day on which the UV falls out counts the hours that the lamp burns a day")
{
    const plan::Plan plan = table_plan(); // lights from 07:30 to 20:30: 13 hours
    const assess::UvResult uv = uv_of(plan);
    REQUIRE(uv.falls_out_on);
    const auto days = std::chrono::sys_days(*uv.falls_out_on) - std::chrono::sys_days(day);
    CHECK(days.count() == static_cast<int>(*uv.left.likely_h / 13.0));
    REQUIRE(uv.falls_out_earliest);
    CHECK(*uv.falls_out_earliest <= *uv.falls_out_on);
}

TEST_CASE("a reading taken on the aged lamp stands for what it gives since, and for more before")
{
    plan::Plan plan = table_plan();
    const double as_new = uv_of(plan).uvi_at_basking->likely;
    uv_lamp(plan).age_hours = 1500.0;
    CHECK(uv_of(plan).uvi_at_basking->likely < as_new);
    uv_lamp(plan).uvi_age_hours = 1500.0;
    const assess::UvResult read = uv_of(plan);
    CHECK(read.uvi_at_basking->likely == Approx(as_new));
    CHECK(*read.from_new.likely_h == Approx(*read.left.likely_h + 1500.0).margin(2.0)); // by the same law
}

TEST_CASE("one reading serves where a table would, with a wider range away from it")
{
    plan::Plan plan = point_plan(0.48);
    const assess::UvResult by_table = uv_of(plan);
    plan.enclosures[0].equipment[0].uvi_table = {{0.2, 10.0, {}}};
    const assess::UvResult by_reading = uv_of(plan);
    REQUIRE(by_reading.uvi_at_basking);
    const Range& one = *by_reading.uvi_at_basking;
    const Range& table = *by_table.uvi_at_basking;
    CHECK(one.low <= table.likely); // a bare bulb's fall is one end of what one reading leaves open
    CHECK(one.high >= table.likely);
    CHECK((one.high - one.low) / one.likely > (table.high - table.low) / table.likely);
    CHECK(by_reading.lamps[0].reach->nearest_m == Approx(0.1));
    CHECK(by_reading.lamps[0].reach->farthest_m == Approx(0.4));
}

TEST_CASE("too near is a danger, with the distance that would be safe")
{
    const plan::Plan plan = point_plan(0.30);
    const auto danger = only(plan, "danger.uv-too-strong");
    REQUIRE(danger);
    CHECK(input(*danger, "max") == *light::ferguson_zone(4)->maximum_uvi.max);
    const assess::UvLampResult lamp = uv_of(plan).lamps[0];
    REQUIRE(lamp.safe_distance_m);
    CHECK(*lamp.safe_distance_m == Approx(std::sqrt(0.4 * 1.1 / 9.5)).margin(2e-4)); // by hand
    CHECK(lamp.nearest_m < *lamp.safe_distance_m);
    REQUIRE(danger->remedy);
    plan::Plan raised = plan;
    raised.enclosures[0].equipment[0].height_above_base_m = amount(*danger->remedy, "to");
    CHECK_FALSE(only(raised, "danger.uv-too-strong"));
    raised.enclosures[0].equipment[0].height_above_base_m = amount(*danger->remedy, "to") - 0.011;
    CHECK(only(raised, "danger.uv-too-strong"));
}

TEST_CASE("what an animal can climb to is judged where it is stronger than where it basks")
{
    plan::Plan plan = point_plan(0.48);
    REQUIRE(uv_of(plan).judgement.verdict == Verdict::fits);
    plan::Enclosure& box = plan.enclosures[0];
    box.equipment[0].x_m = 0.4;
    plan::Device heat = box.equipment[0];
    heat.id = "d1";
    heat.kind = plan::DeviceKind::flood_lamp;
    heat.power_w = 200.0; // it basks under this one
    heat.x_m = 0.55;
    heat.uvi_table.clear();
    box.equipment.push_back(heat);
    box.fittings = {fitting("f1", plan::FittingKind::hide, {0.25, 0.3, 0.2, 0.2}, 0.12)};
    const auto elsewhere = only(plan, "uv.strong-elsewhere");
    REQUIRE(elsewhere);
    CHECK(label(*elsewhere, "standing_on") == "f1");
    CHECK(elsewhere->remedy->code == "remedy.move-perch");
    box.fittings[0].x_m = 1.1; // away from the lamp
    CHECK_FALSE(only(plan, "uv.strong-elsewhere"));
}

TEST_CASE("nearer than the readings reach is said, not left out")
{
    plan::Plan plan = point_plan(0.48);
    plan.enclosures[0].equipment[0].uvi_table = {{0.2, 10.0, {}}, {0.8, 0.625, {}}};
    CHECK_FALSE(only(plan, "uv.nearest-not-known"));
    plan.enclosures[0].fittings = {fitting("f1", plan::FittingKind::rock, {0.85, 0.3, 0.1, 0.1}, 0.25)};
    const auto found = only(plan, "uv.nearest-not-known");
    REQUIRE(found);
    CHECK(label(*found, "standing_on") == "f1");
    CHECK(input(*found, "distance") < 0.2);
}

TEST_CASE("under a hide and beyond the light is shade, without it there is too little")
{
    plan::Plan plan = point_plan(0.48);
    const double open = uv_of(plan).dark->surely;
    plan.enclosures[0].fittings = {fitting("f1", plan::FittingKind::hide, {0.6, 0.3, 0.25, 0.25}, 0.1)};
    CHECK(uv_of(plan).dark->surely > open);
    CHECK_FALSE(only(plan, "uv.no-shade"));

    plan::Plan bright = point_plan(0.48);
    bright.enclosures[0].shell.length_m = 0.3;
    bright.enclosures[0].shell.width_m = 0.3;
    bright.enclosures[0].equipment[0].x_m = bright.enclosures[0].equipment[0].y_m = 0.15;
    bright.enclosures[0].equipment[0].beam_deg = 120.0;
    const auto none = only(bright, "uv.no-shade");
    REQUIRE(none);
    CHECK(none->verdict == Verdict::falls_short);
    bright.enclosures[0].fittings = {fitting("f1", plan::FittingKind::hide, {0.0, 0.0, 0.2, 0.2}, 0.1)};
    CHECK_FALSE(only(bright, "uv.no-shade"));
}

TEST_CASE("no lamp, no map; a lamp without readings leaves all but the dark under roofs unknown")
{
    plan::Plan plan = table_plan();
    uv_lamp(plan).uvi_table.clear();
    const assess::UvResult unread = uv_of(plan);
    CHECK_FALSE(unread.uvi_at_basking);
    CHECK_FALSE(unread.strongest);
    CHECK_FALSE(unread.heights);
    CHECK_FALSE(unread.left.likely_h);
    CHECK(unread.dark->at_most == 1.0);
    CHECK(unread.dark->surely > 0.0);
    CHECK(only(plan, "uv.not-known"));
    plan.enclosures[0].equipment.erase(plan.enclosures[0].equipment.begin() + static_cast<std::ptrdiff_t>(tube));
    CHECK(uv_of(plan).map.uvi.empty());
    CHECK(only(plan, "uv.no-lamp"));
}

TEST_CASE("a lamp that fades before it wears out is bought again when it has faded")
{
    const auto replaced = [](const plan::Plan& plan) {
        const assess::Assessment assessment = instant(plan);
        for (const assess::Replacement& one : assessment.costs.replacements) {
            const bool is_tube = one.where == "d2" && one.name.find("tube, up") != std::string::npos;
            CHECK((is_tube || !one.uv_fades)); // a guard or fixture doesn't fade
            if (is_tube) {
                return std::optional(std::pair(one, assessment.enclosures[0].uv.falls_out_on));
            }
        }
        return std::optional<std::pair<assess::Replacement, std::optional<std::chrono::year_month_day>>>();
    };
    plan::Plan plan = table_plan();
    for (plan::UvPoint& point : uv_lamp(plan).uvi_table) {
        point.uvi *= 0.5; // near to the lower end of its zone
    }
    const auto faded = replaced(plan);
    REQUIRE(faded);
    CHECK(faded->first.uv_fades);
    REQUIRE(faded->second);
    const auto apart = std::chrono::sys_days(faded->first.due) - std::chrono::sys_days(*faded->second);
    CHECK(std::abs(apart.count()) <= 2); // months by the calendar against days
    for (plan::UvPoint& point : uv_lamp(plan).uvi_table) {
        point.uvi *= 2.0;
    }
    const auto worn = replaced(plan);
    REQUIRE(worn);
    CHECK_FALSE(worn->first.uv_fades);
    CHECK(worn->first.due > faded->first.due);
}

TEST_CASE("readings of a later hour than the lamp has burnt are named and taken as just read")
{
    plan::Plan plan = table_plan();
    const double as_new = uv_of(plan).uvi_at_basking->likely;
    uv_lamp(plan).age_hours = 400.0;
    uv_lamp(plan).uvi_age_hours = 900.0;
    const auto found = only(plan, "uv.read-after-age");
    REQUIRE(found);
    CHECK(input(*found, "burnt_when_read") == 900.0);
    CHECK(input(*found, "burnt") == 400.0);
    CHECK(uv_of(plan).uvi_at_basking->likely == Approx(as_new));
}

TEST_CASE("a new UV reading solves no climate anew, and is judged at once")
{
    plan::Plan plan = table_plan();
    assess::Workspace workspace;
    const auto before = assess::assess(plan, shipped_catalog(), day, workspace);
    for (plan::UvPoint& point : uv_lamp(plan).uvi_table) {
        point.uvi *= 0.6;
    }
    uv_lamp(plan).age_hours = 100.0;
    int deliveries = 0;
    const auto after =
        assess::assess(plan, shipped_catalog(), day, workspace, {}, [&](const assess::Assessment&) { ++deliveries; });
    CHECK(deliveries == 1); // a climate to be solved would have made four
    REQUIRE(after);
    CHECK(after->enclosures[0].uv.uvi_at_basking->likely < before->enclosures[0].uv.uvi_at_basking->likely);
    CHECK(after->enclosures[0].heat == before->enclosures[0].heat);
    CHECK(*after == whole(plan));
}
