#include "app/drawing/verdict_mark.hpp"

#include <QPainterPath>
#include <QPixmap>

namespace loam::drawing {

QColor verdict_colour(Verdict verdict, bool on_dark)
{
    switch (verdict) {
    case Verdict::fits:
        return on_dark ? QColor(0x35, 0xc4, 0x9a) : QColor(0x00, 0x7a, 0x5a); // bluish green
    case Verdict::tight:
        return on_dark ? QColor(0xf0, 0xc2, 0x4b) : QColor(0x9a, 0x6b, 0x00); // orange
    case Verdict::falls_short:
        return on_dark ? QColor(0xf0, 0x8a, 0x3c) : QColor(0xb8, 0x4a, 0x00); // vermilion
    case Verdict::danger:
        return on_dark ? QColor(0xff, 0x8f, 0xc4) : QColor(0xa8, 0x1e, 0x6a); // reddish purple
    case Verdict::not_known:
        return on_dark ? QColor(0xb5, 0xb1, 0xa8) : QColor(0x6b, 0x66, 0x5c);
    }
    return {};
}

namespace {

QPainterPath triangle_in(const QRectF& box)
{
    QPainterPath path;
    path.moveTo(box.center().x(), box.top());
    path.lineTo(box.right(), box.bottom());
    path.lineTo(box.left(), box.bottom());
    path.closeSubpath();
    return path;
}

void paint_danger(QPainter& painter, const QRectF& box, const QColor& colour, bool on_dark)
{
    painter.fillPath(triangle_in(box), colour);
    const QColor inside = on_dark ? QColor(0x23, 0x24, 0x26) : QColor(Qt::white);
    const double width = box.width() * 0.12;
    painter.setPen(QPen(inside, width, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(box.center().x(), box.top() + box.height() * 0.40),
                     QPointF(box.center().x(), box.top() + box.height() * 0.66));
    painter.drawPoint(QPointF(box.center().x(), box.top() + box.height() * 0.84));
}

} // namespace

void paint_verdict_mark(QPainter& painter, const QRectF& box, Verdict verdict, bool on_dark)
{
    const QColor colour = verdict_colour(verdict, on_dark);
    const double line = box.width() * 0.14;
    const QRectF inner = box.adjusted(line / 2, line / 2, -line / 2, -line / 2);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, line));
    painter.setBrush(Qt::NoBrush);
    switch (verdict) {
    case Verdict::fits:
        painter.setBrush(colour);
        painter.drawEllipse(inner);
        break;
    case Verdict::tight:
        painter.drawEllipse(inner);
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawPie(inner, 180 * 16, 180 * 16);
        break;
    case Verdict::falls_short:
        painter.setBrush(colour);
        painter.drawRect(inner.adjusted(line / 2, line / 2, -line / 2, -line / 2));
        break;
    case Verdict::danger:
        paint_danger(painter, box, colour, on_dark);
        break;
    case Verdict::not_known:
        painter.drawEllipse(inner);
        break;
    }
    painter.restore();
}

namespace {

QPixmap mark_of(int size, Verdict verdict, bool on_dark)
{
    QPixmap pixmap(size, size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    const double margin = size / 8.0;
    paint_verdict_mark(painter, QRectF(margin, margin, size - 2 * margin, size - 2 * margin), verdict, on_dark);
    return pixmap;
}

} // namespace

QIcon verdict_icon(Verdict verdict, bool on_dark)
{
    QIcon icon;
    for (const int size : {16, 24, 32, 48}) {
        icon.addPixmap(mark_of(size, verdict, on_dark));
        icon.addPixmap(mark_of(size, verdict, !on_dark), QIcon::Selected); // a chosen row is dark on light paper
    }
    return icon;
}

VerdictIcons::VerdictIcons(bool on_dark)
{
    for (const Verdict verdict :
         {Verdict::fits, Verdict::tight, Verdict::falls_short, Verdict::danger, Verdict::not_known}) {
        icons_[static_cast<std::size_t>(verdict)] = verdict_icon(verdict, on_dark);
    }
}

} // namespace loam::drawing
