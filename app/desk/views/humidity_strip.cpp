#include "app/desk/views/humidity_strip.hpp"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desk/look/course_inks.hpp"
#include "app/desk/look/theme.hpp"
#include "app/drawing/moisture_layer.hpp"

namespace loam::desk {

namespace {

constexpr double foot_px = 6.0;

double within(double humidity)
{
    return std::clamp(humidity, 0.0, 1.0);
}

} // namespace

HumidityStrip::HumidityStrip(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("humidityStrip"));
    setAccessibleName(tr("Humidity at ground level over hours"));
}

QSize HumidityStrip::sizeHint() const
{
    return {300, 110};
}

QSize HumidityStrip::minimumSizeHint() const
{
    return {240, 72};
}

void HumidityStrip::show_course(const assess::CourseResult& course, const std::vector<HumidityBand>& targets,
                                const words::Formatter& formatter)
{
    course_ = course;
    targets_ = targets;
    formatter_ = formatter;
    scale_ = scale();
    update();
}

void HumidityStrip::align(double left, double right)
{
    left_ = left;
    right_ = std::max(left + 1.0, right);
    update();
}

// Whole tenths around everything that is drawn.
HumidityStrip::Scale HumidityStrip::scale() const
{
    double low = 1.0;
    double high = 0.0;
    const auto take = [&](double humidity) {
        low = std::min(low, within(humidity));
        high = std::max(high, within(humidity));
    };
    for (const climate::CoursePoint& point : course_.course.points) {
        take(point.humidity + course_.humidity_spread.low);
        take(point.humidity + course_.humidity_spread.high);
    }
    for (const HumidityBand& band : targets_) {
        take(band.target.min.value_or(low));
        take(band.target.max.value_or(high));
    }
    constexpr double tenth = 0.1;
    low = tenth * std::floor(low / tenth + 1e-6);
    high = std::max(tenth * std::ceil(high / tenth - 1e-6), low + 2.0 * tenth);
    return {low, high, high - low > 0.5 ? 0.2 : tenth};
}

QRectF HumidityStrip::plot() const
{
    const double top = QFontMetricsF(font()).height() + 4.0; // its name
    return {left_, top, right_ - left_, std::max(8.0, height() - top - foot_px)};
}

QPointF HumidityStrip::place(double hour, double humidity) const
{
    const QRectF area = plot();
    const double last_h = course_.course.points.back().hour;
    const double share = (within(humidity) - scale_.low) / (scale_.high - scale_.low);
    return {area.left() + area.width() * hour / std::max(0.1, last_h), area.bottom() - share * area.height()};
}

void HumidityStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), palette().base());
    if (course_.course.points.size() < 2) {
        return;
    }
    paint_dark_hours(painter);
    paint_axis(painter);
    painter.save();
    painter.setClipRect(plot());
    paint_targets(painter);
    paint_course(painter);
    painter.restore();
    paint_mistings(painter);
}

void HumidityStrip::paint_axis(QPainter& painter) const
{
    const QRectF area = plot();
    const QFontMetricsF metrics(font());
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(QPointF(area.left(), metrics.ascent() + 1.0), tr("Humidity at ground level, cool side"));
    double free_above = area.bottom() + metrics.height();
    const auto steps = static_cast<int>((scale_.high - scale_.low) / scale_.step + 1e-6);
    for (int i = 0; i <= steps; ++i) {
        const double level = scale_.low + i * scale_.step;
        const double y = place(0.0, level).y();
        painter.setPen(palette().color(QPalette::Midlight));
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
        if (y + metrics.height() / 2.0 <= free_above) {
            painter.setPen(palette().color(QPalette::Text));
            painter.drawText(QRectF(0.0, y - metrics.height() / 2.0, area.left() - 6.0, metrics.height()),
                             Qt::AlignRight | Qt::AlignVCenter, formatter_.value(level, words::Quantity::fraction));
            free_above = y - metrics.height() / 2.0;
        }
    }
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawRect(area);
}

void HumidityStrip::paint_dark_hours(QPainter& painter) const
{
    const std::vector<words::Hours> lit = words::lit_hours(course_.course);
    if (lit.empty()) {
        return;
    }
    QColor night = palette().color(QPalette::Text);
    night.setAlphaF(0.07F);
    const QRectF area = plot();
    double dark_from_h = 0.0;
    const auto shade = [&](double from_h, double to_h) {
        const double left = place(from_h, 0.0).x();
        painter.fillRect(QRectF(left, area.top(), place(to_h, 0.0).x() - left, area.height()), night);
    };
    for (const words::Hours& each : lit) {
        shade(dark_from_h, each.from_h);
        dark_from_h = each.to_h;
    }
    shade(dark_from_h, course_.course.points.back().hour);
}

void HumidityStrip::paint_targets(QPainter& painter) const
{
    QColor ink = humidity_pen(is_dark(palette())).color();
    QColor wash = ink;
    wash.setAlphaF(0.08F);
    ink.setAlphaF(0.45F);
    for (const HumidityBand& band : targets_) {
        // A target with one bound goes on to the end of what there is.
        const QRectF box(place(band.when.from_h, band.target.max.value_or(1.0)),
                         place(band.when.to_h, band.target.min.value_or(0.0)));
        painter.fillRect(box, wash);
        painter.fillRect(box, QBrush(ink, Qt::BDiagPattern));
        painter.setPen(QPen(ink, 1.0));
        if (band.target.max) {
            painter.drawLine(box.topLeft(), box.topRight());
        }
        if (band.target.min) {
            painter.drawLine(box.bottomLeft(), box.bottomRight());
        }
    }
}

void HumidityStrip::paint_course(QPainter& painter) const
{
    QPolygonF line;
    QPolygonF upper;
    QPolygonF lower;
    for (const climate::CoursePoint& point : course_.course.points) {
        line << place(point.hour, point.humidity);
        upper << place(point.hour, point.humidity + course_.humidity_spread.high);
        lower.prepend(place(point.hour, point.humidity + course_.humidity_spread.low));
    }
    const QPen pen = humidity_pen(is_dark(palette()));
    QColor wash = pen.color();
    wash.setAlphaF(0.20F);
    painter.setPen(Qt::NoPen);
    painter.setBrush(wash);
    painter.drawPolygon(upper + lower);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen);
    painter.drawPolyline(line);
}

void HumidityStrip::paint_mistings(QPainter& painter) const
{
    const QRectF area = plot();
    const drawing::Inks inks = is_dark(palette()) ? drawing::Inks::dark() : drawing::Inks::light();
    for (const double hour : course_.course.misted_h) {
        const double x = place(hour, 0.0).x();
        painter.setPen(QPen(inks.accent, 1.0, Qt::DotLine));
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
        drawing::paint_drop(painter, QPointF(x, area.top() + 1.0), inks);
    }
}

} // namespace loam::desk
