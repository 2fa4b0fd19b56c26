// A thermostat that switches, and water that is misted in pulses.
#include <algorithm>

#include "core/climate/course.hpp"
#include "core/climate/film_store.hpp"
#include "core/climate/newton.hpp"
#include "core/climate/switching.hpp"
#include "tests/catch.hpp"
#include "tests/core/climate/solved.hpp"

namespace loam::climate::test {

namespace {

// A mat under a thin bed, its probe on the bed above it.
Box regulated()
{
    Box box = furnished_box(0.04);
    box.lamps.clear();
    box.mats[0].power_w = exactly(40.0);
    box.mats[0].control = {.kind = ControlKind::thermostat, .setpoint_c = 24.0, .probe = Point{0.22, 0.2286, 0.04}};
    return box;
}

Switching cycle_of(const Box& box, const std::string& device, double hysteresis_k)
{
    Workspace workspace;
    const auto found = follow_switching(box, home_day(exactly(21.0)), device, hysteresis_k, workspace);
    REQUIRE(found);
    return *found;
}

const CoursePoint& near(const Course& course, double hour)
{
    return *std::min_element(course.points.begin(), course.points.end(), [hour](const auto& a, const auto& b) {
        return std::abs(a.hour - hour) < std::abs(b.hour - hour);
    });
}

DayPlan day_plan()
{
    Case night = home_day(exactly(18.0));
    night.id = "night";
    night.day = false;
    return {.day = home_day(exactly(21.0)), .night = night, .lit_h = 12.0};
}

} // namespace

TEST_CASE("A switching thermostat draws on average what one that dims draws, and swings about the same target")
{
    // Conservation of energy over whole cycles: the box loses as much either way but for the curvature of its losses.
    const Box box = regulated();
    const double averaged_w = solved(box, home_day(exactly(21.0))).devices.back().power_w.likely;
    const Switching cycle = cycle_of(box, "mat", 1.0);
    REQUIRE(cycle.switches);
    CHECK(cycle.on_share * 40.0 == Approx(averaged_w).epsilon(0.12));
    CHECK(cycle.probe_c.low <= 23.5 + 0.05); // it goes on at the lower bound, and lag takes it further
    CHECK(cycle.probe_c.high >= 24.5 - 0.05);
    CHECK(cycle.probe_c.low > 22.0);
    CHECK(cycle.probe_c.high < 27.0);
    CHECK(cycle.per_day == Approx(24.0 / cycle.period_h));
}

TEST_CASE("A narrower hysteresis switches more often and swings less")
{
    const Switching wide = cycle_of(regulated(), "mat", 2.0);
    const Switching narrow = cycle_of(regulated(), "mat", 0.5);
    REQUIRE((wide.switches && narrow.switches));
    CHECK(narrow.period_h < 0.8 * wide.period_h);
    CHECK(narrow.probe_c.high - narrow.probe_c.low < wide.probe_c.high - wide.probe_c.low);
}

TEST_CASE("A thermostat that is always on, always off or without a probe has no cycle")
{
    Box cold = regulated();
    cold.mats[0].control.setpoint_c = 10.0;
    CHECK_FALSE(cycle_of(cold, "mat", 1.0).switches);
    Box weak = regulated();
    weak.mats[0].power_w = exactly(1.0);
    CHECK_FALSE(cycle_of(weak, "mat", 1.0).switches);
    Box blind = regulated();
    blind.mats[0].control.probe.reset();
    Workspace workspace;
    CHECK_FALSE(follow_switching(blind, home_day(), "mat", 1.0, workspace));
    CHECK_FALSE(follow_switching(regulated(), home_day(), "nobody", 1.0, workspace));
    CHECK_FALSE(follow_switching(regulated(), home_day(), "mat", 0.0, workspace));
}

TEST_CASE("A lamp's bed stays as dry while its thermostat holds it off")
{
    Box box = furnished_box();
    box.lamps[0].control.off = true;
    const CaseResult off = solved(box);
    CHECK(off.devices[0].power_w.likely == 0.0);
    CHECK(off.power_w == Approx(18.0));
}

TEST_CASE("A misting raises the humidity at once, and it falls again before the next")
{
    Box box = furnished_box();
    box.misting_l_per_day = exactly(0.2);
    box.mistings_per_day = 2; // at 0 h and 6 h
    Workspace workspace;
    const auto pulsed = periodic_day(box, day_plan(), workspace);
    REQUIRE((pulsed && pulsed->complete));
    CHECK(pulsed->misted_h == std::vector<double>{0.0, 6.0});
    CHECK(near(*pulsed, 6.3).humidity > near(*pulsed, 5.9).humidity + 0.1);
    CHECK(near(*pulsed, 11.5).humidity < near(*pulsed, 6.3).humidity - 0.1);
    CHECK(near(*pulsed, 6.3).warm_c < near(*pulsed, 5.9).warm_c - 0.5); // what evaporates cools
    box.mistings_per_day = 0;
    const auto even = periodic_day(box, day_plan(), workspace);
    REQUIRE((even && even->complete));
    CHECK(std::abs(near(*even, 6.3).humidity - near(*even, 5.9).humidity) < 0.02);
}

TEST_CASE("Misted water on the bed goes at the rate of open water and not beyond what there is")
{
    // By hand: no more than was sprayed, half a millimetre at most; and in still, saturated air nothing.
    const Box box = furnished_box(0.10, /*damp=*/false);
    const auto scene = make_scene(box, field_cells({}));
    REQUIRE(scene);
    auto model = make_model(box, home_day(), *scene);
    REQUIRE(model);
    std::vector<double> values = room_start(*model);
    FilmStore film(scene->geometry.columns());
    film.spray(0.3);
    film.spray(0.4);
    CHECK(film.kg_m2().front() == Approx(0.5));
    film.offer(1800.0, model->floor);
    CHECK(model->floor.mist_at(0) == Approx(0.5 / 1800.0));
    FilmStore saturated = film;
    film.dry(*model, values, 1800.0);
    // Lewis: h / cp (W_sat - W) with the film's h at rest; 21.5 degC at 45 %: W_sat 0.0162, W 0.0072 kg/kg.
    const double h = film_w_m2k(model->floor.film, 21.5, 21.5).value();
    const double open_kg_m2 = h / 1006.0 * (0.0162 - 0.0072) * 1800.0;
    CHECK(0.5 - film.kg_m2().front() == Approx(open_kg_m2).epsilon(0.05));
    film.dry(*model, values, 1e7);
    CHECK(film.kg_m2().front() == 0.0);
    values[model->layout.lower_vapour()] = 0.03;
    saturated.dry(*model, values, 1800.0);
    CHECK(saturated.kg_m2().front() == Approx(0.5));
}

} // namespace loam::climate::test
