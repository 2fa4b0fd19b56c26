#include "app/drawing/heat_layer.hpp"

#include <algorithm>
#include <cmath>

#include "app/drawing/field_reading.hpp"
#include "app/drawing/levels.hpp"
#include "app/drawing/wall_layer.hpp"
#include "app/words/verdicts.hpp"

namespace loam::drawing {

namespace {

constexpr double least_span_k = 4.0;

bool is_in_view(const assess::HeatCase& heat, const Picture& picture)
{
    return QString::fromStdString(heat.id) == picture.case_id && heat.known && !heat.detail.floor.ground_c.empty();
}

} // namespace

const assess::HeatCase* case_in_view(const Picture& picture)
{
    if (picture.layer == Layer::uv) {
        return nullptr; // alike in every case
    }
    if (picture.look != nullptr && is_in_view(*picture.look, picture)) {
        return picture.look;
    }
    if (picture.result == nullptr) {
        return nullptr;
    }
    const auto& cases = picture.result->heat;
    const auto found = std::find_if(cases.begin(), cases.end(),
                                    [&](const assess::HeatCase& heat) { return is_in_view(heat, picture); });
    return found != cases.end() ? &*found : nullptr;
}

const assess::HeatCase* heat_in_view(const Picture& picture)
{
    return picture.layer == Layer::heat ? case_in_view(picture) : nullptr;
}

bool is_stale(const Picture& picture)
{
    return picture.stale && (picture.look == nullptr || case_in_view(picture) != picture.look);
}

Span colour_span(const Picture& picture, const assess::HeatCase& heat)
{
    const auto& field = heat.detail.floor.ground_c;
    const auto [lowest, highest] = std::minmax_element(field.begin(), field.end());
    const auto walls = picture.unfolded ? wall_span(picture) : std::nullopt;
    const double low = walls ? std::min(*lowest, walls->low) : *lowest;
    const double high = walls ? std::max(*highest, walls->high) : *highest;
    const double middle = (low + high) / 2.0;
    const double half = std::max(least_span_k, high - low) / 2.0;
    return {std::floor(middle - half), std::ceil(middle + half)};
}

std::optional<FloorLayer> heat_on_floor(const Picture& picture)
{
    const assess::HeatCase* heat = heat_in_view(picture);
    if (heat == nullptr) {
        return std::nullopt;
    }
    const climate::FloorField& floor = heat->detail.floor;
    FloorLayer layer;
    layer.values = floor.ground_c;
    layer.grid = {floor.nx, floor.ny, floor.dx_m, floor.dy_m};
    layer.span = colour_span(picture, *heat);
    for (const double level_c : levels_c(layer.span, picture.formatter)) {
        layer.lines.push_back({level_c, whole_degrees(level_c, picture.formatter)});
    }
    for (const assess::ZoneResult& zone : heat->zones) {
        if (picture.unfolded) {
            break; // in so small a plan tags would cover it
        }
        layer.tags.push_back({.area = zone.area,
                              .caption = words::zone(zone.zone) + QStringLiteral("  ") +
                                         whole_degrees(zone.temperature_c.likely, picture.formatter),
                              .verdict = zone.judgement.verdict,
                              .over_area = zone.zone == assess::Zone::basking});
    }
    layer.low = whole_degrees(layer.span.low, picture.formatter);
    layer.high = whole_degrees(layer.span.high, picture.formatter);
    layer.legend =
        picture.unfolded ? QObject::tr("floor and inner faces, likely") : QObject::tr("at ground level, likely");
    return layer;
}

void paint_section_heat(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = heat_in_view(picture);
    if (heat == nullptr || !picture.colours) {
        return;
    }
    const climate::SectionField& section = heat->detail.section;
    const Span span = colour_span(picture, *heat);
    const plan::Shell& shell = picture.enclosure.shell;
    painter.save();
    painter.setClipRect(frame.section);
    painter.setOpacity(is_stale(picture) ? 0.25 : 0.45);
    const double middle_m = shell.height_m / 2.0;
    painter.fillRect(QRectF(on_section(frame, 0.0, shell.height_m), on_section(frame, shell.length_m, middle_m)),
                     colour_at(span.share(section.upper_air_c)));
    painter.fillRect(QRectF(on_section(frame, 0.0, middle_m), on_section(frame, shell.length_m, 0.0)),
                     colour_at(span.share(section.lower_air_c)));
    painter.setOpacity(is_stale(picture) ? 0.45 : 0.9);
    painter.setRenderHint(QPainter::Antialiasing, false); // smoothed edges would show as a grid
    const double step_m = section_step_m(heat->detail);
    for (std::size_t row = 0; row < section.nz; ++row) {
        const double below_m = row == 0 ? 0.0 : (section.z_m[row - 1] + section.z_m[row]) / 2.0;
        const double above_m =
            row + 1 == section.nz ? 2.0 * section.z_m[row] - below_m : (section.z_m[row] + section.z_m[row + 1]) / 2.0;
        for (std::size_t column = 0; column < section.nx; ++column) {
            const double x_m = static_cast<double>(column) * step_m;
            const double top_m = bed_top_m(picture.enclosure, x_m + step_m / 2.0);
            if (section.z_m[row] > top_m) {
                continue;
            }
            const bool last = row + 1 == section.nz || section.z_m[row + 1] > top_m;
            painter.fillRect(
                QRectF(on_section(frame, x_m, last ? top_m : above_m), on_section(frame, x_m + step_m, below_m)),
                colour_at(span.share(section.temperature_c.at(row * section.nx + column))));
        }
    }
    painter.restore();
}

} // namespace loam::drawing
