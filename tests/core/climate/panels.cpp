// Walls and top on small cells, and walls of several sheets.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/climate/field_balance.hpp"
#include "core/climate/panels.hpp"
#include "core/climate/walls.hpp"
#include "tests/catch.hpp"
#include "tests/core/climate/boxes.hpp"

namespace loam::climate::test {

namespace {

Balanced balanced(const Box& box, const Case& now)
{
    Workspace workspace;
    auto found = field_balance(box, now, field_cells({}), workspace.field, {});
    REQUIRE(std::holds_alternative<Balanced>(found));
    REQUIRE(std::get<Balanced>(found).solution.converged);
    return std::get<Balanced>(std::move(found));
}

const PanelField& of(const std::vector<PanelField>& fields, Plane plane)
{
    return *std::find_if(fields.begin(), fields.end(),
                         [plane](const PanelField& field) { return field.plane == plane; });
}

Sheet foam(double thickness_m)
{
    Sheet sheet = glass(thickness_m);
    sheet.conductivity_w_mk = {0.03, 0.033, 0.036};
    sheet.lamp_transmittance = exactly(0.0);
    sheet.lamp_absorptance = exactly(0.4);
    return sheet;
}

// Two sheets between airs whose films are given: the heat flow of a flat composite wall.
double composite_w_m2(const std::vector<const Sheet*>& sheets, double inner_w_m2k, double outer_w_m2k, double rise_k)
{
    return rise_k / (1.0 / inner_w_m2k + resistance_m2k_w(sheets) + 1.0 / outer_w_m2k);
}

} // namespace

TEST_CASE("Sheets upon each other resist as the sum of thickness over conductivity")
{
    // 5 mm of glass and 20 mm of foam by hand: 0.005 / 1.0 + 0.02 / 0.033 = 0.6111 m2 K/W (ISO 6946, 6.7.1.2: sum of
    // the layers' resistances, from memory).
    const Sheet pane = glass(0.005);
    const Sheet board = foam(0.02);
    CHECK(resistance_m2k_w({&pane, &board}) == Approx(0.005 / pane.conductivity_w_mk.likely + 0.60606).epsilon(1e-4));
    // Between still air and a room (0.13 and 0.04 m2 K/W, ISO 6946 Table 7, horizontal flow, from memory), 10 K:
    // 10 / (0.13 + 0.6111 + 0.04) = 12.80 W/m2.
    CHECK(composite_w_m2({&pane, &board}, 1.0 / 0.13, 1.0 / 0.04, 10.0) == Approx(12.80).epsilon(0.005));
}

TEST_CASE("Light that a clear sheet passes is taken by what lies behind it")
{
    const Sheet pane = glass(0.005);
    const Sheet board = foam(0.02);
    const LampShares both = lamp_shares({&pane, &board});
    const double passed = pane.lamp_transmittance.likely;
    CHECK(both.passed == 0.0);
    CHECK(both.absorbed == Approx(pane.lamp_absorptance.likely + passed * 0.4)); // by hand
    CHECK(lamp_shares({&board, &pane}).absorbed == Approx(0.4));                 // nothing gets behind
}

TEST_CASE("Cells of walls and top agree in the mean with the joint balance")
{
    Box box = furnished_box(0.08, true);
    const Balanced at = balanced(box, home_day());
    const auto fields = panel_fields(box, at.scene, at.model, at.solution, 0.025);
    REQUIRE(fields.size() == 5);
    const Geometry& g = at.scene.geometry;
    for (const PanelField& field : fields) {
        const PanelCells cells = lay_panel(box, at.scene, field.plane, 0.025);
        std::vector<double> sum(g.faces.size(), 0.0);
        std::vector<double> count(g.faces.size(), 0.0);
        for (std::size_t i = 0; i < cells.size(); ++i) {
            sum[cells.face[i]] += field.inside_c[i];
            count[cells.face[i]] += 1.0;
        }
        for (std::size_t f = 0; f < g.faces.size(); ++f) {
            const double area_m2 = count[f] * cells.cell_m2();
            // Faces that cells cut short, and whose neighbours differ much, exchange along the sheet.
            if (count[f] == 0.0 || !at.model.faces[f].place || std::abs(area_m2 / g.faces[f].area_m2 - 1.0) > 0.02)
                continue;
            const double balance_c = at.solution.values[at.model.layout.face_inside(*at.model.faces[f].place)];
            INFO("face " << f << " on plane " << static_cast<int>(field.plane));
            CHECK(sum[f] / count[f] == Approx(balance_c).margin(0.5));
        }
    }
}

TEST_CASE("A strip of a wall that a mat heats cools along the sheet as a fin does")
{
    // A long mat on the lower part of the back wall; above its edge the excess falls as exp(-x / l) with
    // l = sqrt(k t / (h_i + h_o)): Incropera, Fundamentals of Heat and Mass Transfer, infinite fin, eq. 3.75 (from
    // memory). Glass and a thin metal sheet: l of some 2 and 9 cm.
    for (const double conductivity : {1.0, 20.0}) {
        Box box = glass_box();
        box.height_m = 1.0;
        box.top = TopKind::pane;
        box.top_sheet = glass(0.005);
        box.bed.clear();
        box.walls.conductivity_w_mk = exactly(conductivity);
        Mat heater = mat(10.0);
        heater.place = MatPlace::back_wall;
        heater.area = {0.0, 0.0, box.length_m, 0.25};
        box.mats.push_back(heater);
        const Balanced at = balanced(box, home_day());
        const auto fields = panel_fields(box, at.scene, at.model, at.solution, 0.01);
        const PanelField& back = of(fields, Plane::back);
        const std::size_t middle = back.columns / 2;
        const auto both_c = [&](std::size_t row) {
            const std::size_t i = row * back.columns + middle;
            return 0.5 * (back.inside_c[i] + back.outside_c[i]);
        };
        // Within the lower band of patches, half a metre high, what lies far above the mat is the floor of the fall.
        const auto row_at = [&](double z_m) { return static_cast<std::size_t>(z_m / back.up_m); };
        const double far_c = both_c(row_at(0.48));
        const double first_k = both_c(row_at(0.27)) - far_c;
        const double second_k = both_c(row_at(0.30)) - far_c;
        const double length_m = 0.03 / std::log(first_k / second_k);
        // Films and radiation of a wall some kelvin over a room: 3 + 5.5 W/(m2 K) on each side, within a fifth.
        const double expected_m = std::sqrt(conductivity * box.walls.thickness_m / 17.0);
        INFO("conductivity " << conductivity << ", falls over " << length_m << " m");
        CHECK(length_m == Approx(expected_m).epsilon(0.25));
    }
}

TEST_CASE("Panels of a mirrored box are mirrored")
{
    const Box box = furnished_box(0.08, true);
    const Box other = mirrored(box);
    const Balanced here = balanced(box, home_day());
    const Balanced there = balanced(other, home_day());
    const auto ours = panel_fields(box, here.scene, here.model, here.solution, 0.025);
    const auto theirs = panel_fields(other, there.scene, there.model, there.solution, 0.025);
    const PanelField& left = of(ours, Plane::left);
    const PanelField& right = of(theirs, Plane::right);
    for (std::size_t i = 0; i < left.inside_c.size(); ++i)
        CHECK(left.inside_c[i] == Approx(right.inside_c[i]).margin(0.02));
    const PanelField& back = of(ours, Plane::back);
    const PanelField& mirrored = of(theirs, Plane::back);
    for (std::size_t i = 0; i < back.inside_c.size(); ++i) {
        const std::size_t row = i / back.columns;
        const std::size_t column = i % back.columns;
        CHECK(back.inside_c[i] ==
              Approx(mirrored.inside_c[row * back.columns + back.columns - 1 - column]).margin(0.02));
    }
}

TEST_CASE("A lamp close to a wall shows as a hot spot there, brightest beside it")
{
    Box box = glass_box();
    box.walls.lamp_transmittance = exactly(0.0);
    box.walls.lamp_absorptance = exactly(0.8);
    box.lamps.push_back(flood(75.0));
    box.lamps[0].at = {0.10, 0.12, 0.48};
    const Balanced at = balanced(box, home_day());
    const auto fields = panel_fields(box, at.scene, at.model, at.solution, 0.025);
    const PanelField& left = of(fields, Plane::left);
    const PanelField& right = of(fields, Plane::right);
    const auto peak = [](const PanelField& field) {
        return std::max_element(field.inside_c.begin(), field.inside_c.end()) - field.inside_c.begin();
    };
    const auto hottest = static_cast<std::size_t>(peak(left));
    CHECK(left.inside_c[hottest] > right.inside_c[static_cast<std::size_t>(peak(right))] + 2.0);
    CHECK(centre_of(left, hottest).y_m < 0.5 * box.width_m); // the lamp hangs nearer to the front
    for (const std::uint8_t closed : of(fields, Plane::ceiling).closed)
        CHECK(closed == 0);
}

TEST_CASE("A lining outside keeps heat in, a glass front in a wooden box lets it out")
{
    const auto air_c = [](const Box& box) {
        const Balanced at = balanced(box, home_day());
        return at.solution.values[at.model.layout.lower_air()];
    };
    Box box = furnished_box(0.08, false);
    const double bare_c = air_c(box);
    Box lined = box;
    lined.other_walls.push_back({Wall::back, std::nullopt, {}, {{"l1", foam(0.02)}}});
    const double lined_c = air_c(lined);
    CHECK(lined_c > bare_c + 0.05);
    lined.other_walls[0] = {Wall::back, std::nullopt, {{"l1", foam(0.02)}}, {}};
    CHECK(air_c(lined) > bare_c); // inside it does as well
    Box wooden = box;
    wooden.walls = foam(0.02);
    const double wooden_c = air_c(wooden);
    wooden.other_walls.push_back({Wall::front, WallLayer{"p1", glass(0.005)}, {}, {}});
    const double fronted_c = air_c(wooden);
    CHECK(fronted_c < wooden_c - 0.05);
    CHECK(fronted_c > bare_c);
    // One make named for each wall is the plain box, to the last bit.
    Box named = box;
    for (const Wall wall : {Wall::front, Wall::back, Wall::left, Wall::right})
        named.other_walls.push_back({wall, WallLayer{"p", box.walls}, {}, {}});
    CHECK(air_c(named) == bare_c);
}

} // namespace loam::climate::test
