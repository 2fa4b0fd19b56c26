// Laws that every solution must keep, whatever the figures.
#include <cmath>
#include <optional>

#include "tests/catch.hpp"

#include "core/climate/psychrometrics.hpp"
#include "tests/core/climate/solved.hpp"

using namespace loam;
using namespace loam::climate;
using namespace loam::climate::test;

namespace {

Box dry_box()
{
    Box box = furnished_box(0.08, false);
    box.bowls.clear();
    box.covers.clear();
    return box;
}

// Front and back exchanged.
Box turned_round(Box box)
{
    const auto turn = [&](Rect& rect) { rect.y_m = box.width_m - rect.y_m - rect.width_m; };
    for (auto& cover : box.covers)
        turn(cover.area);
    for (auto& mat : box.mats)
        turn(mat.area);
    for (auto& bowl : box.bowls)
        turn(bowl.area);
    for (auto& lamp : box.lamps)
        lamp.at.y_m = box.width_m - lamp.at.y_m;
    return box;
}

// Boxes that differ in what stands between them and the room.
std::vector<Box> dry_boxes()
{
    std::vector<Box> boxes{dry_box(), dry_box(), dry_box(), dry_box()};
    boxes[1].covers = furnished_box().covers;
    boxes[2].top = TopKind::pane;
    boxes[2].top_sheet = glass(0.004);
    boxes[2].vents = {{0.004, 0.15}, {0.006, 0.43}};
    boxes[3].bed[0].depth_left_m = 0.04;
    boxes[3].bed[0].depth_right_m = 0.14;
    return boxes;
}

} // namespace

TEST_CASE("what is released inside leaves to the room, to a millionth")
{
    std::vector<Box> boxes{furnished_box(0.08, true), furnished_box(0.16, false), dry_box()};
    boxes.push_back(furnished_box());
    boxes.back().bed[0].depth_left_m = 0.05;
    boxes.back().bed[0].depth_right_m = 0.15;
    boxes.back().misting_l_per_day = {0.05, 0.1, 0.2};
    boxes.push_back(furnished_box());
    boxes.back().top = TopKind::pane;
    boxes.back().top_sheet = glass(0.004);
    boxes.back().vents = {{0.004, 0.15}, {0.006, 0.43}};
    boxes.push_back(furnished_box());
    boxes.back().mats[0].place = MatPlace::back_wall;
    boxes.back().mats[0].area = {0.10, 0.15, 0.30, 0.20};
    boxes.push_back(furnished_box());
    boxes.back().lamps[0].above_top = false;
    boxes.back().lamps[0].at.z_m = 0.40;
    boxes.back().mats[0].place = MatPlace::in_bed;
    for (const Box& box : boxes) {
        const CaseResult result = solved(box, home_day());
        CHECK(result.input_w > 10.0);
        CHECK(std::abs(result.input_w - result.loss_w) < 1e-6 * result.power_w);
        CHECK(result.cool.ground_c.likely > 20.0);
    }
}

TEST_CASE("a dry box without power is exactly as warm as its room")
{
    for (Box box : dry_boxes()) {
        box.lamps.clear();
        box.mats.clear();
        const CaseResult result = solved(box, home_day());
        for (const auto* field : {&result.floor.surface_c, &result.floor.ground_c, &result.section.temperature_c})
            for (const double celsius : *field)
                CHECK(celsius == Approx(21.5).margin(1e-9));
        CHECK(result.lower_air_c.likely == Approx(21.5).margin(1e-9));
        CHECK(result.upper_air_c.likely == Approx(21.5).margin(1e-9));
        CHECK(result.coldest_pane_c == Approx(21.5).margin(1e-9));
        CHECK(result.loss_w == Approx(0.0).margin(1e-9));
        CHECK(result.ground_humidity.likely == Approx(0.45).epsilon(1e-9));
    }
}

TEST_CASE("a mirrored box has mirrored temperatures")
{
    Box box = furnished_box();
    box.bed[0].depth_left_m = 0.06;
    box.bed[0].depth_right_m = 0.12;
    const CaseResult a = solved(box, home_day());
    const CaseResult b = solved(mirrored(box), home_day());
    for (std::size_t j = 0; j < a.floor.ny; ++j)
        for (std::size_t i = 0; i < a.floor.nx; ++i)
            CHECK(a.floor.surface_c[j * a.floor.nx + i] ==
                  Approx(b.floor.surface_c[j * a.floor.nx + a.floor.nx - 1 - i]).margin(1e-6));
    CHECK(a.warm.ground_c.low == Approx(b.warm.ground_c.low).margin(1e-4));
    CHECK(a.cool.ground_c.high == Approx(b.cool.ground_c.high).margin(1e-4));
    CHECK(a.warm.area.x_m == Approx(box.length_m - b.warm.area.x_m - b.warm.area.length_m).margin(1e-9));
}

TEST_CASE("a box turned round has its temperatures turned round")
{
    Box box = furnished_box();
    box.mats[0].area.y_m = 0.02;
    box.lamps[0].at.y_m = 0.15;
    const CaseResult a = solved(box, home_day());
    const CaseResult b = solved(turned_round(box), home_day());
    double differ_k = 0.0;
    for (std::size_t j = 0; j < a.floor.ny; ++j)
        for (std::size_t i = 0; i < a.floor.nx; ++i) {
            const std::size_t there = (a.floor.ny - 1 - j) * a.floor.nx + i;
            CHECK(a.floor.surface_c[j * a.floor.nx + i] == Approx(b.floor.surface_c[there]).margin(1e-6));
            differ_k = std::max(differ_k, std::abs(a.floor.surface_c[there] - b.floor.surface_c[there]));
        }
    CHECK(differ_k > 1.0); // the box is not its own mirror image
    CHECK(a.lower_air_c.likely == Approx(b.lower_air_c.likely).margin(1e-6));
}

namespace {

// No part of a box is colder than it was.
void check_nowhere_colder(const CaseResult& now, const CaseResult& before)
{
    for (std::size_t c = 0; c < before.floor.surface_c.size(); ++c) {
        CHECK(now.floor.surface_c[c] > before.floor.surface_c[c]);
        CHECK(now.floor.ground_c[c] > before.floor.ground_c[c]);
    }
    for (std::size_t c = 0; c < before.section.temperature_c.size(); ++c)
        CHECK(now.section.temperature_c[c] > before.section.temperature_c[c]);
    CHECK(now.lower_air_c.likely > before.lower_air_c.likely);
    CHECK(now.upper_air_c.likely > before.upper_air_c.likely);
}

} // namespace

TEST_CASE("more cover never cools any part of a dry, unregulated, unshaded box")
{
    std::optional<CaseResult> last;
    for (const double covered_m : {0.0, 0.1, 0.2, 0.3, 0.4}) {
        Box box = dry_box();
        if (covered_m > 0.0)
            box.covers = {{.id = "towel",
                           .area = {box.length_m - covered_m, 0.0, covered_m, box.width_m},
                           .sheet = towel(),
                           .leak = exactly(0.05)}};
        box.lamps[0].at.z_m = 0.47; // its beam passes clear of the cover
        box.lamps[0].beam_deg = exactly(40.0);
        const CaseResult result = solved(box, home_day());
        if (last)
            check_nowhere_colder(result, *last);
        last = result;
    }
}

TEST_CASE("more watts, of a lamp or of a mat, never cool any part of a dry box")
{
    for (const bool of_lamp : {true, false}) {
        std::optional<CaseResult> last;
        for (const double watts : {0.0, 15.0, 30.0, 90.0}) {
            Box box = dry_box();
            (of_lamp ? box.lamps[0].power_w : box.mats[0].power_w) = exactly(watts);
            const CaseResult result = solved(box, home_day());
            if (last)
                check_nowhere_colder(result, *last);
            last = result;
        }
    }
}

TEST_CASE("a wet box without power cools, but its air and bed not below the room's wet bulb")
{
    for (const double wetness : {0.3, 1.0}) {
        Box box = furnished_box();
        box.lamps.clear();
        box.mats.clear();
        box.covers.clear();
        box.bed[0].wetness = exactly(wetness);
        box.misting_l_per_day = exactly(0.5);
        box.walls.thickness_m = 0.10; // so that little but evaporation counts
        box.walls.conductivity_w_mk = exactly(0.03);
        for (const double humidity : {0.2, 0.45, 0.8}) {
            Case now = home_day();
            now.room.relative_humidity = exactly(humidity);
            const CaseResult result = solved(box, now);
            const double bulb_c = *wet_bulb_c(21.5, *humidity_ratio_at(21.5, humidity));
            CHECK(result.lower_air_c.likely < 21.5);
            CHECK(result.lower_air_c.likely > bulb_c);
            CHECK(result.upper_air_c.likely > bulb_c);
            for (const double celsius : result.floor.surface_c)
                CHECK(celsius > bulb_c);
            CHECK(std::abs(result.input_w - result.loss_w) < 1e-6);
        }
    }
}

TEST_CASE("halving the cells changes readings by little")
{
    Workspace workspace;
    const Box box = furnished_box();
    const Resolution coarse;
    const Resolution fine{.cell_m = 0.5 * coarse.cell_m, .layer_m = 0.5 * coarse.layer_m};
    const auto a = solve_steady(box, home_day(), workspace, {}, coarse);
    const auto b = solve_steady(box, home_day(), workspace, {}, fine);
    REQUIRE((a && b && a->converged && b->converged));
    CHECK(a->warm.ground_c.likely == Approx(b->warm.ground_c.likely).margin(0.15));
    CHECK(a->cool.ground_c.likely == Approx(b->cool.ground_c.likely).margin(0.1));
    CHECK(a->lower_air_c.likely == Approx(b->lower_air_c.likely).margin(0.05));
    CHECK(a->hottest_digging_c.likely == Approx(b->hottest_digging_c.likely).margin(1.5));
    CHECK(a->basking.surface_c.likely == Approx(b->basking.surface_c.likely).margin(1.0));
}

TEST_CASE("a warm start and a cold one end at the same place, and a cold one twice in the same bytes")
{
    Workspace warm;
    Box box = furnished_box();
    REQUIRE(solve_steady(box, home_day(), warm));
    box.lamps[0].at.x_m += 0.05;
    Workspace cold;
    Workspace other;
    const auto a = solve_steady(box, home_day(), warm);
    const auto b = solve_steady(box, home_day(), cold);
    const auto c = solve_steady(box, home_day(), other);
    REQUIRE((a && b && c));
    CHECK(*b == *c);
    CHECK(a->warm.ground_c.likely == Approx(b->warm.ground_c.likely).margin(1e-6));
    CHECK(a->warm.ground_c.low == Approx(b->warm.ground_c.low).margin(1e-3));
}

TEST_CASE("a box that cannot be is refused, and a stop is heard")
{
    Workspace workspace;
    Box box = furnished_box();
    box.width_m = 0.0;
    CHECK_FALSE(solve_steady(box, home_day(), workspace));
    box = furnished_box(0.60); // the bed fills it
    CHECK_FALSE(solve_steady(box, home_day(), workspace));
    box = furnished_box();
    box.height_m = NAN;
    CHECK_FALSE(solve_steady(box, home_day(), workspace));
    std::stop_source source;
    source.request_stop();
    CHECK_FALSE(solve_steady(furnished_box(), home_day(), workspace, source.get_token()));
}

TEST_CASE("a room beyond the equations is not known rather than guessed")
{
    Workspace workspace;
    const auto result = solve_steady(furnished_box(), home_day(exactly(400.0)), workspace);
    REQUIRE(result);
    CHECK_FALSE(result->converged);
}
