#include "tests/catch.hpp"

#include "core/substrate/mass.hpp"

using namespace loam;
using namespace loam::substrate;

namespace {

// An open glass box by its outer dimensions, all panes of one thickness.
ShellForm glass_box(double length_m, double width_m, double height_m, double thickness_m)
{
    ShellForm shell;
    shell.length_m = length_m - 2.0 * thickness_m;
    shell.width_m = width_m - 2.0 * thickness_m;
    shell.height_m = height_m - thickness_m;
    shell.walls = {thickness_m, exactly(2500.0)}; // EN 572: 2.5 kg/m2 for each millimetre (confirmed)
    shell.base = shell.walls;
    return shell;
}

} // namespace

TEST_CASE("Five panes of an open glass box have the worked mass")
{
    // Derived: panes on the base, side panes between front and back; outer W x D x H and pane.
    CHECK(shell_kg(glass_box(0.6, 0.45, 0.45, 0.004)).likely == Approx(11.995).margin(6e-4));
    CHECK(shell_kg(glass_box(0.6, 0.45, 0.45, 0.006)).likely == Approx(17.876).margin(6e-4));
    CHECK(shell_kg(glass_box(0.9, 0.45, 0.45, 0.006)).likely == Approx(23.897).margin(6e-4));
    CHECK(shell_kg(glass_box(1.2, 0.6, 0.6, 0.010)).likely == Approx(70.51).margin(6e-3));
}

TEST_CASE("The footprint is the outer outline")
{
    CHECK(footprint_m2(glass_box(0.6, 0.45, 0.45, 0.004)) == Approx(0.27));
}

TEST_CASE("A glass top adds a pane as large as the footprint")
{
    ShellForm shell = glass_box(0.6, 0.45, 0.45, 0.004);
    const double open_kg = shell_kg(shell).likely;
    shell.top = Panel{0.004, exactly(2500.0)};
    CHECK(shell_kg(shell).likely - open_kg == Approx(0.27 * 10.0)); // 10 kg/m2 at 4 mm
}

TEST_CASE("The total is the sum of its parts and presses on the footprint")
{
    Masses masses;
    masses.shell_kg = exactly(12.0);
    masses.substrate_kg = {40.0, 43.0, 46.0};
    masses.water_kg = {0.0, 4.0, 8.0};
    masses.animals_kg = exactly(1.0);
    const auto result = load(masses, 0.27);
    REQUIRE(result);
    CHECK(result->total_kg.likely == Approx(60.0));
    CHECK(result->total_kg.low == Approx(55.0)); // 3 and 4 make 5
    CHECK(result->total_kg.high == Approx(65.0));
    // 60 kg on 0.6 x 0.45 m: 2.18 kN/m2 (derived).
    CHECK(result->pressure_kpa.likely == Approx(2.18).margin(0.005));
    CHECK_FALSE(load(masses, 0.0));
}
