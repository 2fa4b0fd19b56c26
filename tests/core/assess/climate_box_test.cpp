// One box checked by hand on its way from the plan to the climate: units, signs and places.
#include "core/assess/climate_box.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

assess::ClimateBox box_of(const plan::Plan& plan)
{
    const assess::Context context{plan, shipped_catalog(), day};
    assess::Notes notes;
    auto found = assess::climate_box(context, {plan.enclosures[0], 0}, notes);
    REQUIRE(std::holds_alternative<assess::ClimateBox>(found));
    return std::get<assess::ClimateBox>(found);
}

} // namespace

TEST_CASE("shell, bed and covers arrive with the units of the climate")
{
    plan::Plan plan = turtle_table();
    plan::Enclosure& enclosure = plan.enclosures[0];
    enclosure.shell.top.covers = {cover("v1", "glass", {1.2, -0.1, 0.4, 0.5})};
    enclosure.substrate[0].depth_at_right_m = 0.15;
    enclosure.substrate[0].water_fraction = 0.12;
    const climate::Box box = box_of(plan).box;
    CHECK(box.length_m == Approx(1.4));
    CHECK(box.walls.thickness_m == Approx(0.012));
    CHECK(box.walls.conductivity_w_mk.likely == Approx(0.13).margin(0.02)); // plywood: DIN EN 12524, 0.13 at 500 kg/m3
    // Plywood of 500 kg/m3 and 1600 J/(kg K), DIN EN 12524: 0.8 MJ/(m3 K).
    CHECK(box.walls.heat_capacity_j_m3k == Approx(0.8e6).epsilon(0.1));
    CHECK(box.walls.lamp_transmittance.likely == 0.0);
    REQUIRE(box.covers.size() == 1);
    CHECK(box.covers[0].area == climate::Rect{1.2, 0.0, box.length_m - 1.2, 0.4}); // cut at the edges
    CHECK(box.covers[0].leak.likely <= 0.1);
    REQUIRE(box.bed.size() == 1);
    CHECK(box.bed[0].depth_left_m == Approx(0.09));
    CHECK(box.bed[0].depth_right_m == Approx(0.15));
    CHECK(box.bed[0].water_damp == exactly(0.12));
    CHECK(box.bed[0].water_dry.high <= 0.12);
    CHECK(box.animal_back_m == Approx(0.115 * 0.48));
}

TEST_CASE("lamps hang where they are, shine by their kind and burn by their supply")
{
    plan::Plan plan = turtle_table();
    plan::Enclosure& enclosure = plan.enclosures[0];
    plan::Device& lamp = enclosure.equipment[0];
    lamp.power_w = 60.0;
    lamp.height_above_base_m = enclosure.shell.height_m + 0.02;
    lamp.supply = plan::Supply::timed;
    plan::Device ceramic;
    ceramic.id = "d9";
    ceramic.kind = plan::DeviceKind::ceramic_heater;
    ceramic.power_w = 100.0;
    ceramic.height_above_base_m = enclosure.shell.height_m - 0.05;
    ceramic.supply = plan::Supply::always_on;
    enclosure.equipment = {lamp, ceramic};
    const climate::Box box = box_of(plan).box;
    REQUIRE(box.lamps.size() == 2);
    CHECK(box.lamps[0].above_top);
    CHECK_FALSE(box.lamps[0].at_night);
    CHECK_FALSE(box.lamps[0].thermal);
    CHECK(box.lamps[0].power_w.likely == Approx(60.0));
    CHECK(box.lamps[0].power_w.low == Approx(57.0)); // 5 % by the shipped tolerance
    CHECK_FALSE(box.lamps[1].above_top);
    CHECK(box.lamps[1].at_night);
    CHECK(box.lamps[1].thermal);
}

TEST_CASE("a mat on a side wall runs along y and up z, and a thermostat needs its setpoint to regulate")
{
    plan::Plan plan = turtle_table();
    plan::Device mat;
    mat.id = "d9";
    mat.kind = plan::DeviceKind::heat_mat;
    mat.place = plan::Place::right_wall;
    mat.power_w = 12.0;
    mat.x_m = 0.0;
    mat.y_m = 0.15;
    mat.z_m = 0.11;
    mat.length_m = 0.3;
    mat.width_m = 0.2;
    mat.supply = plan::Supply::always_on;
    mat.control.kind = plan::ControlKind::thermostat;
    mat.control.probe = plan::Probe{1.3, 0.3, 0.1, {}};
    plan.enclosures[0].equipment = {mat};
    const climate::Mat without = box_of(plan).box.mats.at(0);
    CHECK(without.area == climate::Rect{0.15, 0.11, 0.3, 0.2});
    CHECK(without.place == climate::MatPlace::right_wall);
    CHECK(without.control.kind == climate::ControlKind::none);
    plan.enclosures[0].equipment[0].control.setpoint_c = 27.0;
    const climate::Mat regulated = box_of(plan).box.mats.at(0);
    CHECK(regulated.control.kind == climate::ControlKind::thermostat);
    CHECK(regulated.control.setpoint_c == 27.0);
    CHECK(regulated.control.probe == climate::Point{1.3, 0.3, 0.1});
}

TEST_CASE("a stated room temperature keeps its spread and an assumed one its bracket")
{
    plan::Plan plan = turtle_table();
    plan.site.room.winter.day_c = 19.0;
    plan.site.room.summer.day_c.reset();
    const assess::Context context{plan, shipped_catalog(), day};
    assess::Notes notes;
    const auto cases = assess::climate_cases(context, box_of(plan).box, notes);
    REQUIRE(cases.size() == 5); // no mat: no drill of it
    CHECK(cases[0].id == "winter-day");
    CHECK(cases[0].room.temperature_c == Range{18.0, 19.0, 20.0});
    CHECK_FALSE(cases[1].day);
    CHECK(cases[2].room.temperature_c.high > cases[2].room.temperature_c.low + 4.0);
    CHECK(notes.assumed.at(0).where == "/site/room/summer/day_c");
}
