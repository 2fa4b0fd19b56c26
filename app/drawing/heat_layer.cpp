#include "app/drawing/heat_layer.hpp"

#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/drawing/dimensions.hpp"
#include "app/drawing/field_reading.hpp"
#include "app/drawing/isolines.hpp"
#include "app/drawing/levels.hpp"
#include "app/drawing/shapes.hpp"
#include "app/drawing/verdict_mark.hpp"
#include "app/words/verdicts.hpp"

namespace loam::drawing {

namespace {

constexpr double least_span_k = 4.0;

QRectF rect_on_plan(const Frame& frame, const climate::Rect& area)
{
    return {on_plan(frame, area.x_m, area.y_m + area.width_m), on_plan(frame, area.x_m + area.length_m, area.y_m)};
}

QPainterPath path_of(const Line& line, const Frame& frame)
{
    QPainterPath path(on_plan(frame, line.front().x(), line.front().y()));
    for (const QPointF& point : line) {
        path.lineTo(on_plan(frame, point.x(), point.y()));
    }
    return path;
}

} // namespace

namespace {

bool is_in_view(const assess::HeatCase& heat, const Picture& picture)
{
    return QString::fromStdString(heat.id) == picture.case_id && heat.known && !heat.detail.floor.ground_c.empty();
}

} // namespace

const assess::HeatCase* case_in_view(const Picture& picture)
{
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

bool is_stale(const Picture& picture)
{
    return picture.stale && (picture.look == nullptr || case_in_view(picture) != picture.look);
}

Span colour_span(const assess::HeatCase& heat)
{
    const auto& field = heat.detail.floor.ground_c;
    const auto [low, high] = std::minmax_element(field.begin(), field.end());
    const double middle = (*low + *high) / 2.0;
    const double half = std::max(least_span_k, *high - *low) / 2.0;
    return {std::floor(middle - half), std::ceil(middle + half)};
}

void paint_floor_heat(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = case_in_view(picture);
    if (heat == nullptr) {
        return;
    }
    const climate::FloorField& floor = heat->detail.floor;
    const Span span = colour_span(*heat);
    painter.save();
    painter.setClipRect(frame.plan);
    if (picture.colours) {
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.setOpacity(is_stale(picture) ? 0.45 : 0.85);
        // The field's own extent: a stale one may be of a box with other sides.
        const climate::Rect extent{.length_m = static_cast<double>(floor.nx) * floor.dx_m,
                                   .width_m = static_cast<double>(floor.ny) * floor.dy_m};
        painter.drawImage(rect_on_plan(frame, extent), field_image(floor.ground_c, floor.nx, floor.ny, span));
        painter.setOpacity(1.0);
    }
    const Grid grid{floor.nx, floor.ny, floor.dx_m, floor.dy_m};
    for (const double level : levels_c(span, picture.formatter)) {
        const QColor ink = picture.colours ? ink_on(colour_at(span.share(level))) : picture.inks.ink;
        for (const Line& line : isolines(floor.ground_c, grid, level)) {
            painter.setPen(QPen(ink, 1.0, Qt::SolidLine));
            painter.setBrush(Qt::NoBrush);
            painter.drawPath(path_of(line, frame));
        }
    }
    painter.restore();
}

QString zone_caption(const assess::ZoneResult& zone, const words::Formatter& formatter)
{
    return words::zone(zone.zone) + QStringLiteral("  ") + whole_degrees(zone.temperature_c.likely, formatter);
}

// Warm and cool tags stand at the front edge, the basking tag over its patch, so that they don't meet.
QRectF tag_of(const assess::ZoneResult& zone, const Frame& frame, const QFont& font, const words::Formatter& formatter)
{
    const QFontMetricsF metrics(font);
    const QRectF box = rect_on_plan(frame, zone.area);
    const QSizeF size(metrics.horizontalAdvance(zone_caption(zone, formatter)) + metrics.height() + 12.0,
                      metrics.height() + 4.0);
    const double left = std::clamp(box.center().x() - size.width() / 2.0, frame.plan.left() + 2.0,
                                   std::max(frame.plan.left() + 2.0, frame.plan.right() - size.width() - 2.0));
    const double top = zone.zone == assess::Zone::basking
                           ? std::max(frame.plan.top() + 2.0, box.top() - size.height() - 6.0)
                           : frame.plan.bottom() - size.height() - 4.0;
    return {QPointF(left, top), size};
}

std::vector<QRectF> zone_tags(const Frame& frame, const Picture& picture, const QFont& font)
{
    std::vector<QRectF> tags;
    if (const assess::HeatCase* heat = case_in_view(picture)) {
        for (const assess::ZoneResult& zone : heat->zones) {
            tags.push_back(tag_of(zone, frame, font, picture.formatter));
        }
    }
    return tags;
}

void paint_zones(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = case_in_view(picture);
    if (heat == nullptr) {
        return;
    }
    const double mark = QFontMetricsF(painter.font()).height() * 0.75;
    for (const assess::ZoneResult& zone : heat->zones) {
        painter.setPen(QPen(picture.inks.ink, 1.2, Qt::DashLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(rect_on_plan(frame, zone.area).adjusted(2, 2, -2, -2), 4, 4);
    }
    for (const assess::ZoneResult& zone : heat->zones) {
        const QRectF tag = tag_of(zone, frame, painter.font(), picture.formatter);
        painter.setPen(QPen(picture.inks.line, 1.0));
        painter.setBrush(picture.inks.paper);
        painter.drawRoundedRect(tag, 4, 4);
        paint_verdict_mark(painter, QRectF(tag.left() + 5.0, tag.center().y() - mark / 2.0, mark, mark),
                           zone.judgement.verdict, picture.inks.on_dark);
        painter.setPen(picture.inks.ink);
        painter.drawText(tag.adjusted(mark + 9.0, 0, -3.0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                         zone_caption(zone, picture.formatter));
    }
}

void paint_isoline_labels(QPainter& painter, const Frame& frame, const Picture& picture,
                          const std::vector<Shape>& shapes)
{
    const assess::HeatCase* heat = case_in_view(picture);
    if (heat == nullptr) {
        return;
    }
    std::vector<QRectF> taken = zone_tags(frame, picture, painter.font());
    for (const Shape& shape : shapes) {
        if (!shape.in_section && shape.kind != ShapeKind::cover) {
            taken.push_back(shape.outline.boundingRect());
        }
    }
    const climate::FloorField& floor = heat->detail.floor;
    const Grid grid{floor.nx, floor.ny, floor.dx_m, floor.dy_m};
    const Span span = colour_span(*heat);
    const QFontMetricsF metrics(painter.font());
    const QRectF inside = frame.plan.adjusted(2, 2, -2, -2);
    for (const double level : levels_c(span, picture.formatter)) {
        const QString text = whole_degrees(level, picture.formatter);
        const QSizeF size(metrics.horizontalAdvance(text) + 8.0, metrics.height());
        const QColor ground = picture.colours ? colour_at(span.share(level)) : picture.inks.paper;
        for (const Line& line : isolines(floor.ground_c, grid, level)) {
            for (const QPointF& point : line) {
                const QPointF centre = on_plan(frame, point.x(), point.y());
                const QRectF box(centre - QPointF(size.width() / 2.0, size.height() / 2.0), size);
                const auto meets = [&box](const QRectF& other) { return other.intersects(box); };
                if (inside.contains(box) && std::none_of(taken.begin(), taken.end(), meets)) {
                    paint_label(painter, centre, text, picture.colours ? ink_on(ground) : picture.inks.ink, ground);
                    taken.push_back(box);
                    break;
                }
            }
        }
    }
}

void paint_section_heat(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = case_in_view(picture);
    if (heat == nullptr || !picture.colours) {
        return;
    }
    const climate::SectionField& section = heat->detail.section;
    const Span span = colour_span(*heat);
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

void paint_heat_legend(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = case_in_view(picture);
    if (heat == nullptr || !picture.colours) {
        return;
    }
    const Span span = colour_span(*heat);
    const double text = QFontMetricsF(painter.font()).height();
    const double width = std::min(220.0, frame.legend.width() * 0.4);
    const QRectF bar(frame.legend.right() - width - 30.0, frame.legend.center().y() - text / 2.0, width, text * 0.6);
    for (int pixel = 0; pixel < static_cast<int>(width); ++pixel) {
        painter.fillRect(QRectF(bar.left() + pixel, bar.top(), 1.5, bar.height()), colour_at(pixel / width));
    }
    painter.setPen(QPen(picture.inks.line, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
    painter.setPen(picture.inks.ink);
    const QRectF under(bar.left() - 30.0, bar.bottom() + 1.0, bar.width() + 60.0, text);
    painter.drawText(under, Qt::AlignLeft, whole_degrees(span.low, picture.formatter));
    painter.drawText(under, Qt::AlignRight, whole_degrees(span.high, picture.formatter));
    painter.setPen(picture.inks.faint);
    painter.drawText(under, Qt::AlignHCenter, QObject::tr("at ground level, likely"));
}

} // namespace loam::drawing
