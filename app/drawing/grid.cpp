#include "app/drawing/grid.hpp"

#include "core/units.hpp"

namespace loam::drawing {

namespace {

void paint_lines(QPainter& painter, const QRectF& view, double step_px)
{
    for (double x = view.left() + step_px; x < view.right(); x += step_px) {
        painter.drawLine(QPointF(x, view.top()), QPointF(x, view.bottom()));
    }
    for (double y = view.bottom() - step_px; y > view.top(); y -= step_px) { // from the front, and from the base
        painter.drawLine(QPointF(view.left(), y), QPointF(view.right(), y));
    }
}

} // namespace

void paint_grid(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const double step_m = picture.formatter.system() == words::UnitSystem::us ? 6.0 * units::inch_m : 0.1;
    QColor ink = picture.inks.faint;
    ink.setAlphaF(0.45F);
    painter.save();
    painter.setPen(QPen(ink, 0.0, Qt::DotLine));
    paint_lines(painter, frame.plan, step_m * frame.pixels_per_m);
    paint_lines(painter, frame.section, step_m * frame.pixels_per_m);
    painter.restore();
}

} // namespace loam::drawing
