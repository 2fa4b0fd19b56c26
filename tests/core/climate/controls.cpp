#include <cmath>

#include "tests/catch.hpp"

#include "tests/core/climate/solved.hpp"

using namespace loam;
using namespace loam::climate;
using namespace loam::climate::test;

namespace {

// Ground reading in the middle of the mat's area.
double ground_at(const CaseResult& result, double x_m, double y_m)
{
    const auto i = static_cast<std::size_t>(x_m / result.floor.dx_m);
    const auto j = static_cast<std::size_t>(y_m / result.floor.dy_m);
    return result.floor.ground_c[j * result.floor.nx + i];
}

Box regulated(double setpoint_c)
{
    Box box = furnished_box(0.06);
    box.mats[0].control = {
        .kind = ControlKind::thermostat, .setpoint_c = setpoint_c, .probe = Point{0.22, 0.2286, 0.06}};
    return box;
}

Case night()
{
    Case now = home_day(exactly(19.0));
    now.day = false;
    return now;
}

} // namespace

TEST_CASE("a thermostat that can holds its probe at the target with part of its power")
{
    const CaseResult result = solved(regulated(21.5), night());
    CHECK(ground_at(result, 0.22, 0.2286) == Approx(21.5).margin(1e-6));
    const DeviceState& mat = result.devices.back();
    CHECK(mat.power_w.likely > 1.0);
    CHECK(mat.power_w.likely < 18.0);
    CHECK(mat.duty.likely == Approx(mat.power_w.likely / 18.0));
    CHECK_FALSE(mat.saturated);
    CHECK(result.power_w == Approx(mat.power_w.likely));
    CHECK(std::abs(result.input_w - result.loss_w) < 1e-6 * result.power_w);
}

TEST_CASE("a thermostat that asks too much runs at full and says so")
{
    const CaseResult result = solved(regulated(45.0), night());
    CHECK(result.devices.back().power_w.likely == Approx(18.0));
    CHECK(result.devices.back().saturated);
    CHECK(ground_at(result, 0.22, 0.2286) < 45.0);
}

TEST_CASE("a thermostat in a room warmer than its target stays off")
{
    const CaseResult result = solved(regulated(16.0), night());
    CHECK(result.devices.back().power_w.likely == Approx(0.0).margin(1e-9));
    CHECK(result.power_w == Approx(0.0).margin(1e-9));
}

TEST_CASE("a thermostat without a probe, or stuck on, counts as unregulated")
{
    Box blind = regulated(21.5);
    blind.mats[0].control.probe.reset();
    CHECK(solved(blind, night()).devices.back().power_w.likely == Approx(18.0));
    Case stuck = night();
    stuck.fault = Fault::mats_stuck_on;
    const CaseResult result = solved(regulated(21.5), stuck);
    CHECK(result.devices.back().power_w.likely == Approx(18.0));
    CHECK(result.hottest_digging_c.likely > solved(regulated(21.5), night()).hottest_digging_c.likely);
}

TEST_CASE("a dimmed lamp draws its level, a timed one nothing at night, a failed one nothing at all")
{
    Box box = furnished_box();
    box.lamps[0].control = {.kind = ControlKind::dimmer, .level = 0.4, .setpoint_c = 0.0, .probe = std::nullopt};
    CHECK(solved(box).devices[0].power_w.likely == Approx(40.0));
    CHECK(solved(box, night()).devices[0].power_w.likely == 0.0);
    Case out = home_day();
    out.fault = Fault::lamps_out;
    CHECK(solved(box, out).power_w == Approx(18.0));
    Case bare = home_day();
    bare.fault = Fault::covers_off;
    CHECK(solved(furnished_box(), bare).cool.ground_c.likely < solved(furnished_box()).cool.ground_c.likely);
}

TEST_CASE("a lamp thermostat dims the lamp to its target")
{
    Box box = furnished_box();
    box.mats.clear();
    box.lamps[0].control = {.kind = ControlKind::thermostat, .setpoint_c = 30.0, .probe = Point{0.22, 0.2286, 0.10}};
    const CaseResult result = solved(box);
    CHECK(ground_at(result, 0.22, 0.2286) == Approx(30.0).margin(1e-6));
    CHECK(result.devices[0].power_w.likely > 10.0);
    CHECK(result.devices[0].power_w.likely < 100.0);
}

TEST_CASE("a mat on a wall makes that wall's inside the hottest, and a perch under a lamp the hottest place")
{
    Box box = furnished_box();
    box.mats[0].place = MatPlace::back_wall;
    box.mats[0].area = {0.10, 0.15, 0.30, 0.20};
    const CaseResult wall = solved(box);
    CHECK(wall.hottest_pane_c.likely > solved(furnished_box()).hottest_pane_c.likely + 3.0);

    Box perched = furnished_box();
    const double floor_c = solved(perched).hottest_surface_c.likely;
    perched.perches = {{.id = "rock", .area = {0.15, 0.15, 0.15, 0.15}, .height_m = 0.15}};
    const CaseResult result = solved(perched);
    CHECK(result.hottest_surface_c.likely > floor_c + 5.0);
    CHECK(result.hottest_at.z_m == Approx(0.25));
}

TEST_CASE("glass stops what a dark emitter radiates, so that more of it stays than of a flood lamp's")
{
    Box box = furnished_box(0.10, false);
    box.mats.clear();
    const double bright_w = solved(box).input_w;
    box.lamps[0].thermal = true;
    CHECK(solved(box).input_w > bright_w);
}

TEST_CASE("a towel under the lamp takes its beam and keeps it off the floor")
{
    Box box = furnished_box();
    const double open_c = solved(box).basking.surface_c.likely;
    box.covers[0].area = {0.0, 0.0, 0.9144, 0.4572};
    const CaseResult result = solved(box);
    CHECK(result.basking.surface_c.likely < open_c);
    CHECK(result.floor.beam_w_m2[0] < 20.0);
}

TEST_CASE("the share of floor in a band is all of it for a wide band, none for a far one, and between for the rest")
{
    const CaseResult result = solved(furnished_box());
    CHECK(share_in_band(result, Measure::ground, 0.0, 100.0) == exactly(1.0));
    CHECK(share_in_band(result, Measure::ground, 80.0, std::nullopt) == exactly(0.0));
    const Range half = share_in_band(result, Measure::ground, 26.0, std::nullopt);
    CHECK(half.likely > 0.2);
    CHECK(half.likely < 0.9);
    CHECK(half.low <= half.likely);
    CHECK(half.likely <= half.high);
    CHECK(half.low < half.high);
}

TEST_CASE("the basking spot is the upper face of what stands in the beam, and the bed where nothing does")
{
    const Box bare = furnished_box();
    const Point& lamp = bare.lamps[0].at;
    Box perched = bare;
    perched.perches = {{.id = "rock", .area = {lamp.x_m - 0.07, lamp.y_m - 0.07, 0.14, 0.14}, .height_m = 0.15}};
    const CaseResult on_rock = solved(perched);
    CHECK(on_rock.basking.area == perched.perches[0].area);
    CHECK(on_rock.basking.surface_c == on_rock.hottest_surface_c); // the hottest thing there is
    CHECK(on_rock.basking.operative_c.likely > on_rock.basking.ground_c.likely);

    const CaseResult on_bed = solved(bare);
    CHECK(on_rock.basking.surface_c.likely > on_bed.basking.surface_c.likely);
    perched.perches[0].area.x_m = perched.length_m - 0.15; // out of the beam
    CHECK(solved(perched).basking.surface_c == on_bed.basking.surface_c);
}
