#include "app/drawing/grid.hpp"

#include "core/units.hpp"

namespace loam::drawing {

namespace {

void paint_lines(QPainter& painter, const QRectF& view, double step_px)
{
    for (int line = 1; line * step_px < view.width(); ++line) {
        const double x = view.left() + line * step_px;
        painter.drawLine(QPointF(x, view.top()), QPointF(x, view.bottom()));
    }
    for (int line = 1; line * step_px < view.height(); ++line) { // from the front, and from the base
        const double y = view.bottom() - line * step_px;
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
