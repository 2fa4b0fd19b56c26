#include "app/desk/views/growth_chart.hpp"

#include <QDateTime>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QDateTimeAxis>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <limits>

#include "app/desk/look/chart_manners.hpp"

namespace loam::desk {

namespace {

using words::Quantity;

constexpr qint64 ms_a_day = 24LL * 3600 * 1000;

double moment(std::chrono::sys_days day)
{
    return static_cast<double>(day.time_since_epoch().count() * ms_a_day);
}

// What is drawn, in the unit that is shown, and how far it reaches.
struct Plot {
    std::vector<QPointF> measured;
    std::vector<QPointF> least;
    std::vector<QPointF> most;
    double from = std::numeric_limits<double>::max();
    double to = std::numeric_limits<double>::lowest();
    double lowest = std::numeric_limits<double>::max();
    double highest = std::numeric_limits<double>::lowest();

    void take(const QPointF& point)
    {
        from = std::min(from, point.x());
        to = std::max(to, point.x());
        lowest = std::min(lowest, point.y());
        highest = std::max(highest, point.y());
    }
};

void take_bounds(Plot& plot, double at, const space::LengthBounds& bounds, double factor)
{
    if (!bounds.fast_m) {
        return;
    }
    plot.least.emplace_back(at, bounds.slow_m * factor);
    plot.most.emplace_back(at, *bounds.fast_m * factor);
    plot.take(plot.least.back());
    plot.take(plot.most.back());
}

Plot length_plot(const assess::RecordResult& record, double factor)
{
    Plot plot;
    for (const assess::RecordPoint& point : record.points) {
        if (point.expected) {
            take_bounds(plot, moment(point.on), *point.expected, factor);
        }
        if (point.length_m) {
            plot.measured.emplace_back(moment(point.on), *point.length_m * factor);
            plot.take(plot.measured.back());
        }
    }
    return plot;
}

Plot mass_plot(const assess::RecordResult& record, double factor)
{
    Plot plot;
    for (const assess::RecordPoint& point : record.points) {
        if (point.mass_kg) {
            plot.measured.emplace_back(moment(point.on), *point.mass_kg * factor);
            plot.take(plot.measured.back());
        }
    }
    return plot;
}

Quantity mass_quantity(const assess::RecordResult& record)
{
    const bool heavy = std::any_of(record.points.begin(), record.points.end(),
                                   [](const assess::RecordPoint& point) { return point.mass_kg.value_or(0.0) >= 1.0; });
    return heavy ? Quantity::mass : Quantity::small_mass;
}

template <class Series> Series* series_of(const std::vector<QPointF>& points, QObject* parent)
{
    auto* series = new Series(parent);
    for (const QPointF& point : points) {
        series->append(point);
    }
    return series;
}

void add_band(QChart& chart, const Plot& plot, QColor wash)
{
    if (plot.least.size() < 2) {
        return;
    }
    auto* band = new QAreaSeries(series_of<QLineSeries>(plot.most, &chart), series_of<QLineSeries>(plot.least, &chart));
    QColor edge = wash;
    wash.setAlphaF(0.18F);
    band->setBrush(wash);
    band->setPen(QPen(edge, 1.0, Qt::DashLine)); // told by its edge too, not by colour alone
    chart.addSeries(band);
}

void add_measured(QChart& chart, const Plot& plot, const QColor& ink)
{
    auto* line = series_of<QLineSeries>(plot.measured, &chart);
    line->setPen(QPen(ink, 2.0));
    auto* dots = series_of<QScatterSeries>(plot.measured, &chart);
    dots->setColor(ink);
    dots->setBorderColor(ink);
    dots->setMarkerSize(8.0);
    chart.addSeries(line);
    chart.addSeries(dots);
}

QDateTimeAxis* day_axis(const Plot& plot, QChart& chart)
{
    auto* days = new QDateTimeAxis(&chart);
    const double margin = std::max(3.0 * ms_a_day, 0.03 * (plot.to - plot.from));
    days->setRange(QDateTime::fromMSecsSinceEpoch(static_cast<qint64>(plot.from - margin)),
                   QDateTime::fromMSecsSinceEpoch(static_cast<qint64>(plot.to + margin)));
    days->setTickCount(3);                       // more would not have the room for their dates
    days->setFormat(QStringLiteral("d MMM yy")); // the month as a word: orders of days and months differ
    return days;
}

} // namespace

GrowthChart::GrowthChart(Shows shows, QWidget* parent) : QChartView(parent), shows_(shows)
{
    setObjectName(shows == Shows::length ? QStringLiteral("lengthChart") : QStringLiteral("massChart"));
    setAccessibleName(shows == Shows::length ? tr("Lengths by day") : tr("Weights by day"));
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setMinimumSize(220, 110);
}

void GrowthChart::show_record(const assess::RecordResult& record, const words::Formatter& formatter)
{
    const Quantity quantity = shows_ == Shows::length ? Quantity::length : mass_quantity(record);
    const words::DisplayUnit unit = words::display_unit(quantity, formatter.system());
    const Plot plot = shows_ == Shows::length ? length_plot(record, unit.factor) : mass_plot(record, unit.factor);
    QChart* chart = quiet_chart(*this, formatter);
    chart->setTitle(shows_ == Shows::length ? tr("Length, %1 (dashed: published growth)").arg(unit.symbol)
                                            : tr("Weight, %1").arg(unit.symbol));
    if (!plot.measured.empty()) {
        add_band(*chart, plot, palette().color(QPalette::Highlight));
        add_measured(*chart, plot, palette().color(QPalette::Text));
        auto* days = day_axis(plot, *chart);
        auto* figures = new QValueAxis(chart);
        const double margin = std::max(0.06 * (plot.highest - plot.lowest), 0.02 * plot.highest);
        figures->setRange(std::max(0.0, plot.lowest - margin), plot.highest + margin);
        figures->setTickCount(4);
        figures->applyNiceNumbers();
        figures->setLabelFormat(unit.decimals > 0 ? QStringLiteral("%.1f") : QStringLiteral("%.0f"));
        for (QAbstractAxis* axis : {static_cast<QAbstractAxis*>(days), static_cast<QAbstractAxis*>(figures)}) {
            dress(*axis, *this);
        }
        chart->addAxis(days, Qt::AlignBottom);
        chart->addAxis(figures, Qt::AlignLeft);
        for (QAbstractSeries* series : chart->series()) {
            series->attachAxis(days);
            series->attachAxis(figures);
        }
    }
    QChart* old = this->chart();
    setChart(chart);
    delete old;
    setVisible(!plot.measured.empty());
}

} // namespace loam::desk
