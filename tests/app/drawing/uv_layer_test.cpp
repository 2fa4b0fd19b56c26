// The UV map as a layer of the drawing. What is painted and what the probe says of it: tests/app/desk.
#include "app/drawing/uv_layer.hpp"

#include <cmath>

#include "tests/app/drawn_box.hpp"
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::drawing;

namespace {

// 1.0 m by 0.5 m in cells of 0.1 m: an index that rises to the right up to 4, not known in the rightmost column.
assess::EnclosureResult result()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    light::UvMap& map = enclosure.uv.map;
    map.grid = {10, 5, 0.1, 0.1};
    for (std::size_t cell = 0; cell < map.grid.cells(); ++cell) {
        const double likely = 5.0 * map.grid.x_m(cell) - 0.25;
        const bool known = cell % 10 != 9;
        map.uvi.push_back(known ? std::optional(Range{0.9 * likely, likely, 1.1 * likely}) : std::nullopt);
        map.at_most.push_back(5.0);
        map.back_m.push_back(0.15);
    }
    enclosure.uv.needed = true;
    enclosure.uv.uvi_at_basking = Range{2.0, 2.5, 3.0};
    enclosure.uv.basking.back = {0.55, 0.25, 0.15};
    enclosure.uv.judgement = {Verdict::tight, Direction::above};
    return enclosure;
}

Picture picture(const assess::EnclosureResult& enclosure)
{
    return test::picture_of(test::drawn_box(), enclosure, Layer::uv);
}

} // namespace

TEST_CASE("The layer has the likely index in every cell, lines at round indices and no line around the dark")
{
    const auto enclosure = result();
    const auto layer = uv_on_floor(picture(enclosure));
    REQUIRE(layer);
    REQUIRE(layer->values.size() == 50);
    CHECK(layer->values[4] == Approx(5.0 * 0.45 - 0.25));
    CHECK(std::isnan(layer->values[9]));
    CHECK(layer->span.low == 0.0);
    CHECK(layer->span.high == 4.0);
    REQUIRE(layer->lines.size() == 4);
    CHECK(layer->lines[0].value == 1.0);
    CHECK(layer->lines[0].caption == "UVI 1");
    REQUIRE(layer->tags.size() == 1);
    CHECK(layer->tags[0].caption.contains(QStringLiteral("UVI 2.5")));
    CHECK(layer->tags[0].verdict == Verdict::tight);
}

TEST_CASE("Without a lamp that gives UV the layer is empty, and each layer shows its own")
{
    assess::EnclosureResult none;
    Picture dark = picture(none);
    CHECK_FALSE(uv_on_floor(dark));
    CHECK_FALSE(floor_layer(dark));
    const auto enclosure = result();
    Picture heat = picture(enclosure);
    heat.layer = Layer::heat;
    CHECK_FALSE(floor_layer(heat)); // no case was solved
    CHECK(floor_layer(picture(enclosure)));
}
