#include "app/drawing/uv_layer.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace loam::drawing {

namespace {

constexpr int most_lines = 6;

// A level with as many digits as its step needs.
QString level_caption(double uvi, double step, const words::Formatter& formatter)
{
    const int decimals = step >= 1.0 ? 0 : (step >= 0.1 ? 1 : 2);
    return QObject::tr("UVI %1").arg(formatter.number(uvi, decimals));
}

Span span_of(const std::vector<double>& values)
{
    double most = 0.0;
    for (const double value : values) {
        most = std::isnan(value) ? most : std::max(most, value);
    }
    return {0.0, std::max(1.0, std::ceil(most))};
}

std::vector<LevelLine> lines_of(const Span& span, const words::Formatter& formatter)
{
    std::vector<double> levels = round_levels(span.low, span.high, most_lines);
    std::erase_if(levels, [](double level) { return level <= 0.0; }); // there is no line around the dark
    const double step = levels.empty() ? 1.0 : levels.front();
    std::vector<LevelLine> lines;
    lines.reserve(levels.size());
    for (const double level : levels) {
        lines.push_back({level, level_caption(level, step, formatter)});
    }
    return lines;
}

// A mark as large as a hand around the place.
climate::Rect around(const light::Point& place, const plan::Shell& shell)
{
    constexpr double half_m = 0.06;
    const double left_m = std::max(0.0, place.x_m - half_m);
    const double front_m = std::max(0.0, place.y_m - half_m);
    return {.x_m = left_m,
            .y_m = front_m,
            .length_m = std::min(shell.length_m, place.x_m + half_m) - left_m,
            .width_m = std::min(shell.width_m, place.y_m + half_m) - front_m};
}

} // namespace

QString uvi_caption(const std::optional<Range>& uvi, const words::Formatter& formatter)
{
    return uvi ? QObject::tr("UVI %1").arg(formatter.value(uvi->likely, words::Quantity::uv_index))
               : QObject::tr("UVI not known");
}

std::optional<FloorLayer> uv_on_floor(const Picture& picture)
{
    if (picture.result == nullptr || picture.result->uv.map.uvi.empty()) {
        return std::nullopt;
    }
    const assess::UvResult& uv = picture.result->uv;
    const light::UvGrid& grid = uv.map.grid;
    FloorLayer layer;
    layer.values.reserve(uv.map.uvi.size());
    for (const std::optional<Range>& uvi : uv.map.uvi) {
        layer.values.push_back(uvi ? uvi->likely : std::numeric_limits<double>::quiet_NaN());
    }
    layer.grid = {grid.nx, grid.ny, grid.dx_m, grid.dy_m};
    layer.span = span_of(layer.values);
    layer.lines = lines_of(layer.span, picture.formatter);
    layer.tags.push_back(
        {.area = around(uv.basking.back, picture.enclosure.shell),
         .caption = QObject::tr("basking place  %1").arg(uvi_caption(uv.uvi_at_basking, picture.formatter)),
         .verdict = uv.needed ? uv.judgement.verdict : (uv.uvi_at_basking ? Verdict::fits : Verdict::not_known),
         .over_area = true});
    layer.low = QObject::tr("UVI %1").arg(picture.formatter.number(layer.span.low, 0));
    layer.high = QObject::tr("UVI %1").arg(picture.formatter.number(layer.span.high, 0));
    layer.legend = QObject::tr("at an animal's back");
    return layer;
}

std::optional<std::size_t> uv_cell_at(const light::UvMap& map, double x_m, double y_m)
{
    const light::UvGrid& grid = map.grid;
    const double length_m = static_cast<double>(grid.nx) * grid.dx_m;
    const double width_m = static_cast<double>(grid.ny) * grid.dy_m;
    if (map.uvi.empty() || x_m < 0.0 || y_m < 0.0 || x_m > length_m || y_m > width_m) {
        return std::nullopt;
    }
    const auto column = std::min(static_cast<std::size_t>(x_m / grid.dx_m), grid.nx - 1);
    const auto row = std::min(static_cast<std::size_t>(y_m / grid.dy_m), grid.ny - 1);
    return row * grid.nx + column;
}

} // namespace loam::drawing
