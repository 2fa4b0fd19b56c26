// The scheme in time against closed forms.
#include <cmath>
#include <numbers>

#include "tests/catch.hpp"
#include "tests/core/climate/slab.hpp"

using namespace loam::climate;

namespace {

// One brick: its own resistance up to its middle counts, so that it is lumped exactly.
double after_lumped(int steps)
{
    const test::Slab slab{.bricks = 1,
                          .depth_m = 0.004,
                          .conductivity_w_mk = 1e6,
                          .capacity_j_m3k = 2500.0 * 750.0,
                          .film_w_m2k = 15.4,
                          .start_c = 40.0,
                          .room_c = 20.0};
    Stepper stepper = test::stepper_of(slab);
    for (int i = 0; i < steps; ++i)
        REQUIRE(stepper.advance(487.0 / 3600.0 / steps, test::steady_room, {}));
    return stepper.values()[0];
}

} // namespace

// Incropera & DeWitt, eq. 5.6: theta = exp(-t/tau); a 4 mm pane of 2500 kg/m3 and 750 J/(kg K) with 7.7 W/(m2 K) on
// both faces has tau = 487 s.
TEST_CASE("a pane that is lumped falls by 1/e in its time constant, with an error of second order in the step")
{
    const double tau_s = 0.004 * 2500.0 * 750.0 / 15.4;
    const double exact = 20.0 + 20.0 * std::exp(-487.0 / tau_s);
    CHECK(tau_s == Approx(487.0).margin(0.1));
    CHECK(after_lumped(64) == Approx(exact).margin(2e-4));
    const double coarse = std::abs(after_lumped(8) - exact);
    const double fine = std::abs(after_lumped(16) - exact);
    CHECK(std::log2(coarse / fine) == Approx(2.0).margin(0.2));
}

// Incropera & DeWitt, Table 5.1 and its whole series: Bi = 1, Fo = 0.1 to 1, centre and surface.
TEST_CASE("a plane wall with convection cools as its series says")
{
    struct Row {
        double fourier = 0.0;
        double centre = 0.0;
        double surface = 0.0;
    };
    const std::vector<Row> table{
        {0.1, 0.99311, 0.72358}, {0.2, 0.95064, 0.64339}, {0.5, 0.77253, 0.50452}, {1.0, 0.53386, 0.34818}};
    // Half of the wall: its middle is the adiabatic bottom.
    const test::Slab slab{.bricks = 100,
                          .depth_m = 0.05,
                          .conductivity_w_mk = 0.3,
                          .capacity_j_m3k = 1e6,
                          .film_w_m2k = 6.0,
                          .start_c = 1.0,
                          .room_c = 0.0};
    const double diffusivity_m2_s = 0.3 / 1e6;
    Stepper stepper = test::stepper_of(slab);
    double fourier = 0.0;
    for (const Row& row : table) {
        const int steps = 40;
        const double hours = (row.fourier - fourier) * 0.05 * 0.05 / diffusivity_m2_s / 3600.0;
        for (int i = 0; i < steps; ++i)
            REQUIRE(stepper.advance(hours / steps, test::steady_room, {}));
        fourier = row.fourier;
        INFO("Fo " << row.fourier);
        CHECK(stepper.values()[0] == Approx(row.centre).margin(3e-4));
        // The film and half a brick lie between the topmost brick's middle and the room.
        const double through = 6.0 * 0.5 * 0.0005 / 0.3;
        CHECK(stepper.values()[99] / (1.0 + through) == Approx(row.surface).margin(3e-4));
    }
}

// Incropera & DeWitt, eq. 5.60, at the surface: h sqrt(alpha t)/k = 1 gives 0.5724.
TEST_CASE("the surface of a deep body warms as the error function says")
{
    const test::Slab slab{.bricks = 200,
                          .depth_m = 0.6,
                          .conductivity_w_mk = 0.3,
                          .capacity_j_m3k = 1.5e6,
                          .film_w_m2k = 10.0,
                          .start_c = 0.0,
                          .room_c = 1.0};
    const double diffusivity_m2_s = 0.3 / 1.5e6;
    const double seconds = 0.3 * 0.3 / (10.0 * 10.0) / diffusivity_m2_s;
    Stepper stepper = test::stepper_of(slab);
    for (int i = 0; i < 100; ++i)
        REQUIRE(stepper.advance(seconds / 3600.0 / 100, test::steady_room, {}));
    const double brick = 10.0 * 0.5 * 0.003 / 0.3;
    const double surface = (stepper.values()[199] + brick) / (1.0 + brick);
    CHECK(surface == Approx(0.5724).margin(3e-3));
}

// ISO 13786, periodic penetration depth sqrt(lambda P / (pi rho c)): at that depth a day's swing is 1/e of the
// surface's and comes 1 rad, 3.82 h, later.
TEST_CASE("a daily swing dies away within its penetration depth")
{
    const double period_h = 24.0;
    const double depth_m = std::sqrt(0.27 / 2.13e6 * period_h * 3600.0 / std::numbers::pi);
    const std::size_t per_depth = 20;
    const test::Slab slab{.bricks = 7 * per_depth,
                          .depth_m = 7.0 * depth_m,
                          .conductivity_w_mk = 0.27,
                          .capacity_j_m3k = 2.13e6,
                          .film_w_m2k = 1e6,
                          .start_c = 20.0,
                          .room_c = 20.0};
    Stepper stepper = test::stepper_of(slab);
    const double step_h = 0.25;
    double hour = 0.0;
    double highest_c = -INFINITY;
    double at_h = 0.0;
    for (; hour < 15.0 * period_h; hour += step_h) {
        const auto swing = [&](Model& model, double share) {
            model.room.celsius = 20.0 + 5.0 * std::sin(2.0 * std::numbers::pi * (hour + share * step_h) / period_h);
            return true;
        };
        REQUIRE(stepper.advance(step_h, swing, {}));
        const std::size_t top = 7 * per_depth - 1;
        const double there_c = 0.5 * (stepper.values()[top - per_depth] + stepper.values()[top - per_depth + 1]);
        if (hour > 14.0 * period_h && there_c > highest_c) {
            highest_c = there_c;
            at_h = hour + step_h;
        }
    }
    CHECK(highest_c - 20.0 == Approx(5.0 / std::numbers::e).epsilon(0.01));
    CHECK(std::fmod(at_h, period_h) - 6.0 == Approx(3.82).margin(step_h));
}
