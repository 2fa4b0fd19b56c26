#include "tests/catch.hpp"

#include <cmath>
#include <numbers>

#include "core/light/uv.hpp"

using namespace loam;
using namespace loam::light;

namespace {

UvLamp lamp_above()
{
    UvLamp lamp;
    lamp.at = {0.5, 0.3, 0.55};
    lamp.above_top = true;
    lamp.table = {{0.2, 4.0}, {0.5, 0.64}};
    lamp.beam_deg = exactly(90.0);
    lamp.reading_factor = exactly(1.0);
    return lamp;
}

Top mesh(std::optional<Range> open_fraction)
{
    Top top;
    top.kind = TopKind::mesh;
    top.height_m = 0.5;
    top.open_fraction = open_fraction;
    return top;
}

const Point below = {0.5, 0.3, 0.15};

double share_of_open(const UvLamp& lamp, const Top& top)
{
    Top open = top;
    open.kind = TopKind::open;
    return uvi_from(lamp, top, below)->likely / uvi_from(lamp, open, below)->likely;
}

} // namespace

TEST_CASE("A mesh passes its open fraction of the UV")
{
    // Square mesh, pitch 1.41 mm and wire 0.28 mm: (1 - d/p)^2 = 0.642 at normal incidence (derived).
    const double open_fraction = std::pow(1.0 - 0.28 / 1.41, 2.0);
    CHECK(open_fraction == Approx(0.642).margin(5e-4));
    CHECK(share_of_open(lamp_above(), mesh(exactly(open_fraction))) == Approx(open_fraction));
}

TEST_CASE("A mesh of unknown weave costs 30 to 50 percent")
{
    // Common practice, no source.
    const Range passed = top_transmission(mesh({}), {});
    CHECK(passed.low == Approx(0.5));
    CHECK(passed.high == Approx(0.7));
}

TEST_CASE("A table taken through the same mesh holds as it is, through a denser one the lamp gives more")
{
    UvLamp lamp = lamp_above();
    lamp.reference_open_fraction = 0.64;
    CHECK(uvi_from(lamp, mesh(exactly(0.64)), below)->likely == Approx(1.0));
    lamp.reference_open_fraction = 0.32;
    CHECK(uvi_from(lamp, mesh(exactly(0.64)), below)->likely == Approx(2.0));
}

TEST_CASE("No UV-B passes a pane, whatever the lamp")
{
    // Soda-lime glass passes only above about 330 nm (Ropp 1993, by a secondary page).
    Top pane = mesh({});
    pane.kind = TopKind::pane;
    CHECK(*uvi_from(lamp_above(), pane, below) == exactly(0.0));
    UvLamp unmeasured = lamp_above();
    unmeasured.table.clear();
    CHECK(*uvi_from(unmeasured, pane, below) == exactly(0.0)); // known without a table
    UvLamp inside = lamp_above();
    inside.above_top = false;
    CHECK(uvi_from(inside, pane, below)->likely == Approx(1.0));
}

TEST_CASE("A cover shades what lies behind it, seen from the lamp")
{
    Top top = mesh(exactly(0.6));
    top.covers = {{0.4, 0.2, 0.2, 0.2}};
    CHECK(uvi_from(lamp_above(), top, below)->likely == 0.0);
    // The lamp hangs 5 cm over the top: lines to points far aside pass beside the cover.
    CHECK(uvi_from(lamp_above(), top, {0.5, 0.3, 0.51}) == std::nullopt); // above the top, nearer than the table
    top.covers = {{0.0, 0.0, 0.45, 0.6}};
    CHECK(uvi_from(lamp_above(), top, below)->likely == Approx(0.6));
    // To x = 0.2 at z = 0.15 the line crosses the top at 0.5 - 0.3 * 0.05 / 0.4 = 0.4625: just beside it.
    CHECK(uvi_from(lamp_above(), top, {0.2, 0.3, 0.15})->likely > 0.0);
    top.covers = {{0.0, 0.0, 0.47, 0.6}};
    CHECK(uvi_from(lamp_above(), top, {0.2, 0.3, 0.15})->likely == 0.0);
}

TEST_CASE("Covers over a tube take away just the stretch that they hide")
{
    UvLamp tube = lamp_above();
    tube.length_m = 0.4;
    Top top = mesh(exactly(1.0));
    const double whole = uvi_from(tube, top, below)->likely;
    top.covers = {{0.5, 0.0, 0.5, 0.6}};
    CHECK(uvi_from(tube, top, below)->likely == Approx(whole / 2.0)); // by symmetry
    top.covers = {{0.5, 0.0, 0.5, 0.6}, {0.5, 0.0, 0.3, 0.6}};
    CHECK(uvi_from(tube, top, below)->likely == Approx(whole / 2.0)); // counted once
    top.covers = {{0.5, 0.0, 0.5, 0.6}, {0.0, 0.0, 0.5, 0.6}};
    CHECK(uvi_from(tube, top, below)->likely == Approx(0.0).margin(1e-12));
    top.covers = {{0.45, 0.0, 0.1, 0.6}};
    const double less_middle = uvi_from(tube, top, below)->likely;
    top.covers = {{0.0, 0.0, 0.45, 0.6}, {0.55, 0.0, 0.6, 0.6}};
    CHECK(uvi_from(tube, top, below)->likely + less_middle == Approx(whole));
}

TEST_CASE("A lamp loses its share for each thousand hours")
{
    CHECK(ageing(exactly(2000.0), exactly(0.2)).likely == Approx(0.64));
    CHECK(ageing(exactly(0.0), {0.1, 0.2, 0.3}) == exactly(1.0));
    const Range aged = ageing({0.0, 2000.0, 4000.0}, {0.1, 0.2, 0.3});
    CHECK(aged.low == Approx(std::pow(0.7, 4.0)));
    CHECK(aged.high == Approx(1.0));
}

TEST_CASE("A used lamp of unknown decay has no known UV index, but no more than it had new")
{
    UvLamp lamp = lamp_above();
    lamp.burnt_h = exactly(500.0);
    CHECK_FALSE(uvi_from(lamp, {}, below));
    CHECK(*uvi_at_most({lamp}, {}, below) == Approx(1.0));
    lamp.burnt_h = exactly(0.0);
    CHECK(uvi_from(lamp, {}, below));
}

TEST_CASE("At a slant a mesh passes less")
{
    // (1 - d/p) (1 - (d/p) / cos), tilted about one wire, d/p = 0.1986 (derived): 0.642, 0.618, 0.576, 0.483.
    const double rows[][2] = {{0, 0.642}, {30, 0.618}, {45, 0.576}, {60, 0.483}};
    const double open_fraction = std::pow(1.0 - 0.1986, 2.0);
    for (const auto& row : rows) {
        CAPTURE(row[0]);
        const double cosine = std::cos(row[0] * std::numbers::pi / 180.0);
        CHECK(open_fraction * mesh_at_slant(open_fraction, cosine) == Approx(row[1]).margin(6e-4));
    }
    CHECK(mesh_at_slant(0.64, 0.1) == 0.0); // the wires hide one another
    CHECK(mesh_at_slant(1.0, 0.1) == 1.0);
    const Point aside = {0.5 + 0.2, 0.3, 0.35}; // 45 degrees from the lamp
    const Top open = {.kind = TopKind::open, .height_m = 0.5, .open_fraction = {}, .covers = {}};
    CHECK(uvi_from(lamp_above(), mesh(exactly(open_fraction)), aside)->likely ==
          Approx(uvi_from(lamp_above(), open, aside)->likely * 0.576).epsilon(1e-3));
}
