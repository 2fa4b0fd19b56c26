#include "app/drawing/floor_layer.hpp"

#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/drawing/dimensions.hpp"
#include "app/drawing/heat_layer.hpp"
#include "app/drawing/moisture_layer.hpp"
#include "app/drawing/uv_layer.hpp"
#include "app/drawing/verdict_mark.hpp"

namespace loam::drawing {

namespace {

constexpr Qt::BrushStyle unknown_pattern = Qt::FDiagPattern; // a cover's strokes lean the other way

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

// The cells that are not known, as one shape.
QPainterPath unknown_area(const FloorLayer& layer, const Frame& frame)
{
    QPainterPath area;
    for (std::size_t row = 0; row < layer.grid.rows; ++row) {
        for (std::size_t column = 0; column < layer.grid.columns; ++column) {
            if (std::isnan(layer.values[row * layer.grid.columns + column])) {
                area.addRect(rect_on_plan(frame, {.x_m = static_cast<double>(column) * layer.grid.step_x,
                                                  .y_m = static_cast<double>(row) * layer.grid.step_y,
                                                  .length_m = layer.grid.step_x,
                                                  .width_m = layer.grid.step_y}));
            }
        }
    }
    return area;
}

bool has_unknown(const FloorLayer& layer)
{
    return std::any_of(layer.values.begin(), layer.values.end(), [](double value) { return std::isnan(value); });
}

// Tags stand over their area, or at the front edge.
QRectF box_of(const FloorTag& tag, const Frame& frame, const QFont& font)
{
    const QFontMetricsF metrics(font);
    const QRectF area = rect_on_plan(frame, tag.area);
    const QSizeF size(metrics.horizontalAdvance(tag.caption) + (tag.verdict ? metrics.height() : 0.0) + 12.0,
                      metrics.height() + 4.0);
    const double left = std::clamp(area.center().x() - size.width() / 2.0, frame.plan.left() + 2.0,
                                   std::max(frame.plan.left() + 2.0, frame.plan.right() - size.width() - 2.0));
    const double top = tag.over_area ? std::max(frame.plan.top() + 2.0, area.top() - size.height() - 6.0)
                                     : frame.plan.bottom() - size.height() - 4.0;
    return {QPointF(left, top), size};
}

} // namespace

std::optional<FloorLayer> floor_layer(const Picture& picture)
{
    switch (picture.layer) {
    case Layer::heat:
        return heat_on_floor(picture);
    case Layer::uv:
        return uv_on_floor(picture);
    case Layer::moisture:
        return moisture_on_floor(picture);
    }
    return std::nullopt;
}

void paint_floor(QPainter& painter, const Frame& frame, const Picture& picture, const FloorLayer& layer)
{
    painter.save();
    painter.setClipRect(frame.plan);
    if (picture.colours) {
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.setOpacity(is_stale(picture) ? 0.45 : 0.85);
        // The field's own extent: a stale one may be of a box with other sides.
        const climate::Rect extent{.length_m = static_cast<double>(layer.grid.columns) * layer.grid.step_x,
                                   .width_m = static_cast<double>(layer.grid.rows) * layer.grid.step_y};
        painter.drawImage(rect_on_plan(frame, extent),
                          field_image(layer.values, layer.grid.columns, layer.grid.rows, layer.span));
        painter.setOpacity(1.0);
    }
    for (const LevelLine& level : layer.lines) {
        const QColor ink = picture.colours ? ink_on(colour_at(layer.span.share(level.value))) : picture.inks.ink;
        for (const Line& line : isolines(layer.values, layer.grid, level.value)) {
            painter.setPen(QPen(ink, level.bound ? 2.4 : 1.0, Qt::SolidLine));
            painter.setBrush(Qt::NoBrush);
            painter.drawPath(path_of(line, frame));
        }
    }
    if (has_unknown(layer)) {
        const QPainterPath area = unknown_area(layer, frame);
        painter.setRenderHint(QPainter::Antialiasing, false); // smoothed edges would show as a grid
        painter.fillPath(area, picture.inks.paper);
        painter.fillPath(area, QBrush(picture.inks.faint, unknown_pattern));
    }
    painter.restore();
}

std::vector<QRectF> tag_boxes(const Frame& frame, const FloorLayer& layer, const QFont& font)
{
    std::vector<QRectF> boxes;
    boxes.reserve(layer.tags.size());
    for (const FloorTag& tag : layer.tags) {
        boxes.push_back(box_of(tag, frame, font));
    }
    return boxes;
}

void paint_tags(QPainter& painter, const Frame& frame, const Picture& picture, const FloorLayer& layer)
{
    const double mark = QFontMetricsF(painter.font()).height() * 0.75;
    for (const FloorTag& tag : layer.tags) {
        if (tag.area.length_m <= 0.0) {
            continue;
        }
        painter.setPen(QPen(picture.inks.ink, 1.2, Qt::DashLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(rect_on_plan(frame, tag.area).adjusted(2, 2, -2, -2), 4, 4);
    }
    for (const FloorTag& tag : layer.tags) {
        const QRectF box = box_of(tag, frame, painter.font());
        painter.setPen(QPen(picture.inks.line, 1.0));
        painter.setBrush(picture.inks.paper);
        painter.drawRoundedRect(box, 4, 4);
        if (tag.verdict) {
            paint_verdict_mark(painter, QRectF(box.left() + 5.0, box.center().y() - mark / 2.0, mark, mark),
                               *tag.verdict, picture.inks.on_dark);
        }
        painter.setPen(picture.inks.ink);
        painter.drawText(box.adjusted(tag.verdict ? mark + 9.0 : 6.0, 0, -3.0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                         tag.caption);
    }
}

void paint_line_labels(QPainter& painter, const Frame& frame, const Picture& picture, const FloorLayer& layer,
                       const std::vector<Shape>& shapes)
{
    std::vector<QRectF> taken = tag_boxes(frame, layer, painter.font());
    for (const Shape& shape : shapes) {
        if (!shape.in_section && shape.kind != ShapeKind::cover) {
            taken.push_back(shape.outline.boundingRect());
        }
    }
    const QFontMetricsF metrics(painter.font());
    const QRectF inside = frame.plan.adjusted(2, 2, -2, -2);
    for (const LevelLine& level : layer.lines) {
        const QSizeF size(metrics.horizontalAdvance(level.caption) + 8.0, metrics.height());
        const QColor ground = picture.colours ? colour_at(layer.span.share(level.value)) : picture.inks.paper;
        for (const Line& line : isolines(layer.values, layer.grid, level.value)) {
            for (const QPointF& point : line) {
                const QPointF centre = on_plan(frame, point.x(), point.y());
                const QRectF box(centre - QPointF(size.width() / 2.0, size.height() / 2.0), size);
                const auto meets = [&box](const QRectF& other) { return other.intersects(box); };
                if (inside.contains(box) && std::none_of(taken.begin(), taken.end(), meets)) {
                    paint_label(painter, centre, level.caption, picture.colours ? ink_on(ground) : picture.inks.ink,
                                ground);
                    taken.push_back(box);
                    break;
                }
            }
        }
    }
}

namespace {

// A hatched box and its words, left of the bar.
void paint_unknown_legend(QPainter& painter, const QRectF& bar, const Picture& picture)
{
    const QString text = QObject::tr("not known");
    const QFontMetricsF metrics(painter.font());
    const double width = metrics.horizontalAdvance(text);
    const QRectF swatch(bar.left() - 46.0 - std::max(width, 28.0), bar.top(), 28.0, bar.height());
    painter.setPen(QPen(picture.inks.line, 1.0));
    painter.setBrush(QBrush(picture.inks.faint, unknown_pattern));
    painter.drawRect(swatch);
    painter.setPen(picture.inks.ink);
    painter.drawText(QRectF(swatch.left(), bar.bottom() + 1.0, width + 2.0, metrics.height()), Qt::AlignLeft, text);
}

// A drop and its words, left of the bar.
void paint_note(QPainter& painter, const QRectF& bar, const Picture& picture, const QString& note)
{
    const QFontMetricsF metrics(painter.font());
    const double width = metrics.horizontalAdvance(note);
    const QRectF text(bar.left() - 46.0 - width, bar.bottom() + 1.0, width + 2.0, metrics.height());
    paint_drop(painter, text.topLeft() + QPointF(-8.0, metrics.height() / 2.0), picture.inks);
    painter.setPen(picture.inks.ink);
    painter.drawText(text, Qt::AlignLeft, note);
}

} // namespace

void paint_legend(QPainter& painter, const Frame& frame, const Picture& picture, const FloorLayer& layer)
{
    if (!picture.colours) {
        return;
    }
    const double text = QFontMetricsF(painter.font()).height();
    const double width = std::min(220.0, frame.legend.width() * 0.4);
    const QRectF bar(frame.legend.right() - width - 30.0, frame.legend.center().y() - text / 2.0, width, text * 0.6);
    for (int pixel = 0; pixel < static_cast<int>(width); ++pixel) {
        painter.fillRect(QRectF(bar.left() + pixel, bar.top(), 1.5, bar.height()),
                         colour_at(layer.span.falling ? 1.0 - pixel / width : pixel / width));
    }
    painter.setPen(QPen(picture.inks.line, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
    painter.setPen(picture.inks.ink);
    const QRectF under(bar.left() - 30.0, bar.bottom() + 1.0, bar.width() + 60.0, text);
    painter.drawText(under, Qt::AlignLeft, layer.low);
    painter.drawText(under, Qt::AlignRight, layer.high);
    painter.setPen(picture.inks.faint);
    painter.drawText(under, Qt::AlignHCenter, layer.legend);
    if (has_unknown(layer)) {
        paint_unknown_legend(painter, bar, picture);
    } else if (!layer.note.isEmpty()) {
        paint_note(painter, bar, picture, layer.note);
    }
}

} // namespace loam::drawing
