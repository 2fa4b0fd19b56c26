#include <cmath>
#include <numbers>

#include "tests/catch.hpp"

#include "core/climate/openings.hpp"

using namespace loam::climate;

namespace {
double per_hour(double m3_s)
{
    return 3600.0 * m3_s;
}
} // namespace

// Source: Epstein 1988 / Cooper (NIST 1989), Q = 0.055 sqrt(g' D^5), worked by an independent script.
TEST_CASE("an open lid exchanges what the published coefficient gives")
{
    const double ratio_4k = 0.1321 / 9.81;
    CHECK(per_hour(*open_lid_m3_s(0.20, ratio_4k)) == Approx(1.287).epsilon(2e-3));
    CHECK(per_hour(*open_lid_m3_s(0.5143, ratio_4k)) == Approx(13.648).epsilon(2e-3));
    CHECK(per_hour(*open_lid_m3_s(0.5143, 0.2623 / 9.81)) == Approx(19.237).epsilon(2e-3));
    CHECK_FALSE(open_lid_m3_s(0.5, -0.01));
}

// Source: Bailey et al. 2003 (constants from memory), worked by an independent script at nu of 22 degC; ours is taken
// at 25 degC, hence 4 %.
TEST_CASE("a screen loses what Bailey's formula gives")
{
    CHECK(*screen_loss(0.66, 0.28e-3, 0.02) == Approx(69.2).epsilon(0.04));
    CHECK(*screen_loss(0.66, 0.28e-3, 0.10) == Approx(14.9).epsilon(0.04));
    CHECK(*screen_loss(0.64, 0.6e-3, 0.05) == Approx(15.6).epsilon(0.04));
    CHECK(*screen_loss(0.81, 0.64e-3, 0.20) == Approx(1.59).epsilon(0.04));
    CHECK_FALSE(screen_loss(1.0, 0.28e-3, 0.1));
}

// Our own combination, without a check outside: what is tested is that the flow solves the equation it claims to.
TEST_CASE("a meshed lid exchanges what its head loss and the screen's leave together")
{
    const Lid lid{.area_m2 = 0.27, .hydraulic_diameter_m = 0.5143, .open_fraction = 0.64};
    for (const double ratio : {0.0663 / 9.81, 0.1321 / 9.81, 0.2623 / 9.81}) {
        const double flow = *lid_exchange_m3_s(lid, ratio);
        const double open = *open_lid_m3_s(0.5143, ratio);
        const double loss = *screen_loss(0.64, lid.wire_m, 2.0 * flow / lid.area_m2);
        CHECK(flow == Approx(open * std::sqrt(102.0 / (102.0 + 2.0 * loss))).epsilon(1e-9));
        CHECK(flow < open);
    }
    // Source of K0 = 102: v = 2 Q / A and head g' h with the published 0.055 over a round opening of diameter D:
    // (2 * 0.055 / (pi / 4))^-2 / 0.5 = 102.
    CHECK(2.0 / std::pow(2.0 * 0.055 / (std::numbers::pi / 4.0), 2.0) == Approx(102.0).epsilon(1e-3));
}

// Source: stack flow with Cd 0.61 and dT over the mean absolute temperature, worked by an independent script.
TEST_CASE("two vents draw what the stack formula gives")
{
    const double ratio = 4.0 / 297.15;
    const auto flow = [ratio](double low_m2, double high_m2) {
        return per_hour(stack_coefficient({{low_m2, 0.0}, {high_m2, 0.4}}) * std::sqrt(ratio));
    };
    CHECK(flow(0.002, 0.002) == Approx(1.009).epsilon(2e-3));
    CHECK(flow(0.005, 0.005) == Approx(2.524).epsilon(2e-3));
    CHECK(flow(0.002, 0.020) == Approx(1.420).epsilon(2e-3));
    CHECK(stack_coefficient({{0.01, 0.2}}) == 0.0);
    CHECK(stack_coefficient({{0.01, 0.2}, {0.01, 0.2}}) == Approx(0.0).margin(1e-9));
}

// Source: Brown & Solvason 1962 as in the Modelica Buildings library: w h = A, here a square.
TEST_CASE("one vent exchanges like a doorway")
{
    CHECK(doorway_coefficient(0.04) == Approx(0.61 / 3.0 * 0.04 * std::sqrt(9.80665 * 0.2)));
}
