#include <cmath>
#include <numbers>

#include "tests/catch.hpp"

#include "core/climate/beam.hpp"
#include "core/climate/cast.hpp"
#include "tests/core/climate/boxes.hpp"

using namespace loam::climate;

// Source: n = -ln 2 / ln cos(B/2), I0 = (n + 1) / 2 pi, share in the width 1 - cos^(n + 1), by an independent script.
TEST_CASE("beams have the table's exponent, axis intensity and share within their width")
{
    struct Row {
        double width_deg, exponent, axis, within;
    };
    for (const Row& row : {Row{24, 31.37, 5.152, 0.511}, Row{60, 4.819, 0.9261, 0.567}, Row{90, 2.0, 0.4775, 0.646},
                           Row{120, 1.0, 0.3183, 0.750}}) {
        const double n = *beam_exponent(row.width_deg);
        CHECK(n == Approx(row.exponent).epsilon(1e-3));
        CHECK(beam_intensity_per_sr(n, 1.0) == Approx(row.axis).epsilon(1e-3));
        const double edge = std::cos(0.5 * row.width_deg * std::numbers::pi / 180.0);
        CHECK(beam_share_within(n, edge) == Approx(row.within).epsilon(2e-3));
    }
    CHECK_FALSE(beam_exponent(0.0));
    CHECK_FALSE(beam_exponent(180.0));
}

// Source: point-source formula: 60 W of beam in 60 degrees, 0.30 m on the axis: 617 W/m2; in 30 degrees 2227.
TEST_CASE("a beam's axis irradiance is intensity over distance squared")
{
    CHECK(60.0 * beam_irradiance_per_m2(*beam_exponent(60.0), {0, 0, 0.3}, {}) == Approx(617.0).epsilon(2e-3));
    CHECK(60.0 * beam_irradiance_per_m2(*beam_exponent(30.0), {0, 0, 0.3}, {}) == Approx(2227.0).epsilon(2e-3));
    CHECK(beam_irradiance_per_m2(2.0, {0, 0, -0.1}, {}) == 0.0);
}

TEST_CASE("all of an inside lamp's beam arrives, and no more of an outside one than enters")
{
    Box box = test::furnished_box();
    const auto geometry = lay_out(box, {});
    const auto arrived = [](const Cast& cast) {
        double sum = 0.0;
        for (std::size_t r = 0; r < cast.region_share.size(); ++r) {
            for (const double share : cast.column[r])
                sum += share;
            for (const double share : cast.patch[r])
                sum += share;
        }
        return sum;
    };
    Lamp inside = box.lamps[0];
    inside.above_top = false;
    inside.at.z_m = 0.42;
    CHECK(arrived(cast_beam(box, *geometry, inside, 4.8)) == Approx(1.0).epsilon(1e-9));
    Lamp high = box.lamps[0];
    high.at.z_m = 1.5; // far above, most of the beam misses the box
    const Cast cast = cast_beam(box, *geometry, high, 1.0);
    CHECK(arrived(cast) == Approx(cast.region_share[0] + cast.region_share[1]).epsilon(1e-9));
    CHECK(arrived(cast) < 0.3);
}

// Source: view factor from a small flat Lambertian source to a parallel rectangle, its corner on the axis (Howell
// B-4, from memory): F = [A atan B + C atan D] / 2 pi with A = X / sqrt(1 + X2), B = Y / sqrt(1 + X2) and so on.
TEST_CASE("the share of a Lambertian beam that enters the top is its view factor")
{
    Box box = test::glass_box();
    Lamp lamp = test::flood(100.0);
    const auto geometry = lay_out(box, {});
    lamp.at = {0.25, 0.20, box.height_m + 0.10};
    const auto corner = [](double a, double b) {
        const double x = a / 0.10;
        const double y = b / 0.10;
        const double p = std::sqrt(1.0 + x * x);
        const double q = std::sqrt(1.0 + y * y);
        return (x / p * std::atan(y / p) + y / q * std::atan(x / q)) / (2.0 * std::numbers::pi);
    };
    const double right = box.length_m - 0.25;
    const double back = box.width_m - 0.20;
    const double exact = corner(0.25, 0.20) + corner(right, 0.20) + corner(0.25, back) + corner(right, back);
    CHECK(cast_beam(box, *geometry, lamp, 1.0).region_share[0] == Approx(exact).epsilon(1e-3));
}
