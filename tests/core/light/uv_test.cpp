#include "tests/catch.hpp"

#include <cmath>
#include <numbers>

#include "core/light/prepared_lamp.hpp"

using namespace loam;
using namespace loam::light;

namespace {

// A point lamp: 1/d^2 exactly, UVI 1 at 0.4 m; read without error.
UvLamp point_lamp()
{
    UvLamp lamp;
    lamp.id = "lamp";
    lamp.at = {0.3, 0.3, 0.6};
    lamp.table = {{0.2, 4.0}, {0.4, 1.0}, {0.5, 0.64}};
    lamp.beam_deg = exactly(60.0);
    lamp.reading_factor = exactly(1.0);
    return lamp;
}

// A bare tube of 0.55 m: W/m2 at a distance for 10 W, from the line formula (derived), taken as the table.
UvLamp tube()
{
    UvLamp lamp = point_lamp();
    lamp.length_m = 0.55;
    lamp.table = {{0.25, 9.806}, {0.30, 7.615}, {0.40, 4.924}, {0.50, 3.408}};
    return lamp;
}

double likely(const std::optional<Range>& uvi)
{
    REQUIRE(uvi);
    return uvi->likely;
}

// Light of a diffuse line on a receptor that faces its axis, by adding up 20,000 short pieces.
double by_adding_up(double tube_m, double along_m, double axis_m)
{
    const int pieces = 20000;
    double sum = 0.0;
    for (int i = 0; i < pieces; ++i) {
        const double u_m = -tube_m / 2.0 + (i + 0.5) * tube_m / pieces - along_m;
        const double r2 = axis_m * axis_m + u_m * u_m;
        sum += axis_m * axis_m / (r2 * r2) * tube_m / pieces; // sine at the tube, cosine at the receptor, 1/r^2
    }
    return sum;
}

} // namespace

TEST_CASE("At half its beam a point lamp gives half of what it gives straight on at the same distance")
{
    const UvLamp lamp = point_lamp();
    const double angle = 30.0 * std::numbers::pi / 180.0; // half of 60 degrees
    const Point aside = {0.3 + 0.4 * std::sin(angle), 0.3, 0.6 - 0.4 * std::cos(angle)};
    CHECK(likely(uvi_from(lamp, {}, {0.3, 0.3, 0.2})) == Approx(1.0));
    CHECK(likely(uvi_from(lamp, {}, aside)) == Approx(0.5));
}

TEST_CASE("A beam of 120 degrees falls off as the cosine")
{
    // Lambert's law: exponent 1 at 120 degrees (derived table of cosine-power beams).
    UvLamp lamp = point_lamp();
    lamp.beam_deg = exactly(120.0);
    const double angle = 40.0 * std::numbers::pi / 180.0;
    const Point aside = {0.3, 0.3 - 0.4 * std::sin(angle), 0.6 - 0.4 * std::cos(angle)};
    CHECK(likely(uvi_from(lamp, {}, aside)) == Approx(std::cos(angle)));
}

TEST_CASE("Where the beam is not known only points straight below are known")
{
    UvLamp lamp = point_lamp();
    lamp.beam_deg.reset();
    CHECK(uvi_from(lamp, {}, {0.3, 0.3, 0.2}));
    CHECK(uvi_from(lamp, {}, {0.3 + 0.4 * std::tan(9.9 * std::numbers::pi / 180.0), 0.3, 0.2}));
    CHECK_FALSE(uvi_from(lamp, {}, {0.3 + 0.4 * std::tan(10.1 * std::numbers::pi / 180.0), 0.3, 0.2}));
    CHECK_FALSE(uvi_from(lamp, {}, {0.3, 0.3, 0.6})); // at the face
    CHECK_FALSE(uvi_from(lamp, {}, {0.3, 0.3, 0.9})); // above it
}

TEST_CASE("Along a tube the light has the shape of a diffuse line")
{
    UvLamp lamp = tube();
    for (const double along_m : {0.0, 0.1, 0.275, 0.5}) {
        for (const double below_m : {0.25, 0.4}) {
            CAPTURE(along_m, below_m);
            const double shape = by_adding_up(0.55, along_m, below_m) / by_adding_up(0.55, 0.0, below_m);
            const Point point = {lamp.at.x_m + along_m, lamp.at.y_m, lamp.at.z_m - below_m};
            CHECK(likely(uvi_from(lamp, {}, point)) ==
                  Approx(Readings(lamp).below(below_m)->likely * shape).epsilon(1e-6));
        }
    }
}

// E = Phi (2a + sin 2a) / (2 pi^2 D L), a = atan(L / 2D), opposite the middle: Keitz 1971 (from memory). For Phi = 1 W
// and L = 1 m it gives 0.26048 W/m2 at D = 0.5 m and 0.08751 at 1 m. Pieces of a tube add up, so it also says what its
// end and a part of it give: opposite an end half of what the middle of a tube twice as long and as strong to the metre
// gives, which is a quarter of what this one gives opposite its middle at half the distance.
TEST_CASE("Under its end and past covers a tube gives what the published line formula says of its parts")
{
    UvLamp lamp = tube();
    lamp.length_m = 1.0;
    lamp.at = {0.6, 0.3, 1.1};
    lamp.table = {{0.5, 0.26048}, {1.0, 0.08751}};
    for (const double end_m : {-0.5, 0.5}) {
        CHECK(likely(uvi_from(lamp, {}, {0.6 + end_m, 0.3, 0.1})) == Approx(0.26048 / 4.0).epsilon(2e-4));
    }
    // Covers right below the face hide the outer quarters: half a tube of half the power, as a whole one to scale at
    // twice the distance, where each metre counts double.
    lamp.above_top = true;
    const Top top = {.kind = TopKind::mesh,
                     .height_m = 1.1 - 1e-9,
                     .open_fraction = exactly(1.0),
                     .covers = {{0.0, 0.0, 0.35, 0.6}, {0.85, 0.0, 0.35, 0.6}}};
    CHECK(likely(uvi_from(lamp, top, {0.6, 0.3, 0.6})) == Approx(2.0 * 0.08751).epsilon(2e-4));
}

TEST_CASE("Across a tube the distance is that from its axis, and the beam falls off")
{
    UvLamp lamp = tube();
    lamp.beam_deg = exactly(120.0); // Lambert: the cosine
    const Point aside = {lamp.at.x_m, lamp.at.y_m + 0.18, lamp.at.z_m - 0.24};
    CHECK(likely(uvi_from(lamp, {}, aside)) == Approx(7.615 * 0.8)); // 0.18, 0.24, 0.30 is a right triangle
}

TEST_CASE("UV is the same on either side of a lamp and falls away from it")
{
    for (const UvLamp& lamp : {point_lamp(), tube()}) {
        double before = 1e9;
        for (int cm = 0; cm < 25; cm += 2) {
            const double aside_m = cm / 100.0;
            const double z_m = lamp.at.z_m - 0.33;
            const double right = likely(uvi_from(lamp, {}, {lamp.at.x_m + aside_m, lamp.at.y_m, z_m}));
            const double left = likely(uvi_from(lamp, {}, {lamp.at.x_m - aside_m, lamp.at.y_m, z_m}));
            const double back = likely(uvi_from(lamp, {}, {lamp.at.x_m, lamp.at.y_m + aside_m, z_m}));
            const double front = likely(uvi_from(lamp, {}, {lamp.at.x_m, lamp.at.y_m - aside_m, z_m}));
            CHECK(right == Approx(left));
            CHECK(back == Approx(front));
            CHECK(right < before);
            before = right;
        }
    }
}

TEST_CASE("Several lamps add, and one that is not known leaves the sum unknown")
{
    UvLamp other = point_lamp();
    other.at.x_m = 0.5;
    const Point point = {0.4, 0.3, 0.25};
    const double both = likely(uvi_at({point_lamp(), other}, {}, point));
    CHECK(both == Approx(likely(uvi_from(point_lamp(), {}, point)) + likely(uvi_from(other, {}, point))));
    other.table.clear();
    CHECK_FALSE(uvi_at({point_lamp(), other}, {}, point));
    CHECK(likely(uvi_at({}, {}, point)) == 0.0);
}

TEST_CASE("The bound at most is never below what is known, and holds beyond the table")
{
    for (const UvLamp& lamp : {point_lamp(), tube()}) {
        for (int cm = 0; cm < 120; cm += 5) {
            const double x_m = cm / 100.0;
            const Point point = {x_m, 0.3, 0.2};
            const auto known = uvi_at({lamp}, {}, point);
            const auto most = uvi_at_most({lamp}, {}, point);
            REQUIRE(most);
            CHECK(*most <= lamp.table.front().uvi);
            CHECK((!known || *most >= known->high - 1e-12));
        }
        CHECK_FALSE(uvi_at_most({lamp}, {}, {0.3, 0.3, 0.5})); // nearer than the table
    }
    UvLamp unmeasured = point_lamp();
    unmeasured.table.clear();
    CHECK_FALSE(uvi_at_most({unmeasured}, {}, {0.9, 0.3, 0.2}));
}

TEST_CASE("A reading's own error passes into the range")
{
    UvLamp lamp = point_lamp();
    lamp.reading_factor = {0.9, 1.0, 1.1};
    const auto uvi = uvi_from(lamp, {}, {0.3, 0.3, 0.2});
    REQUIRE(uvi);
    CHECK(uvi->low == Approx(0.9));
    CHECK(uvi->high == Approx(1.1));
}
