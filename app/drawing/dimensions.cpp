#include "app/drawing/dimensions.hpp"

#include <QFontMetricsF>
#include <array>

namespace loam::drawing {

namespace {

constexpr double tick_px = 4.0;

void paint_tick(QPainter& painter, const QPointF& at)
{
    painter.drawLine(at + QPointF(-tick_px, tick_px), at + QPointF(tick_px, -tick_px));
}

} // namespace

void paint_width_dimension(QPainter& painter, double left, double right, double y, const QString& figure,
                           const Inks& inks)
{
    painter.setPen(QPen(inks.faint, 1.0));
    painter.drawLine(QPointF(left, y), QPointF(right, y));
    paint_tick(painter, {left, y});
    paint_tick(painter, {right, y});
    paint_label(painter, {(left + right) / 2.0, y}, figure, inks.ink, inks.paper);
}

void paint_height_dimension(QPainter& painter, double top, double bottom, double x, const QString& figure,
                            const Inks& inks)
{
    painter.setPen(QPen(inks.faint, 1.0));
    painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    paint_tick(painter, {x, top});
    paint_tick(painter, {x, bottom});
    painter.save();
    painter.translate(x, (top + bottom) / 2.0);
    painter.rotate(-90.0);
    paint_label(painter, {0.0, 0.0}, figure, inks.ink, inks.paper);
    painter.restore();
}

double scale_bar_m(double width_px, double pixels_per_m, const words::Formatter& formatter)
{
    constexpr double inch_m = 0.0254;
    const bool us = formatter.system() == words::UnitSystem::us;
    const std::array<double, 5> lengths =
        us ? std::array<double, 5>{3 * inch_m, 6 * inch_m, 12 * inch_m, 24 * inch_m, 48 * inch_m}
           : std::array<double, 5>{0.05, 0.1, 0.2, 0.5, 1.0};
    double length_m = lengths.front();
    for (const double candidate : lengths) {
        if (candidate * pixels_per_m <= width_px / 4.0) {
            length_m = candidate;
        }
    }
    return length_m;
}

void paint_scale_bar(QPainter& painter, const QRectF& box, double pixels_per_m, const words::Formatter& formatter,
                     const Inks& inks)
{
    const double length_m = scale_bar_m(box.width(), pixels_per_m, formatter);
    const QPointF start(box.left(), box.center().y());
    const QPointF end = start + QPointF(length_m * pixels_per_m, 0.0);
    painter.setPen(QPen(inks.ink, 1.4));
    painter.drawLine(start, end);
    for (const QPointF& at : {start, end}) {
        painter.drawLine(at - QPointF(0, tick_px), at + QPointF(0, tick_px));
    }
    painter.drawText(end + QPointF(8.0, QFontMetricsF(painter.font()).ascent() / 2.0 - 1.0),
                     formatter.value(length_m, words::Quantity::length));
}

void paint_label(QPainter& painter, const QPointF& centre, const QString& text, const QColor& ink, const QColor& ground)
{
    const QFontMetricsF metrics(painter.font());
    const QSizeF size(metrics.horizontalAdvance(text) + 8.0, metrics.height());
    const QRectF box(centre - QPointF(size.width() / 2.0, size.height() / 2.0), size);
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    painter.drawRoundedRect(box, 3.0, 3.0);
    painter.setPen(ink);
    painter.drawText(box, Qt::AlignCenter, text);
    painter.restore();
}

} // namespace loam::drawing
