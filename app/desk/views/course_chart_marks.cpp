// What the chart of a course shows beside its lines.
#include <QPainter>
#include <QtCharts/QChart>
#include <algorithm>
#include <optional>

#include "app/desk/look/course_inks.hpp"
#include "app/desk/look/theme.hpp"
#include "app/desk/views/course_chart.hpp"
#include "app/drawing/verdict_mark.hpp"

namespace loam::desk {

QPointF CourseChart::place(double hour, double degrees) const
{
    return chart()->mapToScene(chart()->mapToPosition({hour, degrees}));
}

void CourseChart::drawBackground(QPainter* painter, const QRectF& rect)
{
    painter->fillRect(rect, palette().base());
    if (course_.course.points.empty()) {
        return;
    }
    painter->save();
    painter->setClipRect(QRectF(place(0.0, scale_.high), place(scale_.last_h, scale_.low)));
    for (const TargetBand& band : targets_) {
        paint_target(*painter, band);
    }
    painter->restore();
    paint_lit(*painter);
}

void CourseChart::drawForeground(QPainter* painter, const QRectF& /*rect*/)
{
    if (course_.course.points.empty()) {
        return;
    }
    painter->save();
    painter->setFont(font());
    paint_limits(*painter);
    paint_names(*painter);
    painter->restore();
}

void CourseChart::paint_target(QPainter& painter, const TargetBand& band) const
{
    constexpr double strip_px = 12.0; // a target with one bound goes on without end: its border tells enough
    const auto y_of = [&](const std::optional<double>& celsius) {
        return place(0.0, shown(celsius.value_or(0.0))).y();
    };
    const double top = band.target_c.max ? y_of(band.target_c.max) : y_of(band.target_c.min) - strip_px;
    const double bottom = band.target_c.min ? y_of(band.target_c.min) : y_of(band.target_c.max) + strip_px;
    const QRectF box(QPointF(place(band.when.from_h, 0.0).x(), top), QPointF(place(band.when.to_h, 0.0).x(), bottom));
    const bool dark = is_dark(palette());
    QColor ink = band.every_zone ? room_pen(dark).color() : zone_pen(band.zone, dark).color();
    QColor wash = ink;
    wash.setAlphaF(0.08F);
    painter.fillRect(box, wash);
    ink.setAlphaF(0.45F);
    painter.fillRect(box, QBrush(ink, band.every_zone ? Qt::DiagCrossPattern : zone_hatch(band.zone)));
    painter.setPen(QPen(ink, 1.0));
    if (band.target_c.max) {
        painter.drawLine(box.topLeft(), box.topRight());
    }
    if (band.target_c.min) {
        painter.drawLine(box.bottomLeft(), box.bottomRight());
    }
}

void CourseChart::paint_lit(QPainter& painter) const
{
    const QColor ink = palette().color(QPalette::Text);
    QColor night = ink;
    night.setAlphaF(0.07F);
    const QRectF plot(place(0.0, scale_.high), place(scale_.last_h, scale_.low));
    double dark_from_h = 0.0;
    const auto shade = [&](double from_h, double to_h) {
        if (to_h > from_h) {
            painter.fillRect(QRectF(place(from_h, scale_.high), place(to_h, scale_.low)), night);
        }
    };
    constexpr double bar_px = 4.0;
    for (const words::Hours& each : lit_) {
        shade(dark_from_h, each.from_h);
        dark_from_h = each.to_h;
        const QPointF from = place(each.from_h, scale_.low);
        const QPointF to = place(each.to_h, scale_.low);
        painter.fillRect(QRectF(from.x(), plot.top() - bar_px - 1.0, to.x() - from.x(), bar_px), ink);
    }
    if (!lit_.empty()) { // where nothing is ever lit, grey would tell nothing
        shade(dark_from_h, scale_.last_h);
    }
}

void CourseChart::paint_limits(QPainter& painter) const
{
    const QColor ink = drawing::verdict_colour(Verdict::danger, is_dark(palette()));
    const QFontMetricsF metrics(painter.font());
    for (const Limit& limit : limits_) {
        painter.setPen(QPen(ink, 1.6, Qt::DashDotDotLine));
        const QPointF from = place(0.0, limit.at);
        painter.drawLine(from, place(scale_.last_h, limit.at));
        const bool room_above = limit.at < scale_.high - 0.5 * scale_.step;
        const QPointF text(from.x() + 6.0, room_above ? from.y() - 3.0 : from.y() + metrics.ascent() + 2.0);
        painter.drawText(text, limit.name);
    }
}

void CourseChart::paint_names(QPainter& painter) const
{
    struct Name {
        const Line* line;
        double y;
    };
    std::vector<Name> names;
    names.reserve(lines_.size());
    for (const Line& line : lines_) {
        names.push_back({&line, place(line.end.x(), line.end.y()).y()});
    }
    std::sort(names.begin(), names.end(), [](const Name& a, const Name& b) { return a.y < b.y; });
    // Pushed apart downwards, then back up from the axis, so that none lies on another.
    const QFontMetricsF metrics(painter.font());
    const double height = metrics.height();
    const double lowest = place(0.0, scale_.low).y();
    for (std::size_t i = 1; i < names.size(); ++i) {
        names[i].y = std::max(names[i].y, names[i - 1].y + height);
    }
    for (std::size_t i = names.size(); i-- > 0;) {
        const double floor = i + 1 < names.size() ? names[i + 1].y - height : lowest;
        names[i].y = std::min(names[i].y, floor);
    }
    for (const Name& name : names) {
        const QPointF end = place(scale_.last_h, name.line->end.y());
        painter.setPen(QPen(name.line->pen.color(), 1.0));
        painter.drawLine(end, QPointF(end.x() + 8.0, name.y));
        painter.drawText(QPointF(end.x() + 11.0, name.y + metrics.ascent() / 2.0 - 1.0), name.line->name);
    }
}

} // namespace loam::desk
