#include "app/desk/views/reading_plot.hpp"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "app/words/verdicts.hpp"

namespace loam::desk {

namespace {

using words::Quantity;

constexpr double row_px = 34.0;
constexpr double top_px = 8.0;
constexpr double bar_px = 12.0;

} // namespace

ReadingPlot::ReadingPlot(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("readingPlot"));
    setAccessibleName(tr("Readings against what was expected"));
    setBackgroundRole(QPalette::Base);
    setAutoFillBackground(true);
}

QSize ReadingPlot::sizeHint() const
{
    const int key_px = 3 * fontMetrics().height();
    return {360, static_cast<int>(top_px + row_px * static_cast<double>(readings_.size())) + key_px};
}

QSize ReadingPlot::minimumSizeHint() const
{
    return {240, sizeHint().height()};
}

QString ReadingPlot::name_of(const assess::ReadingResult& reading) const
{
    return QStringLiteral("%1, %2").arg(QString::fromStdString(reading.id), words::measure(reading.measure));
}

void ReadingPlot::show_calibration(const assess::CalibrationResult& calibration, const words::Formatter& formatter)
{
    readings_ = calibration.readings;
    formatter_ = formatter;
    scale_ = scale();
    QStringList told;
    for (const assess::ReadingResult& reading : readings_) {
        const QString expected =
            reading.after_c ? formatter_.range(*reading.after_c, Quantity::temperature) : tr("not known");
        told << tr("%1: read %2, expected %3, %4")
                    .arg(name_of(reading), formatter_.value(reading.value_c, Quantity::temperature), expected,
                         words::reading_use(reading.use));
    }
    setAccessibleDescription(told.join(QLatin1Char('\n')));
    updateGeometry();
    update();
}

// Whole steps of 1, 2, 5, 10 … degrees as they are shown, around everything that is drawn.
ReadingPlot::Scale ReadingPlot::scale() const
{
    double low = 1e9;
    double high = -1e9;
    const auto take = [&](double celsius) {
        low = std::min(low, celsius);
        high = std::max(high, celsius);
    };
    for (const assess::ReadingResult& reading : readings_) {
        take(reading.value_c - reading.accuracy_k);
        take(reading.value_c + reading.accuracy_k);
        for (const auto& expected : {reading.before_c, reading.after_c}) {
            if (expected) {
                take(expected->low);
                take(expected->high);
            }
        }
    }
    if (low > high) {
        return {};
    }
    const double factor = words::display_unit(Quantity::temperature, formatter_.system()).factor;
    double step = 1.0;
    for (const double candidate : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0}) {
        step = candidate;
        if ((high - low) * factor / candidate <= 7.0) {
            break;
        }
    }
    return {low - 0.3 * step / factor, high + 0.3 * step / factor, step / factor};
}

QRectF ReadingPlot::plot() const
{
    int widest = 0;
    for (const assess::ReadingResult& reading : readings_) {
        widest = std::max(widest, fontMetrics().horizontalAdvance(name_of(reading)));
    }
    const double left = std::min(12.0 + widest, 0.4 * width());
    return {left + 8.0, top_px, std::max(10.0, width() - left - 24.0), row_px * static_cast<double>(readings_.size())};
}

double ReadingPlot::x_of(double celsius) const
{
    const QRectF area = plot();
    return area.left() + (celsius - scale_.low_c) / (scale_.high_c - scale_.low_c) * area.width();
}

double ReadingPlot::y_of(std::size_t row) const
{
    return top_px + row_px * (static_cast<double>(row) + 0.5);
}

void ReadingPlot::paint_grid(QPainter& painter) const
{
    const QRectF area = plot();
    const words::DisplayUnit unit = words::display_unit(Quantity::temperature, formatter_.system());
    const double step = scale_.step_c * unit.factor;
    const double first = std::ceil((scale_.low_c * unit.factor + unit.offset) / step) * step;
    const double last = scale_.high_c * unit.factor + unit.offset;
    const int lines = static_cast<int>(std::floor((last - first) / step + 1e-9));
    for (int line = 0; line <= lines; ++line) {
        const double shown = first + line * step;
        const double x = x_of((shown - unit.offset) / unit.factor);
        painter.setPen(palette().color(QPalette::Midlight));
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
        painter.setPen(palette().color(QPalette::Text));
        const QString text = formatter_.number(shown, 0);
        painter.drawText(
            QPointF(x - fontMetrics().horizontalAdvance(text) / 2.0, area.bottom() + fontMetrics().ascent() + 2.0),
            text);
    }
    painter.drawText(QPointF(area.right() - fontMetrics().horizontalAdvance(unit.symbol) + 16.0,
                             area.bottom() + fontMetrics().ascent() + 2.0),
                     unit.symbol);
}

// Before: an empty bar. After: a filled one, with a stroke at the likely value. Read: a dot with its accuracy; hollow
// where it was not used.
void ReadingPlot::paint_row(QPainter& painter, std::size_t row) const
{
    const assess::ReadingResult& reading = readings_[row];
    const double y = y_of(row);
    const QColor ink = palette().color(QPalette::Text);
    painter.setPen(ink);
    const QRectF name(6.0, y - row_px / 2.0, plot().left() - 12.0, row_px);
    painter.drawText(name, Qt::AlignVCenter | Qt::AlignLeft,
                     fontMetrics().elidedText(name_of(reading), Qt::ElideRight, static_cast<int>(name.width())));
    const auto bar = [&](const Range& range, double height) {
        return QRectF(QPointF(x_of(range.low), y - height / 2.0), QPointF(x_of(range.high), y + height / 2.0));
    };
    if (reading.before_c) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(palette().color(QPalette::Mid), 1.2));
        painter.drawRect(bar(*reading.before_c, bar_px + 6.0));
    }
    if (reading.after_c) {
        QColor wash = palette().color(QPalette::Highlight);
        wash.setAlphaF(0.45F);
        painter.setPen(Qt::NoPen);
        painter.setBrush(wash);
        painter.drawRect(bar(*reading.after_c, bar_px));
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2.0));
        painter.drawLine(QPointF(x_of(reading.after_c->likely), y - bar_px / 2.0),
                         QPointF(x_of(reading.after_c->likely), y + bar_px / 2.0));
    }
    painter.setPen(QPen(ink, 1.6));
    painter.drawLine(QPointF(x_of(reading.value_c - reading.accuracy_k), y),
                     QPointF(x_of(reading.value_c + reading.accuracy_k), y));
    painter.setBrush(reading.use == assess::ReadingUse::used ? QBrush(ink) : QBrush(palette().color(QPalette::Base)));
    painter.drawEllipse(QPointF(x_of(reading.value_c), y), 4.5, 4.5);
}

void ReadingPlot::paint_key(QPainter& painter) const
{
    painter.setPen(palette().color(QPalette::Text));
    const QRectF below(6.0, plot().bottom() + fontMetrics().height() + 4.0, width() - 12.0,
                       2.0 * fontMetrics().height());
    painter.drawText(
        below, Qt::TextWordWrap | Qt::AlignLeft,
        tr("Dot: read, with its accuracy; hollow: not used. Open bar: expected by the plan alone. Filled bar: "
           "expected with the readings."));
}

void ReadingPlot::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (readings_.empty()) {
        return;
    }
    paint_grid(painter);
    for (std::size_t row = 0; row < readings_.size(); ++row) {
        paint_row(painter, row);
    }
    paint_key(painter);
}

bool ReadingPlot::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const auto row = static_cast<qsizetype>((help->pos().y() - top_px) / row_px);
        const QStringList told = accessibleDescription().split(QLatin1Char('\n'));
        QToolTip::showText(help->globalPos(), row >= 0 && row < told.size() ? told[row] : QString(), this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace loam::desk
