// How long cases take: one with its ranges, four on fine cells alone, a day, a large table. Run: bench_climate, on an
// idle machine.
#include <chrono>
#include <cstdio>

#include "core/climate/course.hpp"
#include "tests/catch.hpp"
#include "tests/core/climate/boxes.hpp"

using namespace loam::climate;

namespace {

// An edit: the lamp moved by a centimetre, started from the last answer.
double after_an_edit(Box& box, Workspace& workspace, const Resolution& resolution = {})
{
    box.lamps[0].at.x_m = box.lamps[0].at.x_m > 0.25 ? 0.22 : box.lamps[0].at.x_m + 0.01;
    return solve_steady(box, test::home_day(), workspace, {}, resolution)->warm.ground_c.likely;
}

} // namespace

TEST_CASE("one steady case of a 0.9 m box", "[bench]")
{
    Workspace workspace;
    Box damp = test::furnished_box(0.10, true);
    Box dry = test::furnished_box(0.10, false);
    BENCHMARK("damp bed, from nothing")
    {
        Workspace empty;
        return after_an_edit(damp, empty);
    };
    BENCHMARK("damp bed, after an edit")
    {
        return after_an_edit(damp, workspace);
    };
    BENCHMARK("dry bed, after an edit")
    {
        return after_an_edit(dry, workspace);
    };
    Box regulated = damp;
    regulated.mats[0].control = {.kind = ControlKind::thermostat, .setpoint_c = 27.0, .probe = Point{0.22, 0.23, 0.10}};
    BENCHMARK("damp bed with a thermostat, after an edit")
    {
        return after_an_edit(regulated, workspace);
    };
}

namespace {

Case night()
{
    Case now = test::home_day();
    now.id = "night";
    now.day = false;
    now.room.temperature_c = {15.0, 17.0, 19.0};
    return now;
}

// Winter and summer, day and night.
std::vector<Case> four_cases()
{
    std::vector<Case> cases{test::home_day(), night(), test::home_day(), night()};
    for (const std::size_t summer : {2U, 3U}) {
        cases[summer].id += "-summer";
        cases[summer].room.temperature_c = {24.0, 26.0, 28.0};
    }
    return cases;
}

// The fields of all cases after the lamp was moved.
double fields_after_an_edit(Box& box, Workspace& workspace)
{
    box.lamps[0].at.x_m = box.lamps[0].at.x_m > 0.25 ? 0.22 : box.lamps[0].at.x_m + 0.01;
    double sum = 0.0;
    for (const Case& now : four_cases())
        sum += solve_likely(box, now, workspace)->warm.ground_c.likely;
    return sum;
}

Box table()
{
    Box box = test::furnished_box(0.10, true);
    box.length_m = 2.4;
    box.width_m = 1.2;
    return box;
}

} // namespace

TEST_CASE("fields of four steady cases of a 0.9 m box on 25 mm cells", "[bench]")
{
    Workspace workspace;
    Box box = test::furnished_box(0.10, true);
    BENCHMARK("after an edit")
    {
        return fields_after_an_edit(box, workspace);
    };
}

TEST_CASE("a day that repeats itself", "[bench]")
{
    const Box box = test::furnished_box(0.10, true);
    BENCHMARK("from nothing")
    {
        Workspace empty;
        return periodic_day(box, {.day = test::home_day(), .night = night()}, empty)->energy_kwh;
    };
}

TEST_CASE("cost against cells, one field of a 2.4 x 1.2 m table from nothing", "[bench]")
{
    const Box box = table();
    for (const double cell_m : {0.04, 0.02, 0.01}) {
        const Resolution resolution{.cell_m = cell_m, .layer_m = cell_m, .most_columns = 1000000};
        const auto begin = std::chrono::steady_clock::now();
        Workspace empty;
        const auto result = solve_likely(box, test::home_day(), empty, {}, resolution);
        const double ms = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
        std::printf("cells of %2.0f mm: %8.1f ms, %d iterations, converged %d\n", 1000.0 * cell_m, ms,
                    result ? result->iterations : -1, result && result->converged);
    }
}
