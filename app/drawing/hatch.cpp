#include "app/drawing/hatch.hpp"

#include <QPainterPath>
#include <cmath>

namespace loam::drawing {

void paint_hatch(QPainter& painter, const QPolygonF& outline, Hatch hatch, double apart, const QColor& ink)
{
    const QRectF box = outline.boundingRect();
    if (box.isEmpty() || apart <= 0.0) {
        return;
    }
    QPainterPath clip;
    clip.addPolygon(outline);
    clip.closeSubpath();
    painter.save();
    painter.setClipPath(clip, Qt::IntersectClip);
    painter.setPen(QPen(ink, 0.4));
    const double reach = box.height();
    const int lines = static_cast<int>(std::ceil((box.width() + reach) / apart));
    for (int i = 0; i < lines; ++i) {
        const double x = box.left() - reach + i * apart;
        if (hatch != Hatch::falling) {
            painter.drawLine(QPointF(x, box.bottom()), QPointF(x + reach, box.top()));
        }
        if (hatch != Hatch::rising) {
            painter.drawLine(QPointF(x, box.top()), QPointF(x + reach, box.bottom()));
        }
    }
    painter.restore();
}

} // namespace loam::drawing
