// What keeps lamp light off the floor, and domes on the mesh.
#include <cmath>
#include <numbers>
#include <numeric>

#include "core/climate/blocks.hpp"
#include "core/climate/domes.hpp"
#include "core/climate/model.hpp"
#include "tests/catch.hpp"
#include "tests/core/climate/solved.hpp"

namespace loam::climate::test {

namespace {

double sum(const std::vector<double>& values)
{
    return std::accumulate(values.begin(), values.end(), 0.0);
}

double at(const CaseResult& result, const std::vector<double>& field, double x_m, double y_m)
{
    const auto i = static_cast<std::size_t>(x_m / result.floor.dx_m);
    const auto j = static_cast<std::size_t>(y_m / result.floor.dy_m);
    return field[j * result.floor.nx + i];
}

Block hide(bool hollow)
{
    return {.id = "hide", .area = {0.14, 0.15, 0.16, 0.16}, .height_m = 0.12, .hollow = hollow};
}

} // namespace

TEST_CASE("A block's shadow is as long as similar triangles make it")
{
    // Lamp 0.40 m over the bed at x = 0.2; a block 0.10 m high whose far edge lies 0.20 m away: its shadow reaches
    // 0.20 * 0.40 / (0.40 - 0.10) = 0.2667 m from below the lamp. By hand.
    Box box = glass_box(0.05, false);
    box.blocks = {{.id = "b", .area = {0.35, 0.10, 0.05, 0.20}, .height_m = 0.10}};
    const auto geometry = lay_out(box, field_cells({}));
    REQUIRE(geometry);
    const Point lamp{0.20, 0.20, 0.45};
    CHECK_FALSE(block_between(box, *geometry, lamp, {0.34, 0.20, 0.05})); // before it
    CHECK(block_between(box, *geometry, lamp, {0.38, 0.20, 0.05}));       // below it
    CHECK(block_between(box, *geometry, lamp, {0.46, 0.20, 0.05}));       // behind it
    CHECK_FALSE(block_between(box, *geometry, lamp, {0.475, 0.20, 0.05}));
    CHECK_FALSE(block_between(box, *geometry, lamp, {0.38, 0.20, 0.15})); // on it
    CHECK_FALSE(block_between(box, *geometry, lamp, {0.46, 0.35, 0.05})); // beside it
    // Turned by a right angle about its centre it lies along x.
    box.blocks[0].rotation_deg = 90.0;
    CHECK(block_between(box, *geometry, lamp, {0.30, 0.20, 0.05}));
    CHECK(sum(under_block_m2(*geometry, box.blocks[0])) == Approx(0.05 * 0.20).epsilon(0.1));
}

TEST_CASE("A hide in the beam is shade: dark, cooler and damp below, and no light is lost")
{
    for (const bool hollow : {true, false}) {
        const Box open = furnished_box(0.08, true);
        Box shaded = open;
        shaded.blocks = {hide(hollow)};
        const CaseResult without = solved(open);
        const CaseResult with = solved(shaded);
        CHECK(at(with, with.floor.beam_w_m2, 0.22, 0.23) < 1e-9);
        CHECK(at(without, without.floor.beam_w_m2, 0.22, 0.23) > 100.0);
        // The roof of a hollow one keeps the bed cool; a rock hands its heat on, though wider spread.
        const double below_c = at(with, with.floor.surface_c, 0.22, 0.23);
        CHECK(below_c < at(without, without.floor.surface_c, 0.22, 0.23) - (hollow ? 5.0 : -0.5));
        CHECK(std::abs(with.input_w - with.loss_w) < 1e-6 * with.power_w);
        if (!hollow) {
            CHECK(with.input_w == Approx(without.input_w).epsilon(0.15));
        }
        // Light: what enters arrives on floor, walls or block.
        const auto scene = make_scene(shaded, field_cells({}));
        REQUIRE(scene);
        const Cast& cast = scene->casts[0];
        for (std::size_t r = 0; r < cast.region_share.size(); ++r)
            CHECK(sum(cast.column[r]) + sum(cast.patch[r]) + sum(cast.block[r]) ==
                  Approx(cast.region_share[r]).margin(1e-12));
        CHECK(sum(cast.block[0]) > 0.05);
    }
}

TEST_CASE("A dome on the mesh closes its circle")
{
    Box box = furnished_box();
    box.lamps[0].dome_m = 0.2;
    const Rect whole{0.0, 0.0, box.length_m, box.width_m};
    CHECK(under_domes_m2(box, whole) == Approx(std::numbers::pi * 0.01)); // area of a circle
    CHECK(under_domes_m2(box, {0.6, 0.0, 0.3, 0.4}) == 0.0);
    box.lamps[0].dome_m = 5.0;
    CHECK(under_domes_m2(box, whole) == Approx(box.length_m * box.width_m));
    box.lamps[0].above_top = false;
    CHECK(under_domes_m2(box, whole) == 0.0);
}

TEST_CASE("Domes keep warmth in and air from moving")
{
    const Box bare = furnished_box();
    Box domed = bare;
    domed.lamps[0].dome_m = 0.25;
    const CaseResult without = solved(bare);
    const CaseResult with = solved(domed);
    CHECK(with.cool.ground_c.likely > without.cool.ground_c.likely + 0.02);
    CHECK(with.ground_humidity.likely > without.ground_humidity.likely);
    CHECK(std::abs(with.input_w - with.loss_w) < 1e-6 * with.power_w);
}

} // namespace loam::climate::test
