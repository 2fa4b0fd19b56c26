// Walls folded out around the floor: where they lie, what they span, where each is hottest. What is painted and what
// the probe says: tests/app/desk.
#include "app/drawing/wall_layer.hpp"

#include <algorithm>
#include <array>

#include "app/drawing/heat_layer.hpp"
#include "tests/app/drawn_box.hpp"
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::drawing;

namespace {

constexpr std::array walls{climate::Plane::front, climate::Plane::back, climate::Plane::left, climate::Plane::right};

// 1.0 by 0.5 by 0.4 m with a bed of 0.1 m; each wall as warm as it is far along, from `from_c` on.
climate::PanelField panel(climate::Plane plane, double from_c)
{
    const bool side = plane == climate::Plane::left || plane == climate::Plane::right;
    const bool top = plane == climate::Plane::ceiling;
    climate::PanelField field;
    field.plane = plane;
    field.along_m = field.up_m = 0.1;
    field.columns = side ? 5 : 10;
    field.rows = top ? 5 : 3;
    field.from_z_m = top ? 0.4 : 0.1;
    field.across_m = plane == climate::Plane::right ? 1.0 : plane == climate::Plane::back ? 0.5 : 0.0;
    for (std::size_t cell = 0; cell < field.columns * field.rows; ++cell) {
        field.inside_c.push_back(from_c + static_cast<double>(cell % field.columns));
        field.outside_c.push_back(from_c - 2.0);
        field.closed.push_back(1);
    }
    return field;
}

assess::EnclosureResult result()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    assess::HeatCase& heat = enclosure.heat.emplace_back(test::on_drawn_floor("winter-day"));
    heat.detail.floor.ground_c.assign(50, 24.0);
    for (const climate::Plane plane : walls) {
        heat.detail.panels.push_back(panel(plane, 20.0));
    }
    heat.detail.panels.push_back(panel(climate::Plane::ceiling, 40.0));
    return enclosure;
}

Picture picture(const assess::EnclosureResult& enclosure)
{
    Picture made = test::picture_of(test::drawn_box(0.4), enclosure);
    made.unfolded = true;
    return made;
}

} // namespace

TEST_CASE("Each wall's hottest place is its warmest closed cell, and a top of mesh has none")
{
    climate::PanelField wall = panel(climate::Plane::front, 20.0);
    CHECK(*hottest_cell(wall) == 9); // the first of those that are as warm
    wall.closed[9] = wall.closed[19] = wall.closed[29] = 0;
    CHECK(*hottest_cell(wall) == 8);
    wall.closed.assign(wall.closed.size(), 0);
    CHECK_FALSE(hottest_cell(wall));
}

TEST_CASE("The colours span floor and walls where both are shown, but not a top that a lamp makes far hotter")
{
    const auto enclosure = result();
    Picture both = picture(enclosure);
    const Span span = colour_span(both, enclosure.heat[0]);
    CHECK(span.low <= 20.0);
    CHECK(span.high >= 29.0);
    CHECK(span.high < 40.0);
    both.unfolded = false;
    CHECK(colour_span(both, enclosure.heat[0]).high == 26.0); // the floor alone: 24 degC and the least span of 4 K
}

TEST_CASE("While a lamp is dragged the walls follow as the floor does")
{
    const auto enclosure = result();
    assess::HeatCase look = enclosure.heat[0];
    look.detail.panels.pop_back();
    Picture dragged = picture(enclosure);
    dragged.stale = true;
    dragged.look = &look;
    CHECK(panels_in_view(dragged).size() == 4);
    dragged.layer = Layer::moisture;
    CHECK(panels_in_view(dragged).empty());
}
