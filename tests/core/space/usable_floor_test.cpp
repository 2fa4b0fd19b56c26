#include "tests/catch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/space/usable_floor.hpp"

using namespace loam::space;

namespace {

constexpr FloorSize table = {1.2, 0.6};

// Counts sample points under any footprint: another way to the same area, coarse but independent.
double area_by_counting_m2(const FloorSize& floor, const std::vector<Footprint>& blocked, int columns)
{
    const double step_m = floor.length_m / columns;
    const int rows = static_cast<int>(std::round(floor.width_m / step_m));
    int covered = 0;
    for (int i = 0; i < columns; ++i) {
        for (int j = 0; j < rows; ++j) {
            const double x_m = (i + 0.5) * step_m;
            const double y_m = (j + 0.5) * step_m;
            covered += std::any_of(blocked.begin(), blocked.end(), [&](const Footprint& footprint) {
                const double turn = footprint.rotation_deg * std::numbers::pi / 180.0;
                const double dx_m = x_m - footprint.x_m - footprint.length_m / 2.0;
                const double dy_m = y_m - footprint.y_m - footprint.width_m / 2.0;
                return std::abs(dx_m * std::cos(turn) + dy_m * std::sin(turn)) <= footprint.length_m / 2.0 &&
                       std::abs(-dx_m * std::sin(turn) + dy_m * std::cos(turn)) <= footprint.width_m / 2.0;
            });
        }
    }
    return covered * step_m * step_m;
}

} // namespace

TEST_CASE("Separate fittings take the sum of their areas")
{
    CHECK(covered_area_m2(table, {{0.1, 0.1, 0.3, 0.2}, {0.8, 0.3, 0.2, 0.2}}) == Approx(0.10).epsilon(1e-12));
    CHECK(usable_area_m2(table, {{0.1, 0.1, 0.3, 0.2}, {0.8, 0.3, 0.2, 0.2}}) == Approx(0.62).epsilon(1e-12));
    CHECK(usable_area_m2(table, {}) == Approx(0.72));
}

TEST_CASE("What lies under two fittings counts once")
{
    const Footprint hide = {0.2, 0.1, 0.3, 0.3};
    CHECK(covered_area_m2(table, {hide, hide}) == Approx(0.09).epsilon(1e-12));
    // Overlap 0.1 x 0.1, by hand: 0.09 + 0.09 - 0.01.
    CHECK(covered_area_m2(table, {hide, {0.4, 0.3, 0.3, 0.3}}) == Approx(0.17).epsilon(1e-12));
    // Three squares, each 0.2 wide, stepped by 0.1 along x: 0.4 x 0.2.
    CHECK(covered_area_m2(table, {{0.1, 0.1, 0.2, 0.2}, {0.2, 0.1, 0.2, 0.2}, {0.3, 0.1, 0.2, 0.2}}) ==
          Approx(0.08).epsilon(1e-12));
}

TEST_CASE("A square over the same square turned by an eighth covers an eight-pointed star")
{
    // By hand: the overlap of two unit squares at 45 degrees is a regular octagon of inradius 1/2,
    // 2 (sqrt 2 - 1) = 0.828427; the union is 2 - that.
    const double side_m = 0.4;
    const double star = 2.0 - 2.0 * (std::numbers::sqrt2 - 1.0);
    const std::vector<Footprint> both = {{0.3, 0.1, side_m, side_m}, {0.3, 0.1, side_m, side_m, 45.0}};
    CHECK(covered_area_m2(table, both) == Approx(star * side_m * side_m).epsilon(1e-12));
}

TEST_CASE("A turned fitting takes the area it has, and what reaches past the floor does not count")
{
    CHECK(covered_area_m2(table, {{0.4, 0.2, 0.3, 0.1, 30.0}}) == Approx(0.03).epsilon(1e-12));
    CHECK(covered_area_m2(table, {{-0.1, 0.1, 0.2, 0.2}}) == Approx(0.02).epsilon(1e-12));
    CHECK(covered_area_m2(table, {{2.0, 0.1, 0.2, 0.2}}) == 0.0);
    // A square on its corner, its centre on the floor's corner: a quarter of it is inside.
    CHECK(covered_area_m2(table, {{-0.1, -0.1, 0.2, 0.2, 45.0}}) == Approx(0.01).epsilon(1e-12));
    CHECK(usable_area_m2(table, {{-1.0, -1.0, 4.0, 4.0, 20.0}}) == Approx(0.0).margin(1e-12));
}

TEST_CASE("A full turn, a mirror image and another order change nothing")
{
    const std::vector<Footprint> fittings = {{0.1, 0.1, 0.3, 0.2, 20.0},
                                             {0.3, 0.2, 0.3, 0.1, -35.0},
                                             {0.9, 0.0, 0.3, 0.25, 0.0},
                                             {0.85, 0.1, 0.2, 0.2, 60.0}};
    const double area_m2 = covered_area_m2(table, fittings);
    std::vector<Footprint> mirrored;
    std::vector<Footprint> turned;
    for (const Footprint& one : fittings) {
        mirrored.push_back(
            {table.length_m - one.x_m - one.length_m, one.y_m, one.length_m, one.width_m, -one.rotation_deg});
        turned.insert(turned.begin(), {one.x_m, one.y_m, one.length_m, one.width_m, one.rotation_deg + 180.0});
    }
    CHECK(covered_area_m2(table, mirrored) == Approx(area_m2).epsilon(1e-12));
    CHECK(covered_area_m2(table, turned) == Approx(area_m2).epsilon(1e-12));
}

TEST_CASE("The exact area agrees with counting points for many fittings in disorder")
{
    std::vector<Footprint> fittings;
    unsigned state = 12345; // a fixed sequence, Numerical Recipes' quick generator
    const auto next = [&] {
        state = state * 1664525u + 1013904223u;
        return (state >> 8) / 16777216.0;
    };
    for (int count = 1; count <= 12; ++count) {
        fittings.push_back(
            {1.1 * next() - 0.1, 0.5 * next() - 0.1, 0.05 + 0.3 * next(), 0.05 + 0.2 * next(), 360.0 * next()});
        CAPTURE(count);
        // 1 mm squares: an outline of about 1 m per fitting errs by far less than its length times 1 mm.
        CHECK(covered_area_m2(table, fittings) ==
              Approx(area_by_counting_m2(table, fittings, 1200)).margin(2e-4 * count));
    }
}

TEST_CASE("An empty floor turns a circle as wide as its short side")
{
    CHECK(turning_circle(table, {}).diameter_m == Approx(0.6).margin(1e-3));
    CHECK(turning_circle({0.4, 0.9}, {}).diameter_m == Approx(0.4).margin(1e-3));
}

TEST_CASE("A fitting across the floor leaves the wider of the two rooms beside it")
{
    CHECK(turning_circle(table, {{0.4, 0.0, 0.1, 0.6}}).diameter_m == Approx(0.6).margin(1e-3)); // 0.7 x 0.6 is left
    CHECK(turning_circle(table, {{0.4, 0.0, 0.5, 0.6}}).diameter_m == Approx(0.4).margin(1e-3));
}

TEST_CASE("A square post in the middle of a square floor leaves the circle between it and a corner")
{
    // By hand: centre (c, c) from the corner, touching two walls and the post's corner at (0.4, 0.4):
    // c = (0.4 - c) sqrt 2, so c = 0.4 sqrt 2 / (1 + sqrt 2).
    const double radius_m = 0.4 * std::numbers::sqrt2 / (1.0 + std::numbers::sqrt2);
    const ClearCircle circle = turning_circle({1.0, 1.0}, {{0.4, 0.4, 0.2, 0.2}});
    CHECK(circle.diameter_m == Approx(2.0 * radius_m).margin(1e-3));
    CHECK(circle.diameter_m <= 2.0 * radius_m + 1e-9);
}

TEST_CASE("The circle found is clear of walls and fittings, and another fitting never widens it")
{
    std::vector<Footprint> fittings;
    double before_m = 0.6 + 1e-3;
    for (const Footprint& one : {Footprint{0.1, 0.1, 0.3, 0.2, 20.0}, Footprint{0.6, 0.2, 0.2, 0.2, 45.0},
                                 Footprint{0.9, 0.4, 0.3, 0.2}, Footprint{0.5, 0.0, 0.1, 0.1}}) {
        fittings.push_back(one);
        const ClearCircle circle = turning_circle(table, fittings);
        CHECK(circle.diameter_m <= before_m + 1e-3);
        CHECK(circle.x_m >= circle.diameter_m / 2.0 - 1e-9);
        CHECK(circle.y_m >= circle.diameter_m / 2.0 - 1e-9);
        // Points of the rim are under nothing: adding a tiny post there takes its whole area.
        for (int i = 0; i < 36; ++i) {
            const double angle = i * std::numbers::pi / 18.0;
            const double x_m = circle.x_m + 0.499 * circle.diameter_m * std::cos(angle);
            const double y_m = circle.y_m + 0.499 * circle.diameter_m * std::sin(angle);
            std::vector<Footprint> with_post = fittings;
            with_post.push_back({x_m - 1e-5, y_m - 1e-5, 2e-5, 2e-5});
            CHECK(covered_area_m2(table, with_post) - covered_area_m2(table, fittings) == Approx(4e-10).epsilon(1e-3));
        }
        before_m = circle.diameter_m;
    }
}

TEST_CASE("Where nothing is free there is nowhere to turn")
{
    CHECK(turning_circle(table, {{-0.1, -0.1, 1.4, 0.8}}).diameter_m == 0.0);
    CHECK(turning_circle({0.0, 0.6}, {}).diameter_m == 0.0);
}
