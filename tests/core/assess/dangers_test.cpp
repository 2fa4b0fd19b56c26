// Dangers that the climate shows: there when provoked, and not otherwise.
#include <algorithm>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

plan::Device mat_under_base(double power_w)
{
    plan::Device mat;
    mat.id = "d9";
    mat.kind = plan::DeviceKind::heat_mat;
    mat.place = plan::Place::under_base;
    mat.power_w = power_w;
    mat.x_m = 0.1;
    mat.y_m = 0.2;
    mat.length_m = 0.28;
    mat.width_m = 0.28;
    mat.air_gap_m = 0.003;
    mat.below = "melamine-board";
    mat.supply = plan::Supply::always_on;
    return mat;
}

} // namespace

TEST_CASE("the first setup has no danger once its climate is solved either")
{
    const auto assessment = whole(example("first-setup"));
    CHECK(assessment.complete);
    CHECK_FALSE(has_danger(assessment));
    for (const assess::HeatCase& one : assessment.enclosures[0].heat) {
        CHECK(one.known);
    }
}

TEST_CASE("a mat without a thermostat under a deep bed is danger below, and a weak regulated one is not")
{
    // 43 degC for long contact: ISO 13732-1 (from memory). A mat of 28 x 28 cm with 20 W is 255 W/m2.
    plan::Plan plan = turtle_table();
    plan.enclosures[0].equipment.push_back(mat_under_base(20.0));
    const auto found = with_code(whole(plan), "danger.mat-under-bed");
    REQUIRE(found.size() == 1);
    CHECK(found[0].verdict == Verdict::danger);
    CHECK(label(found[0], "regulated") == "no");
    CHECK(input(found[0], "high") > 43.0);
    REQUIRE(found[0].remedy);
    CHECK(found[0].remedy->code == "remedy.add-thermostat");

    plan::Device& mat = plan.enclosures[0].equipment.back();
    mat.power_w = 4.0;
    mat.control.kind = plan::ControlKind::thermostat;
    mat.control.setpoint_c = 24.0;
    mat.control.probe = plan::Probe{0.24, 0.34, 0.0, {}};
    CHECK_FALSE(has(whole(plan), "danger.mat-under-bed", Verdict::danger));
}

TEST_CASE("a lamp that dries the bed beyond what skin bears for ten minutes is danger, and names a weaker setting")
{
    // 48 degC for ten minutes: ISO 13732-1 (from memory).
    plan::Plan plan = turtle_table();
    std::erase_if(plan.enclosures[0].fittings,
                  [](const plan::Fitting& one) { return one.kind == plan::FittingKind::rock; });
    plan::Device& lamp = plan.enclosures[0].equipment[0];
    lamp.power_w = 150.0;
    lamp.control = {};
    const auto found = with_code(whole(plan), "danger.lamp-dried-surface");
    REQUIRE(found.size() == 1);
    CHECK(found[0].verdict == Verdict::danger);
    CHECK(input(found[0], "max") == 48.0);
    REQUIRE(found[0].remedy);
    CHECK(found[0].remedy->code == "remedy.weaker-device");
    CHECK(found[0].remedy->amounts[1].value < 150.0);
}

TEST_CASE("a room hotter than the body bears leaves no escape, one colder none from cold")
{
    plan::Plan plan = turtle_table();
    plan.site.room.heat_wave_c = 40.0; // ornate box turtle: harmed above 38 degC by its sheet
    CHECK(has(whole(plan), "danger.no-escape-from-heat", Verdict::danger));
    plan.site.room.heat_wave_c = 29.0;
    plan.site.room.winter.night_c = 2.0; // and below 4 degC
    plan.enclosures[0].equipment.clear();
    const auto cold = whole(plan);
    CHECK(has(cold, "danger.no-escape-from-cold", Verdict::danger));
    CHECK_FALSE(has(cold, "danger.no-escape-from-heat", Verdict::danger));
}
