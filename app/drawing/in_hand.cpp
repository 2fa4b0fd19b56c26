#include "app/drawing/in_hand.hpp"

#include <QFontMetricsF>
#include <algorithm>

#include "app/drawing/dimensions.hpp"
#include "app/words/verdicts.hpp"

namespace loam::drawing {

namespace {

QString fitting_name(const plan::Enclosure& enclosure, const QString& id)
{
    for (const plan::Fitting& fitting : enclosure.fittings) {
        if (QString::fromStdString(fitting.id) == id) {
            return words::fitting_kind(fitting.kind);
        }
    }
    return id;
}

QRectF on_plan_rect(const Placed& what, const Frame& frame)
{
    const QRectF& box = what.footprint_m;
    return QRectF(on_plan(frame, box.left(), box.bottom()), on_plan(frame, box.right(), box.top()));
}

// What stands in another is crossed through, so that it shows without colour.
void paint_clash(QPainter& painter, const Frame& frame, const Picture& picture, const QString& id)
{
    if (const auto other = placed_thing(picture.enclosure, id)) {
        const QRectF box = on_plan_rect(*other, frame);
        painter.setPen(QPen(picture.inks.ink, 2.0, Qt::DashDotLine));
        painter.drawRect(box);
        painter.drawLine(box.topLeft(), box.bottomRight());
        painter.drawLine(box.bottomLeft(), box.topRight());
    }
}

void paint_words(QPainter& painter, const Picture& picture, const QString& text, const QRectF& box,
                 const QRectF& within)
{
    const QFontMetricsF metrics(painter.font());
    const double half = metrics.horizontalAdvance(text) / 2.0 + 6.0;
    const double x =
        std::clamp(box.center().x(), within.left() + half, std::max(within.left() + half, within.right() - half));
    const double above = box.top() - metrics.height();
    const double y = above > within.top() + metrics.height() / 2.0 ? above : box.bottom() + metrics.height();
    paint_label(painter, {x, y}, text, picture.inks.ink, picture.inks.paper);
}

} // namespace

QRectF handle_of(const Placed& what, const Frame& frame)
{
    constexpr double side_px = 9.0;
    if (!what.sizable) {
        return {};
    }
    const QPointF corner = on_plan_rect(what, frame).topRight();
    return QRectF(corner - QPointF(side_px / 2.0, side_px / 2.0), QSizeF(side_px, side_px));
}

QString place_words(const plan::Enclosure& enclosure, const Placed& what, const words::Formatter& formatter)
{
    const QPointF at = what.by_middle ? what.footprint_m.center() : what.footprint_m.topLeft();
    const auto length = [&formatter](double value_m) { return formatter.value(value_m, words::Quantity::length); };
    QString text = what.by_middle
                       ? QObject::tr("middle %1 from the left, %2 from the front").arg(length(at.x()), length(at.y()))
                       : QObject::tr("%1 from the left, %2 from the front").arg(length(at.x()), length(at.y()));
    if (what.sizable && what.freedom == Freedom::both) {
        text += QObject::tr("; %1 × %2").arg(length(what.footprint_m.width()), length(what.footprint_m.height()));
    }
    QStringList names;
    for (const QString& id : standing_in(enclosure, what.id)) {
        names << fitting_name(enclosure, id);
    }
    return names.isEmpty() ? text : text + QObject::tr("; stands in: %1").arg(names.join(QStringLiteral(", ")));
}

void paint_in_hand(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const auto what = placed_thing(picture.enclosure, picture.highlighted);
    if (!what) {
        return;
    }
    painter.save();
    painter.setBrush(Qt::NoBrush);
    for (const QString& id : standing_in(picture.enclosure, what->id)) {
        paint_clash(painter, frame, picture, id);
    }
    if (picture.in_hand && picture.in_hand->id == what->id) {
        painter.setPen(QPen(picture.inks.accent, 1.2, Qt::DashLine));
        for (const QLineF& guide : picture.in_hand->guides) {
            painter.drawLine(on_plan(frame, guide.x1(), guide.y1()), on_plan(frame, guide.x2(), guide.y2()));
        }
        paint_words(painter, picture, place_words(picture.enclosure, *what, picture.formatter),
                    on_plan_rect(*what, frame), frame.plan);
    }
    if (const QRectF handle = handle_of(*what, frame); !handle.isEmpty()) {
        painter.setPen(QPen(picture.inks.accent, 1.6));
        painter.setBrush(picture.inks.paper);
        painter.drawRect(handle);
    }
    painter.restore();
}

} // namespace loam::drawing
