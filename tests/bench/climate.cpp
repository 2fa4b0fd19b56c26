// How long one steady case takes, ranges included. Run: bench_climate, on an idle machine.
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

TEST_CASE("cost against cells", "[bench]")
{
    Workspace workspace;
    Box box = test::furnished_box(0.10, true);
    for (const double cell_m : {0.06, 0.045, 0.03})
        BENCHMARK("cells of " + std::to_string(static_cast<int>(1000.0 * cell_m)) + " mm")
        {
            return after_an_edit(box, workspace, {.cell_m = cell_m});
        };
}
