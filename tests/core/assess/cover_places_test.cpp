// Where a top may be covered: laws of the geometry, by hand, and of what it does to the air.
#include "core/assess/cover_places.hpp"

#include "tests/catch.hpp"
#include "tests/core/climate/boxes.hpp"

using namespace loam;
using namespace loam::assess;

namespace {

climate::Box lit_box()
{
    climate::Box box = climate::test::glass_box();
    box.lamps = {climate::test::flood(50.0)};
    return box;
}

double together_m(const std::vector<climate::Rect>& places)
{
    double sum_m = 0.0;
    for (const climate::Rect& place : places) {
        sum_m += place.length_m;
    }
    return sum_m;
}

} // namespace

TEST_CASE("covers keep their clearance from every lamp, begin at the freer end and leave a quarter open")
{
    const climate::Box box = lit_box();
    const climate::Lamp& lamp = box.lamps.front();
    const double clearance_m = 0.15;
    for (const double share : {0.1, 0.4, 0.6, 0.75, 1.0}) {
        const auto places = cover_places(box, share, clearance_m);
        REQUIRE_FALSE(places.empty());
        CHECK(places.front().x_m + places.front().length_m == Approx(box.length_m)); // the lamp hangs left
        for (const climate::Rect& place : places) {
            const bool left = place.x_m + place.length_m <= lamp.at.x_m - clearance_m + 1e-12;
            const bool right = place.x_m >= lamp.at.x_m + clearance_m - 1e-12;
            CHECK((left || right));
        }
        CHECK(together_m(places) <= 0.75 * box.length_m + 1e-12);
    }
    // By hand: a share that fits beside the lamp is covered exactly.
    CHECK(together_m(cover_places(box, 0.3, clearance_m)) == Approx(0.3 * box.length_m));
    CHECK(coverable_share(box, clearance_m) ==
          Approx(std::min(0.75, 1.0 - 2.0 * clearance_m / box.length_m)).margin(1e-9));
}

TEST_CASE("where a lamp's clearance takes the whole top, nothing may be covered")
{
    CHECK(cover_places(lit_box(), 0.5, 2.0).empty());
    CHECK(coverable_share(lit_box(), 2.0) == 0.0);
    climate::Box closed = lit_box();
    closed.top = climate::TopKind::pane;
    CHECK(cover_places(closed, 0.5, 0.1).empty());
}

TEST_CASE("what two covers share counts once, and what hangs over the edge not at all")
{
    climate::Box box = lit_box();
    const double l = box.length_m;
    const double w = box.width_m;
    box.covers = {{"a", {0.5 * l, 0.0, 0.25 * l, w}, climate::test::towel(), exactly(0.0)},
                  {"b", {0.6 * l, 0.0, 0.25 * l, 0.5 * w}, climate::test::towel(), exactly(0.0)},
                  {"c", {0.95 * l, 0.0, 0.25 * l, w}, climate::test::towel(), exactly(0.0)}};
    // a: 1/4; b adds 0.10 of half the width; c only 0.05.
    CHECK(covered_share(box) == Approx(0.25 + 0.05 + 0.05));
}

TEST_CASE("covering more of the top of a damp box never dries its air")
{
    climate::Box box = climate::test::furnished_box();
    climate::Workspace workspace;
    const climate::Case winter = climate::test::home_day();
    double before = 0.0;
    for (const double share : {0.0, 0.15, 0.3, 0.45, 0.6}) {
        const auto result = climate::solve_likely(with_cover_share(box, share, 0.1), winter, workspace);
        REQUIRE(result);
        REQUIRE(result->converged);
        CHECK(result->ground_humidity.likely >= before);
        before = result->ground_humidity.likely;
    }
}
