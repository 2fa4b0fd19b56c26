// Humidity at ground level as a layer of the drawing. What is painted and what the probe says of it: tests/app/desk.
#include "app/drawing/moisture_layer.hpp"

#include <algorithm>

#include "app/drawing/heat_layer.hpp"
#include "tests/app/drawn_box.hpp"
#include "tests/app/qt_strings.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::drawing;

namespace {

// 1.0 m by 0.5 m in cells of 0.1 m: damp at the left, 75 %, and drier to the right, 48 %.
assess::EnclosureResult result()
{
    assess::EnclosureResult enclosure;
    enclosure.id = "e1";
    assess::HeatCase& heat = enclosure.heat.emplace_back(test::on_drawn_floor("winter-day"));
    climate::CaseResult& detail = heat.detail;
    detail.converged = true;
    detail.warm.humidity = exactly(0.49);
    detail.warm.area = {0.7, 0.0, 0.3, 0.5};
    detail.cool.humidity = {0.63, 0.68, 0.73};
    detail.ground_humidity = detail.cool.humidity;
    detail.cool.area = {0.0, 0.0, 0.3, 0.5};
    climate::FloorField& floor = detail.floor;
    for (std::size_t cell = 0; cell < 50; ++cell) {
        floor.ground_c.push_back(20.5 + static_cast<double>(cell % 10));
        floor.humidity.push_back(0.75 - 0.03 * static_cast<double>(cell % 10));
    }
    assess::HumidityCase& humidity = enclosure.humidity.emplace_back();
    humidity.id = "winter-day";
    humidity.relative_humidity = detail.ground_humidity;
    humidity.target = {0.5, 0.58, {}};
    humidity.judgement = {Verdict::falls_short, Direction::above};
    return enclosure;
}

Picture picture(const assess::EnclosureResult& enclosure)
{
    return test::picture_of(test::drawn_box(), enclosure, Layer::moisture);
}

const FloorTag& tag_with(const FloorLayer& layer, const char* part)
{
    const auto found = std::find_if(layer.tags.begin(), layer.tags.end(),
                                    [&](const FloorTag& tag) { return tag.caption.contains(QLatin1String(part)); });
    REQUIRE(found != layer.tags.end());
    return *found;
}

} // namespace

TEST_CASE("The layer is the humidity of every cell, each side has its figure, and by the cool one it is judged")
{
    const auto enclosure = result();
    const auto layer = moisture_on_floor(picture(enclosure));
    REQUIRE(layer);
    CHECK(layer->values == enclosure.heat[0].detail.floor.humidity);
    CHECK(tag_with(*layer, "warm").caption.contains(QStringLiteral("49")));
    CHECK(tag_with(*layer, "cool").caption.contains(QStringLiteral("68")));
    CHECK_FALSE(tag_with(*layer, "warm").verdict);
    CHECK(tag_with(*layer, "cool").verdict == Verdict::falls_short);
    CHECK(layer->legend.contains(QStringLiteral("50–58")));
    CHECK(layer->span.low <= *std::min_element(layer->values.begin(), layer->values.end()));
    CHECK(layer->span.high >= *std::max_element(layer->values.begin(), layer->values.end()));
    CHECK(layer->span.share(layer->span.low) > layer->span.share(layer->span.high)); // damp is the dark, blue end
}

TEST_CASE("The ends of the target are lines of their own, and no other line runs on them")
{
    const auto enclosure = result();
    const auto layer = moisture_on_floor(picture(enclosure));
    REQUIRE(layer);
    const auto bounds = std::count_if(layer->lines.begin(), layer->lines.end(), [](auto& line) { return line.bound; });
    CHECK(bounds == 2);
    for (const double at : {0.5, 0.58}) {
        const auto on_it = std::count_if(layer->lines.begin(), layer->lines.end(),
                                         [at](const LevelLine& line) { return std::abs(line.value - at) < 1e-6; });
        CHECK(on_it == 1);
    }
    CHECK(layer->lines[0].caption.startsWith(QStringLiteral("at least 50")));
    CHECK(layer->lines[1].caption.startsWith(QStringLiteral("at most 58")));
    CHECK(layer->lines.size() > 3); // round ones between
}

TEST_CASE("What is being dragged is shown, and judged by the target of before")
{
    const auto enclosure = result();
    assess::HeatCase drier = enclosure.heat[0];
    drier.detail.cool.humidity = {0.51, 0.54, 0.57};
    Picture dragged = picture(enclosure);
    dragged.stale = true;
    dragged.look = &drier;
    CHECK_FALSE(is_stale(dragged));
    const auto layer = moisture_on_floor(dragged);
    REQUIRE(layer);
    CHECK(tag_with(*layer, "cool").verdict == Verdict::fits);
    dragged.look = nullptr;
    CHECK(is_stale(dragged));
}

TEST_CASE("Condensation is told with its place, and only where there is any")
{
    auto enclosure = result();
    climate::CaseResult& detail = enclosure.heat[0].detail;
    detail.coldest_pane_c = 14.0;
    CHECK(moisture_on_floor(picture(enclosure))->note.isEmpty());
    detail.condensation = true;
    CHECK(moisture_on_floor(picture(enclosure))->note == QStringLiteral("condensation: coldest pane, 14 °C"));
    detail.panels = {{.plane = climate::Plane::back,
                      .columns = 2,
                      .rows = 1,
                      .along_m = 0.5,
                      .up_m = 0.4,
                      .from_z_m = 0.1,
                      .across_m = 0.5,
                      .inside_c = {13.2, 14.8},
                      .outside_c = {12.0, 12.0},
                      .closed = {1, 1}}};
    CHECK(moisture_on_floor(picture(enclosure))->note == QStringLiteral("condensation: back wall, 13 °C"));
}

TEST_CASE("A case without a solution has no layer of moisture, and warmth has no share in this one")
{
    auto enclosure = result();
    CHECK(heat_in_view(picture(enclosure)) == nullptr);
    CHECK(case_in_view(picture(enclosure)) == &enclosure.heat[0]);
    enclosure.heat[0].known = false;
    CHECK_FALSE(floor_layer(picture(enclosure)));
}
