#include "tests/catch.hpp"

#include <cmath>
#include <numbers>

#include "core/substrate/pane.hpp"

using namespace loam::substrate;

namespace {

// Navier's double sine series for a thin, evenly loaded, simply supported plate (Timoshenko & Woinowsky-Krieger, Theory
// of Plates and Shells, article 30, from memory): another way to the same bending. Poisson's ratio 0.3.
PaneBending navier(double a_m, double b_m, double t_m, double q_pa, double e_pa)
{
    const double pi = std::numbers::pi;
    const double nu = 0.3;
    const double stiffness = e_pa * t_m * t_m * t_m / (12.0 * (1.0 - nu * nu));
    double w = 0.0;
    double moment = 0.0;
    for (int m = 1; m < 400; m += 2) {
        for (int n = 1; n < 400; n += 2) {
            const double u = m / a_m;
            const double v = n / b_m;
            const double sign = ((m + n) / 2) % 2 == 0 ? -1.0 : 1.0;
            const double term = sign * 16.0 * q_pa / (m * n * std::pow(u * u + v * v, 2.0));
            w += term / (std::pow(pi, 6.0) * stiffness);
            moment += term * (v * v + nu * u * u) / std::pow(pi, 4.0);
        }
    }
    return {6.0 * moment / (t_m * t_m), w};
}

} // namespace

TEST_CASE("Panes bend as the worked examples do")
{
    // Navier series at 1 kPa, E = 70 GPa (derived): 1 x 1 m, 10 mm; 0.6 x 0.45 m, 6 mm; 1.0 x 0.5 m, 6 mm.
    const double rows[][5] = {{1.0, 1.0, 0.010, 2.874e6, 0.634e-3},
                              {0.6, 0.45, 0.006, 2.413e6, 0.196e-3},
                              {1.0, 0.5, 0.006, 4.237e6, 0.459e-3}};
    for (const auto& row : rows) {
        const auto result = bending({row[0], row[1], row[2], 1000.0});
        REQUIRE(result);
        CHECK(result->stress_pa == Approx(row[3]).epsilon(0.004));
        CHECK(result->deflection_m == Approx(row[4]).epsilon(0.006));
    }
}

TEST_CASE("At every side ratio the table agrees with the plate's own series")
{
    for (double a_m = 0.5; a_m <= 3.0; a_m += 0.1) {
        CAPTURE(a_m);
        const auto result = bending({a_m, 0.5, 0.010, 200.0});
        const PaneBending series = navier(a_m, 0.5, 0.010, 200.0, 70e9);
        REQUIRE(result);
        CHECK(result->stress_pa == Approx(series.stress_pa).epsilon(0.012));
        CHECK(result->deflection_m == Approx(series.deflection_m).epsilon(0.015));
    }
}

TEST_CASE("A pane may be named by either side first")
{
    CHECK(bending({0.6, 0.45, 0.006, 1000.0}) == bending({0.45, 0.6, 0.006, 1000.0}));
}

TEST_CASE("A very long pane bends as a strip")
{
    // Beam formula for a strip: sigma = 6 q b^2 / (8 t^2) = 0.75 q b^2/t^2.
    CHECK(bending({500.0, 0.4, 0.006, 500.0})->stress_pa ==
          Approx(0.75 * 500.0 * std::pow(0.4 / 0.006, 2)).epsilon(1e-3));
}

TEST_CASE("Where the pane is no thin plate or bends far, the formula does not hold")
{
    CHECK_FALSE(bending({0.6, 0.05, 0.006, 1000.0})); // thick
    CHECK_FALSE(bending({1.2, 0.6, 0.003, 2000.0}));  // bends more than half its thickness
    // 1.2 x 0.6 m of 3 mm: w = 0.111 q b^4 / (E t^3) passes 1.5 mm at 197 Pa, by hand.
    CHECK(bending({1.2, 0.6, 0.003, 190.0}));
    CHECK_FALSE(bending({1.2, 0.6, 0.003, 205.0}));
    CHECK_FALSE(bending({0.0, 0.5, 0.006, 1000.0}));
    CHECK_FALSE(bending({0.6, 0.5, 0.0, 1000.0}));
}
