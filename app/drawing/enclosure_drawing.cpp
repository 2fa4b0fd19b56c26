#include "app/drawing/enclosure_drawing.hpp"

#include <QFontMetricsF>
#include <algorithm>

#include "app/drawing/dimensions.hpp"
#include "app/drawing/grid.hpp"
#include "app/drawing/hatch.hpp"
#include "app/drawing/heat_layer.hpp"
#include "app/drawing/in_hand.hpp"
#include "app/drawing/moisture_layer.hpp"
#include "app/drawing/names.hpp"
#include "app/drawing/section_lines.hpp"
#include "app/drawing/shapes.hpp"
#include "app/drawing/wall_layer.hpp"

namespace loam::drawing {

namespace {

// Covers let what lies below be seen through their hatch; fittings stand before the bed.
void paint_shape_in_lines(QPainter& painter, const Shape& shape, const Picture& picture)
{
    constexpr double apart_px = 6.0;
    QPen pen(picture.inks.ink, 1.1);
    painter.setBrush(shape.kind == ShapeKind::fitting ? QBrush(picture.inks.paper) : QBrush(Qt::NoBrush));
    if (shape.kind == ShapeKind::cover) {
        paint_hatch(painter, shape.outline, Hatch::falling, apart_px, picture.inks.ink);
        pen.setStyle(Qt::DashLine);
    } else if (shape.kind == ShapeKind::mat) {
        paint_hatch(painter, shape.outline, Hatch::crossed, apart_px / 2.0, picture.inks.ink);
    }
    painter.setPen(pen);
    painter.drawPolygon(shape.outline);
}

void paint_lamp_cross(QPainter& painter, const Shape& shape)
{
    const QRectF box = shape.outline.boundingRect();
    painter.drawLine(box.topLeft(), box.bottomRight());
    painter.drawLine(box.topRight(), box.bottomLeft());
}

void paint_shape(QPainter& painter, const Shape& shape, const Picture& picture)
{
    const bool crossed = shape.kind == ShapeKind::lamp && !shape.in_section;
    if (!picture.colours) {
        paint_shape_in_lines(painter, shape, picture);
        if (crossed) {
            paint_lamp_cross(painter, shape);
        }
        return;
    }
    const Inks& inks = picture.inks;
    const bool lit = !picture.highlighted.isEmpty() && shape.id == picture.highlighted;
    QColor fill = inks.paper;
    fill.setAlphaF(0.82F);
    QPen pen(lit ? inks.accent : inks.ink, lit ? 2.6 : 1.1);
    switch (shape.kind) {
    case ShapeKind::cover:
        painter.setBrush(QBrush(inks.faint, Qt::BDiagPattern));
        pen.setStyle(Qt::DashLine);
        break;
    case ShapeKind::mat:
        painter.setBrush(QBrush(inks.ink, Qt::DiagCrossPattern));
        pen.setStyle(Qt::DotLine);
        break;
    case ShapeKind::lamp:
        // What a lamp gives is strongest below it: there the light shows through.
        painter.setBrush(picture.layer == Layer::uv && !shape.in_section ? QBrush(Qt::NoBrush) : QBrush(fill));
        break;
    default:
        painter.setBrush(fill);
        break;
    }
    painter.setPen(pen);
    painter.drawPolygon(shape.outline);
    if (crossed) {
        paint_lamp_cross(painter, shape);
    }
}

void paint_walls(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const plan::Shell& shell = picture.enclosure.shell;
    const double wall = std::max(2.0, shell.wall_thickness_m.value_or(0.005) * frame.pixels_per_m);
    painter.setBrush(Qt::NoBrush);
    QPen pen(picture.inks.glass, wall);
    pen.setJoinStyle(Qt::MiterJoin);
    painter.setPen(pen);
    painter.drawRect(frame.plan.adjusted(-wall / 2, -wall / 2, wall / 2, wall / 2));
    const QRectF outer = frame.section.adjusted(-wall / 2, 0, wall / 2, wall / 2);
    painter.drawPolyline(QPolygonF({outer.topLeft(), outer.bottomLeft(), outer.bottomRight(), outer.topRight()}));
    if (shell.top.kind != plan::TopKind::open) {
        pen.setStyle(shell.top.kind == plan::TopKind::mesh ? Qt::DotLine : Qt::SolidLine);
        painter.setPen(pen);
        painter.drawLine(outer.topLeft(), outer.topRight());
    }
}

// Layer by layer, hatched this way and that.
void paint_bed_in_lines(QPainter& painter, const Frame& frame, const Picture& picture)
{
    constexpr double apart_px = 7.0;
    const double length_m = picture.enclosure.shell.length_m;
    double left_m = 0.0;
    double right_m = 0.0;
    bool rising = true;
    for (const plan::SubstrateLayer& layer : picture.enclosure.substrate) {
        const double left_top_m = left_m + layer.depth_m;
        const double right_top_m = right_m + layer.depth_at_right_m.value_or(layer.depth_m);
        const QPolygonF outline({on_section(frame, 0, left_m), on_section(frame, 0, left_top_m),
                                 on_section(frame, length_m, right_top_m), on_section(frame, length_m, right_m)});
        paint_hatch(painter, outline, rising ? Hatch::rising : Hatch::falling, apart_px, picture.inks.ink);
        painter.setPen(QPen(picture.inks.ink, 0.8));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolygon(outline);
        left_m = left_top_m;
        right_m = right_top_m;
        rising = !rising;
    }
}

void paint_bed(QPainter& painter, const Frame& frame, const Picture& picture)
{
    if (!picture.colours) {
        paint_bed_in_lines(painter, frame, picture);
        return;
    }
    const plan::Shell& shell = picture.enclosure.shell;
    const QPolygonF bed({on_section(frame, 0, 0), on_section(frame, 0, bed_top_m(picture.enclosure, 0)),
                         on_section(frame, shell.length_m, bed_top_m(picture.enclosure, shell.length_m)),
                         on_section(frame, shell.length_m, 0)});
    painter.setPen(QPen(picture.inks.ink, 1.0));
    painter.setBrush(heat_in_view(picture) != nullptr ? QBrush(Qt::NoBrush)
                                                      : QBrush(picture.inks.line, Qt::Dense6Pattern));
    painter.drawPolygon(bed);
}

void paint_figures(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const plan::Shell& shell = picture.enclosure.shell;
    const words::Formatter& formatter = picture.formatter;
    const double text = QFontMetricsF(painter.font()).height();
    if (!frame.unfolded) {
        paint_width_dimension(painter, frame.plan.left(), frame.plan.right(), frame.plan.bottom() + 1.3 * text,
                              formatter.value(shell.length_m, words::Quantity::length), picture.inks);
        paint_height_dimension(painter, frame.plan.top(), frame.plan.bottom(), frame.plan.left() - 1.5 * text,
                               formatter.value(shell.width_m, words::Quantity::length), picture.inks);
    }
    paint_height_dimension(painter, frame.section.top(), frame.section.bottom(), frame.section.left() - 1.5 * text,
                           formatter.value(shell.height_m, words::Quantity::length), picture.inks);
    const double bed_m = bed_top_m(picture.enclosure, 0.0);
    if (bed_m > 0.0) {
        paint_label(painter,
                    on_section(frame, shell.length_m * 0.5, bed_top_m(picture.enclosure, shell.length_m / 2) / 2.0),
                    QObject::tr("bed %1").arg(
                        formatter.value(bed_top_m(picture.enclosure, shell.length_m / 2), words::Quantity::length)),
                    picture.inks.ink, picture.inks.paper);
    }
    painter.setPen(picture.inks.faint);
    if (frame.unfolded) {
        const QRectF left = panel_rect(frame, shell, climate::Plane::left);
        const QRectF front = panel_rect(frame, shell, climate::Plane::front);
        painter.drawText(QPointF(left.left(), front.bottom() + 1.2 * text),
                         QObject::tr("Floor, and the walls folded out around it; front below"));
        painter.drawText(QPointF(frame.top.left(), frame.top.bottom() + 1.2 * text),
                         QObject::tr("Top, seen from above"));
    } else {
        painter.drawText(QPointF(frame.plan.left(), frame.plan.bottom() + 3.1 * text),
                         QObject::tr("Plan, seen from above; front below"));
    }
    painter.drawText(QPointF(frame.section.left(), frame.section.bottom() + 3.1 * text),
                     QObject::tr("Section, seen from the front"));
    painter.setPen(picture.inks.ink);
    paint_width_dimension(painter, frame.section.left(), frame.section.right(), frame.section.bottom() + 1.3 * text,
                          formatter.value(shell.length_m, words::Quantity::length), picture.inks);
}

} // namespace

void paint(QPainter& painter, const QRectF& area, const Picture& picture)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(picture.font);
    painter.fillRect(area, picture.inks.paper);
    const Frame frame = lay_out(picture, area);
    const std::optional<FloorLayer> layer = floor_layer(picture);
    if (layer) {
        paint_floor(painter, frame, picture, *layer);
    }
    if (const assess::HeatCase* heat = heat_in_view(picture)) {
        paint_panels(painter, frame, picture, colour_span(picture, *heat));
    }
    paint_section_heat(painter, frame, picture);
    paint_section_lines(painter, frame, picture);
    paint_bed(painter, frame, picture);
    paint_walls(painter, frame, picture);
    paint_condensation(painter, frame, picture);
    if (picture.grid) {
        paint_grid(painter, frame, picture);
    }
    const std::vector<Shape> shapes = shapes_of(picture.enclosure, frame);
    for (const Shape& shape : shapes) {
        paint_shape(painter, shape, picture);
    }
    paint_names(painter, frame, picture, shapes,
                layer ? tag_boxes(frame, *layer, painter.font()) : std::vector<QRectF>());
    if (layer) {
        paint_tags(painter, frame, picture, *layer);
        paint_line_labels(painter, frame, picture, *layer, shapes);
    }
    paint_section_line_labels(painter, frame, picture, shapes);
    paint_figures(painter, frame, picture);
    if (picture.in_view) {
        painter.fillRect(frame.legend.adjusted(-8.0, 0.0, 8.0, 0.0), picture.inks.paper); // the drawing may reach there
    }
    painter.setPen(picture.inks.ink);
    paint_scale_bar(painter, frame.legend, frame.pixels_per_m, picture.formatter, picture.inks);
    if (layer) {
        paint_legend(painter, frame, picture, *layer);
    }
    paint_in_hand(painter, frame, picture);
    painter.restore();
}

} // namespace loam::drawing
