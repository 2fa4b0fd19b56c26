// What keepers commonly read and do, against the whole path from a plan to its assessment.
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

constexpr double inch_m = 0.0254;

// 36 x 18 x 18 in of glass, a screen top with a pane over its cool part, a flood lamp of 100 W and a mat of 18 W with
// its dimmer at full under the warm side.
plan::Plan usual_glass_box(double water_fraction)
{
    plan::Plan plan = minimal_plan();
    plan.site.room.winter.day_c = 21.5;
    plan.site.room.winter.relative_humidity = 0.45;
    plan::Enclosure& box = plan.enclosures[0];
    box.shell.length_m = 36.0 * inch_m;
    box.shell.width_m = 18.0 * inch_m;
    box.shell.height_m = 18.0 * inch_m;
    box.shell.top.covers = {cover("v1", "glass", {20.0 * inch_m, 0.0, 16.0 * inch_m, 18.0 * inch_m})};
    box.animals = {animal("a1", "terrapene-carolina-triunguis", 0.13)};
    box.substrate[0].material = "coir-fine";
    box.substrate[0].depth_m = 0.10;
    box.substrate[0].water_fraction = water_fraction;
    box.fittings = {fitting("f1", plan::FittingKind::water_bowl, {0.62, 0.05, 0.2, 0.2}, 0.05)};
    plan::Device lamp;
    lamp.id = "d1";
    lamp.kind = plan::DeviceKind::flood_lamp;
    lamp.power_w = 100.0;
    lamp.x_m = 0.22;
    lamp.y_m = 9.0 * inch_m;
    lamp.height_above_base_m = 0.50;
    lamp.supply = plan::Supply::timed;
    plan::Device mat;
    mat.id = "d2";
    mat.kind = plan::DeviceKind::heat_mat;
    mat.place = plan::Place::under_base;
    mat.power_w = 18.0;
    mat.x_m = 0.08;
    mat.y_m = 0.0886;
    mat.length_m = 0.28;
    mat.width_m = 0.28;
    mat.supply = plan::Supply::always_on;
    mat.control.kind = plan::ControlKind::dimmer;
    mat.control.level = 1.0;
    box.equipment = {lamp, mat};
    return plan;
}

// The home of 20 to 23 degC as the spread about 21.5.
catalog::Catalog usual_home()
{
    catalog::Catalog catalog = shipped_catalog();
    for (catalog::Assumption& one : catalog.assumptions) {
        if (one.id == "room.stated_spread_k") {
            one.spread.low = -1.5;
            one.spread.high = 1.5;
        }
    }
    return catalog;
}

} // namespace

TEST_CASE("the usual heated glass box reads 29.4 degC on its warm side and not under 23.9 degC on its cool one")
{
    // Common practice, no source: about 85 degF at ground level on the warm side, not under 75 degF on the cool side.
    for (const double water_fraction : {0.05, 0.25}) { // dry and damp
        const auto assessment = whole(usual_glass_box(water_fraction), usual_home());
        const climate::CaseResult& day = heat_case(assessment.enclosures[0], "winter-day").detail;
        const Range warm = day.warm.ground_c;
        const Range cool = day.cool.ground_c;
        INFO("water " << water_fraction << ": warm " << warm.low << " " << warm.likely << " " << warm.high << ", cool "
                      << cool.low << " " << cool.likely << " " << cool.high);
        REQUIRE(day.converged);
        CHECK(warm.low <= 29.4);
        CHECK(warm.high >= 29.4);
        CHECK(cool.likely >= 23.9);
        CHECK(warm.high - warm.low <= 8.0);
        CHECK(cool.high - cool.low <= 8.0);
    }
}

TEST_CASE("the same box's mat under its bed is found out as the danger it is")
{
    const auto assessment = whole(usual_glass_box(0.25), usual_home());
    CHECK(has(assessment, "danger.mat-under-bed", Verdict::danger));
    CHECK(has(assessment, "control.heater-unregulated", Verdict::falls_short));
}

TEST_CASE("a bed of coir is changed every half year, at most yearly")
{
    // Common practice, no source.
    const catalog::Material* coir = shipped_catalog().find_material("coir-fine");
    REQUIRE(coir != nullptr);
    REQUIRE(coir->replace_months);
    CHECK(coir->replace_months->likely == Approx(6.0));
    CHECK(coir->replace_months->high <= 12.0);

    const auto assessment = instant(usual_glass_box(0.25));
    bool found = false;
    for (const assess::CostLine& line : assessment.costs.lines) {
        if (line.kind == assess::CostKind::substrate) {
            found = true;
            CHECK(line.every_months.value_or(0.0) == Approx(6.0));
        }
    }
    CHECK(found);
}
