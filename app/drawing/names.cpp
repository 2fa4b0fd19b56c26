#include "app/drawing/names.hpp"

#include <QFontMetricsF>
#include <algorithm>

#include "app/drawing/dimensions.hpp"
#include "app/words/verdicts.hpp"

namespace loam::drawing {

namespace {

constexpr double gap_px = 10.0; // between names side by side

QString name_of(const Picture& picture, const QString& id)
{
    if (!picture.marks.isEmpty()) {
        return picture.marks.value(id);
    }
    const plan::Enclosure& enclosure = picture.enclosure;
    const std::string wanted = id.toStdString();
    for (const plan::Fitting& fitting : enclosure.fittings) {
        if (fitting.id == wanted) {
            return words::fitting_kind(fitting.kind);
        }
    }
    for (const plan::Device& device : enclosure.equipment) {
        if (device.id == wanted) {
            return words::device_kind(device.kind);
        }
    }
    return {};
}

// The name in one line, or in a line for each word, whichever the width takes first; empty where neither fits.
QStringList lines_within(const QString& name, double width, const QFontMetricsF& metrics)
{
    for (const QStringList& lines : {QStringList{name}, name.split(QLatin1Char(' '))}) {
        if (std::all_of(lines.begin(), lines.end(),
                        [&](const QString& line) { return metrics.horizontalAdvance(line) <= width; })) {
            return lines;
        }
    }
    return {};
}

void paint_in_plan(QPainter& painter, const Shape& fitting, const Picture& picture, const std::vector<QRectF>& taken)
{
    const QFontMetricsF metrics(painter.font());
    const QRectF box = fitting.outline.boundingRect().adjusted(3, 2, -3, -2);
    const QStringList lines = lines_within(name_of(picture, fitting.id), box.width(), metrics);
    double width = 0.0;
    for (const QString& line : lines) {
        width = std::max(width, metrics.horizontalAdvance(line));
    }
    const QSizeF size(width, metrics.height() * static_cast<double>(lines.size()));
    for (const double share : {0.5, 0.0, 1.0}) { // in the middle, else at the back or at the front
        for (const double across : {0.5, 0.0, 1.0}) {
            const QRectF place(
                box.topLeft() + QPointF(across * (box.width() - size.width()), share * (box.height() - size.height())),
                size);
            const auto meets = [&place](const QRectF& other) { return other.intersects(place); };
            if (size.height() <= box.height() && std::none_of(taken.begin(), taken.end(), meets)) {
                painter.drawText(place, Qt::AlignCenter, lines.join(QLatin1Char('\n')));
                return;
            }
        }
    }
}

struct Named {
    QPointF lamp; // the middle of its upper edge
    QString name;
    double left = 0.0, width = 0.0;
};

// Side by side in the order of the lamps, each as near to its own as the others let it.
void spread(std::vector<Named>& names, double left, double right)
{
    double edge = left;
    for (Named& one : names) {
        one.left = std::max(edge, one.lamp.x() - one.width / 2.0);
        edge = one.left + one.width + gap_px;
    }
    edge = right;
    for (std::size_t i = names.size(); i-- > 0;) {
        names[i].left = std::min(names[i].left, edge - names[i].width);
        edge = names[i].left - gap_px;
    }
}

void paint_over_section(QPainter& painter, const Frame& frame, const Picture& picture, std::vector<Named> names)
{
    const QFontMetricsF metrics(painter.font());
    double top = frame.section.top();
    for (Named& one : names) {
        one.width = metrics.horizontalAdvance(one.name);
        top = std::min(top, one.lamp.y());
    }
    std::stable_sort(names.begin(), names.end(),
                     [](const Named& a, const Named& b) { return a.lamp.x() < b.lamp.x(); });
    const double reach = 2.0 * gap_px; // a little past the box is still white paper
    spread(names, frame.section.left() - reach, frame.section.right() + reach);
    const double base = top - metrics.height() * 0.8;
    for (const Named& one : names) {
        const QPointF from(one.left + one.width / 2.0, base + 1.0);
        painter.setPen(QPen(picture.inks.faint, 0.8));
        painter.drawLine(from, one.lamp);
        painter.setPen(picture.inks.ink);
        painter.drawText(QRectF(one.left - 2.0, base - metrics.height(), one.width + 4.0, metrics.height()),
                         Qt::AlignCenter, one.name);
    }
}

// Marks are short enough to stand at everything: in fittings above, here at lamps, mats and covers seen from above,
// and at the fittings in the section.
void paint_marks(QPainter& painter, const std::vector<Shape>& shapes, const Picture& picture)
{
    for (const Shape& shape : shapes) {
        const bool lamp = shape.kind == ShapeKind::lamp;
        if ((shape.kind == ShapeKind::fitting || lamp) && lamp == shape.in_section) {
            continue;
        }
        if (shape.in_section && shape.kind != ShapeKind::fitting) {
            continue;
        }
        const QRectF box = shape.outline.boundingRect();
        const QString mark = name_of(picture, shape.id);
        // A lamp's cross and a mat's hatch stay to be seen: the mark stands at a corner.
        const double half = QFontMetricsF(painter.font()).height() / 2.0;
        const QPointF place = shape.kind == ShapeKind::fitting ? box.center()
                              : shape.kind == ShapeKind::cover ? box.topRight() + QPointF(-1.6 * half, half)
                              : shape.kind == ShapeKind::mat   ? box.bottomLeft() + QPointF(1.6 * half, -half)
                                                               : box.topLeft() + QPointF(-1.2 * half, -half);
        paint_label(painter, place, mark, picture.inks.ink, picture.inks.paper);
    }
}

} // namespace

void paint_names(QPainter& painter, const Frame& frame, const Picture& picture, const std::vector<Shape>& shapes,
                 std::vector<QRectF> taken)
{
    painter.setPen(picture.inks.ink);
    std::vector<Named> lamps;
    for (const Shape& shape : shapes) {
        const QRectF box = shape.outline.boundingRect();
        if (shape.kind == ShapeKind::lamp && !shape.in_section) {
            taken.push_back(box);
        } else if (shape.kind == ShapeKind::lamp) {
            lamps.push_back({{box.center().x(), box.top()}, name_of(picture, shape.id)});
        }
    }
    for (const Shape& shape : shapes) {
        if (shape.kind == ShapeKind::fitting && !shape.in_section) {
            paint_in_plan(painter, shape, picture, taken);
        }
    }
    if (!picture.marks.isEmpty()) {
        paint_marks(painter, shapes, picture);
    }
    paint_over_section(painter, frame, picture, std::move(lamps));
}

} // namespace loam::drawing
