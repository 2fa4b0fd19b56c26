#include "app/desk/views/year_strip.hpp"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/desk/look/theme.hpp"
#include "app/words/seasons.hpp"

namespace loam::desk {

namespace {

constexpr int months = 12;
constexpr double gap_px = 12.0;

QColor lamp_colour(bool dark)
{
    return dark ? QColor(0xE6, 0x9F, 0x00, 150) : QColor(0xE6, 0x9F, 0x00, 120);
}

QColor energy_colour(bool dark)
{
    return dark ? QColor(0x56, 0xB4, 0xE9) : QColor(0x00, 0x72, 0xB2);
}

double hour_of(const std::string& clock)
{
    const QString text = QString::fromStdString(clock);
    return text.left(2).toInt() + text.mid(3).toInt() / 60.0;
}

// 1, 2 or 5 times a power of ten, such that about four steps reach `most`.
double nice_step(double most)
{
    const double rough = std::max(most, 1e-6) / 4.0;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (rough <= factor * power) {
            return factor * power;
        }
    }
    return 10.0 * power;
}

// From one stated day to the next: half a month.
double start_of(const assess::LightDay& day)
{
    return day.month - 1 + (day.day > 1 ? 0.5 : 0.0);
}

} // namespace

YearStrip::YearStrip(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("yearStrip"));
    setAccessibleName(tr("The year by months: hours of light and kilowatt-hours"));
    setFocusPolicy(Qt::StrongFocus);
}

void YearStrip::show_year(const assess::EnclosureResult& enclosure, const words::Formatter& formatter)
{
    light_ = enclosure.light_year;
    month_kwh_ = enclosure.power.month_kwh;
    formatter_ = formatter;
    update();
}

void YearStrip::choose_month(int month)
{
    const int within = std::clamp(month, 1, months);
    if (within != month_) {
        month_ = within;
        update();
        emit monthChosen(month_);
    }
}

YearStrip::Frame YearStrip::light_frame() const
{
    const QFontMetricsF metrics(font());
    const double left = metrics.horizontalAdvance(QStringLiteral("0000")) + 10.0;
    const double bottom = metrics.height() + 6.0;
    const double top = metrics.height() + 4.0; // the strip's own name
    const double room = height() - 2.0 * top - bottom - gap_px;
    return {{left, top, width() - left - 8.0, std::max(10.0, room * 0.55)}, 24.0};
}

YearStrip::Frame YearStrip::energy_frame() const
{
    const QFontMetricsF metrics(font());
    const Frame light = light_frame();
    const double top = light.area.bottom() + gap_px + metrics.height() + 4.0;
    double most = 0.0;
    for (const Range& month : month_kwh_) {
        most = std::max(most, month.high);
    }
    const double step = nice_step(most);
    const double bottom = height() - metrics.height() - 6.0;
    return {{light.area.left(), top, light.area.width(), std::max(10.0, bottom - top)},
            step * std::max(1.0, std::ceil(most / step))};
}

double YearStrip::x_of(double months_along) const
{
    const QRectF area = light_frame().area;
    return area.left() + area.width() * months_along / months;
}

void YearStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), palette().base());
    if (light_.empty()) {
        return;
    }
    const Frame light = light_frame();
    const Frame energy = energy_frame();
    QColor chosen = palette().color(QPalette::Highlight);
    chosen.setAlphaF(0.16F);
    for (const Frame* frame : {&light, &energy}) {
        painter.fillRect(
            QRectF(x_of(month_ - 1), frame->area.top(), x_of(month_) - x_of(month_ - 1), frame->area.height()), chosen);
    }
    paint_light(painter, light);
    paint_sky(painter, light);
    paint_energy(painter, energy);
    paint_rest(painter, light);
    paint_axes(painter, light, energy);
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2.0));
        painter.drawRect(QRectF(x_of(month_ - 1), light.area.top(), x_of(month_) - x_of(month_ - 1),
                                energy.area.bottom() - light.area.top()));
    }
}

void YearStrip::paint_axes(QPainter& painter, const Frame& light, const Frame& energy) const
{
    const QFontMetricsF metrics(font());
    painter.setPen(palette().color(QPalette::Text));
    const double name_top = light.area.top() - metrics.height() - 3.0;
    painter.drawText(QPointF(light.area.left(), name_top + metrics.ascent()),
                     tr("Lamps on (filled), day outside (dashed)"));
    painter.drawText(QPointF(energy.area.left(), energy.area.top() - metrics.height() - 3.0 + metrics.ascent()),
                     tr("kWh a month, with its range"));
    const auto label = [&](const Frame& frame, double value, const QString& text) {
        const QRectF box(0.0, frame.y_of(value) - metrics.height() / 2.0, frame.area.left() - 5.0, metrics.height());
        painter.setPen(palette().color(QPalette::Text));
        painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, text);
        painter.setPen(QPen(palette().color(QPalette::Mid), 0.6));
        painter.drawLine(QPointF(frame.area.left(), frame.y_of(value)), QPointF(frame.area.right(), frame.y_of(value)));
    };
    for (const int hour : {0, 6, 12, 18, 24}) {
        label(light, hour, formatter_.locale().toString(hour));
    }
    const double step = nice_step(energy.most * 0.99);
    for (int i = 0; i * step <= energy.most * 1.001; ++i) {
        const double kwh = i * step;
        label(energy, kwh, formatter_.locale().toString(kwh, 'g', 4));
    }
    const double wide = x_of(1) - x_of(0);
    double widest = 0.0; // all short, or all by one letter
    for (int month = 1; month <= months; ++month) {
        widest = std::max(widest, metrics.horizontalAdvance(words::month_name(month, formatter_)));
    }
    for (int month = 1; month <= months; ++month) {
        const QRectF box(x_of(month - 1), energy.area.bottom() + 3.0, wide, metrics.height());
        const QString name = widest > wide - 3.0 ? formatter_.locale().standaloneMonthName(month, QLocale::NarrowFormat)
                                                 : words::month_name(month, formatter_);
        painter.setPen(palette().color(QPalette::Text));
        painter.drawText(box, Qt::AlignCenter, name);
    }
}

void YearStrip::paint_light(QPainter& painter, const Frame& frame) const
{
    painter.setRenderHint(QPainter::Antialiasing, false); // no seams between the halves of months
    painter.setPen(Qt::NoPen);
    painter.setBrush(lamp_colour(is_dark(palette())));
    for (const assess::LightDay& day : light_) {
        if (!day.planned) {
            continue;
        }
        const double from = x_of(start_of(day));
        const double wide = x_of(start_of(day) + 0.5) - from;
        const auto lit = [&](double on, double off) {
            painter.drawRect(QRectF(from, frame.y_of(off), wide, frame.y_of(on) - frame.y_of(off)));
        };
        const double on = hour_of(day.planned->on);
        const double off = hour_of(day.planned->off);
        if (on < off) {
            lit(on, off);
        } else { // over midnight
            lit(on, 24.0);
            lit(0.0, off);
        }
    }
    painter.setRenderHint(QPainter::Antialiasing);
}

// As long as the day outside, about the middle of the lamps' day, since only its length is compared.
void YearStrip::paint_sky(QPainter& painter, const Frame& frame) const
{
    QPolygonF rise;
    QPolygonF set;
    for (const assess::LightDay& day : light_) {
        if (!day.sky_h) {
            return;
        }
        const assess::LightTimes* times = day.by_the_sky ? &*day.by_the_sky : day.planned ? &*day.planned : nullptr;
        double middle = times != nullptr ? hour_of(times->on) + times->hours / 2.0 : 12.0;
        middle = middle >= 24.0 ? middle - 24.0 : middle;
        const double x = x_of(start_of(day) + 0.25);
        rise << QPointF(x, frame.y_of(std::max(0.0, middle - *day.sky_h / 2.0)));
        set << QPointF(x, frame.y_of(std::min(24.0, middle + *day.sky_h / 2.0)));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette().color(QPalette::Text), 1.4, Qt::DashLine));
    painter.drawPolyline(rise);
    painter.drawPolyline(set);
}

void YearStrip::paint_energy(QPainter& painter, const Frame& frame) const
{
    const QColor colour = energy_colour(is_dark(palette()));
    for (int month = 1; month <= months; ++month) {
        const Range& kwh = month_kwh_[static_cast<std::size_t>(month - 1)];
        const double wide = x_of(month) - x_of(month - 1);
        const double middle = x_of(month - 1) + wide / 2.0;
        painter.fillRect(
            QRectF(middle - wide * 0.32, frame.y_of(kwh.likely), wide * 0.64, frame.y_of(0.0) - frame.y_of(kwh.likely)),
            colour);
        if (kwh.high > kwh.low) {
            painter.setPen(QPen(palette().color(QPalette::Text), 1.2));
            painter.drawLine(QPointF(middle, frame.y_of(kwh.low)), QPointF(middle, frame.y_of(kwh.high)));
            for (const double end : {kwh.low, kwh.high}) {
                painter.drawLine(QPointF(middle - 3.0, frame.y_of(end)), QPointF(middle + 3.0, frame.y_of(end)));
            }
        }
    }
}

void YearStrip::paint_rest(QPainter& painter, const Frame& frame) const
{
    std::optional<double> from;
    double to = 0.0;
    for (const assess::LightDay& day : light_) {
        if (day.running_share < 1.0) {
            const QRectF column(x_of(start_of(day)), frame.area.top(), x_of(0.5) - x_of(0.0), frame.area.height());
            painter.fillRect(column, QBrush(palette().color(QPalette::Mid), Qt::BDiagPattern));
            from = from.value_or(column.left());
            to = column.right();
        }
    }
    if (from && to - *from > 0.0) {
        painter.setPen(palette().color(QPalette::Text));
        const QString name = tr("rest");
        const QFontMetricsF metrics(font());
        const double wide = metrics.horizontalAdvance(name) + 4.0;
        const QRectF box(*from + 2.0, frame.area.center().y() - metrics.height() / 2.0, wide, metrics.height());
        painter.fillRect(box, palette().base());
        painter.drawText(box, Qt::AlignCenter, name);
    }
}

void YearStrip::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Left:
        choose_month(month_ - 1);
        return;
    case Qt::Key_Right:
        choose_month(month_ + 1);
        return;
    case Qt::Key_Home:
        choose_month(1);
        return;
    case Qt::Key_End:
        choose_month(months);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void YearStrip::mousePressEvent(QMouseEvent* event)
{
    const QRectF area = light_frame().area;
    choose_month(static_cast<int>(std::floor((event->position().x() - area.left()) / area.width() * months)) + 1);
}

} // namespace loam::desk
