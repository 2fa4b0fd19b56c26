#include "tests/catch.hpp"

#include <cmath>
#include <numbers>

#include "core/light/prepared_lamp.hpp"
#include "core/light/safe_distance.hpp"

using namespace loam;
using namespace loam::light;

namespace {

UvLamp lamp_with(std::vector<UvPoint> table, double length_m = 0.0)
{
    UvLamp lamp;
    lamp.table = std::move(table);
    lamp.length_m = length_m;
    lamp.reading_factor = exactly(1.0);
    return lamp;
}

double likely_below(const UvLamp& lamp, double distance_m)
{
    const auto uvi = Readings(lamp).below(distance_m);
    REQUIRE(uvi);
    return uvi->likely;
}

// E = Phi (2a + sin 2a) / (2 pi^2 D L), a = atan(L / 2D), for 10 W and 0.55 m: Keitz 1971 (from memory), derived.
double keitz(double d_m)
{
    const double a = std::atan(0.55 / (2.0 * d_m));
    return 10.0 * (2.0 * a + std::sin(2.0 * a)) / (2.0 * std::numbers::pi * std::numbers::pi * d_m * 0.55);
}

} // namespace

TEST_CASE("Between two points of its table a lamp follows their power law")
{
    const UvLamp lamp = lamp_with({{0.4, 1.0}, {0.2, 4.0}}); // any order
    CHECK(likely_below(lamp, 0.2) == Approx(4.0));
    CHECK(likely_below(lamp, 0.3) == Approx(1.0 * (0.4 / 0.3) * (0.4 / 0.3)));
    CHECK(likely_below(lamp, 0.4) == Approx(1.0));
}

TEST_CASE("A tube's table of four points carries its changing exponent")
{
    const UvLamp tube = lamp_with({{0.25, 9.806}, {0.30, 7.615}, {0.40, 4.924}, {0.50, 3.408}});
    CHECK(keitz(0.30) == Approx(7.615).margin(6e-4));
    for (int cm = 25; cm <= 50; ++cm) {
        CHECK(likely_below(tube, cm / 100.0) == Approx(keitz(cm / 100.0)).epsilon(0.006));
    }
}

TEST_CASE("From one reading a bare tube follows the line source")
{
    const UvLamp tube = lamp_with({{0.30, 7.615}}, 0.55);
    CHECK(likely_below(tube, 0.25) == Approx(9.806).epsilon(2e-4));
    CHECK(likely_below(tube, 0.40) == Approx(4.924).epsilon(2e-4));
    CHECK(likely_below(tube, 0.50) == Approx(3.408).epsilon(2e-4));
    const auto exact = Readings(tube).below(0.50);
    CHECK(exact->low == Approx(exact->high)); // no reflector, no spread
}

TEST_CASE("From one reading a point lamp follows the inverse square")
{
    const UvLamp lamp = lamp_with({{0.4, 1.0}});
    CHECK(likely_below(lamp, 0.2) == Approx(4.0));
    CHECK(likely_below(lamp, 0.8) == Approx(0.25));
}

TEST_CASE("Far from any lamp its light falls as the square, whatever its length and reflector")
{
    for (const double length_m : {0.0, 0.1, 1.2}) {
        UvLamp lamp = lamp_with({{100.0, 1.0}}, length_m);
        lamp.light_behind_m = {0.0, 0.03, 0.1};
        const auto uvi = Readings(lamp).below(200.0);
        REQUIRE(uvi);
        CHECK(uvi->low == Approx(0.25).epsilon(2e-3));
        CHECK(uvi->high == Approx(0.25).epsilon(2e-3));
    }
}

TEST_CASE("Close to a long tube its light falls as the distance")
{
    CHECK(likely_below(lamp_with({{0.02, 1.0}}, 4.0), 0.04) == Approx(0.5).epsilon(1e-3)); // Keitz: a goes to pi / 2
}

TEST_CASE("A reflector slows the fall, and widens what one reading says away from where it was taken")
{
    UvLamp lamp = lamp_with({{0.3, 4.0}});
    lamp.light_behind_m = {0.0, 0.03, 0.1};
    const Readings readings(lamp);
    CHECK(*readings.below(0.3) == exactly(4.0));
    const Range nearer = *readings.below(0.2);
    CHECK(nearer.low == Approx(4.0 * 0.4 * 0.4 / (0.3 * 0.3))); // by hand: 0.4 and 0.3 m from the light
    CHECK(nearer.likely == Approx(4.0 * 0.33 * 0.33 / (0.23 * 0.23)));
    CHECK(nearer.high == Approx(9.0));
    const Range farther = *readings.below(0.5);
    CHECK(farther.low == Approx(4.0 * 0.09 / 0.25));
    CHECK(farther.high == Approx(4.0 * 0.16 / 0.36));
    lamp.table.push_back({0.5, 1.6});
    CHECK(Readings(lamp).below(0.4)->low == Readings(lamp).below(0.4)->high); // a table knows its fall
}

TEST_CASE("One reading holds from half its distance to twice it and nowhere else")
{
    const Readings readings(lamp_with({{0.3, 2.5}}));
    CHECK(*readings.reach() == Reach{0.15, 0.6});
    CHECK(readings.below(0.15));
    CHECK(readings.below(0.6));
    CHECK_FALSE(readings.below(0.149));
    CHECK_FALSE(readings.below(0.601));
    CHECK_FALSE(readings.below_at_most(0.149));
    CHECK(*readings.below_at_most(5.0) == Approx(2.5 / 4.0));
}

TEST_CASE("Outside its table, and from a table that is none, a lamp's UV index is not known")
{
    const auto below = [](std::vector<UvPoint> table, double distance_m) {
        return Readings(lamp_with(std::move(table))).below(distance_m);
    };
    const std::vector<UvPoint> table = {{0.2, 4.0}, {0.4, 1.0}};
    CHECK_FALSE(below(table, 0.19));
    CHECK_FALSE(below(table, 0.41));
    CHECK_FALSE(below({}, 0.3));
    CHECK_FALSE(below({{0.3, 2.0}, {0.3, 1.0}}, 0.3));
    CHECK_FALSE(below({{0.2, 4.0}, {0.4, -1.0}}, 0.2));
    CHECK_FALSE(below({{0.0, 4.0}, {0.4, 1.0}}, 0.3));
    CHECK_FALSE(below(table, std::nan("")));
}

TEST_CASE("A reading of zero shortens the table instead of spoiling it")
{
    const Readings readings(lamp_with({{0.2, 4.0}, {0.4, 1.0}, {0.8, 0.0}}));
    CHECK(readings.below(0.3)->likely == Approx(16.0 / 9.0));
    CHECK_FALSE(readings.below(0.6)); // somewhere between 1 and what the meter can't show
    CHECK(*readings.below_at_most(0.6) == Approx(1.0));
    CHECK_FALSE(readings.below_at_most(0.1));
    CHECK_FALSE(Readings(lamp_with({{0.8, 0.0}})).below_at_most(0.9));
}

TEST_CASE("The safe distance is the nearest at which the upper end keeps the limit")
{
    UvLamp lamp = lamp_with({{0.1, 16.0}, {0.4, 1.0}}); // 0.16 / d^2
    lamp.reading_factor = {0.9, 1.0, 1.1};
    const PreparedLamp ready(lamp, {});
    CHECK(*safe_distance_m(ready, 4.4) == Approx(0.2).margin(2e-4)); // 4.4 / 1.1 = 4 = 0.16 / 0.2^2, by hand
    CHECK(ready.uvi_below(*safe_distance_m(ready, 4.4))->high <= 4.4);
    CHECK(*safe_distance_m(ready, 20.0) == Approx(0.1)); // nearer nothing is known
    CHECK_FALSE(safe_distance_m(ready, 1.0));            // above it as far as the table reaches
    CHECK_FALSE(safe_distance_m(PreparedLamp(lamp_with({}), {}), 5.0));
}

TEST_CASE("Behind a mesh the safe distance is shorter")
{
    UvLamp lamp = lamp_with({{0.1, 16.0}, {0.4, 1.0}});
    lamp.above_top = true;
    const Top mesh = {.kind = TopKind::mesh, .height_m = 0.5, .open_fraction = exactly(0.64), .covers = {}};
    CHECK(*safe_distance_m(PreparedLamp(lamp, mesh), 4.0) == Approx(0.16).margin(2e-4)); // by hand: 0.2 * sqrt 0.64
}
