#include "app/desk/views/course_chart.hpp"

#include <QEvent>
#include <QGraphicsLayout>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <cmath>

#include "app/desk/look/chart_manners.hpp"
#include "app/desk/look/course_inks.hpp"
#include "app/desk/look/theme.hpp"
#include "app/words/courses.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

namespace {

// The first step of 1, 2, 5, 10, … that needs no more than `most` of them.
double round_step(double span, double most)
{
    double step = 1.0;
    for (const double factor : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0}) {
        step = factor;
        if (span / factor <= most) {
            break;
        }
    }
    return step;
}

double hour_step(double hours)
{
    double step = 0.5;
    for (const double candidate : {0.5, 1.0, 2.0, 3.0, 6.0, 12.0, 24.0}) {
        step = candidate;
        if (hours / candidate <= 8.0) {
            break;
        }
    }
    return step;
}

} // namespace

CourseChart::CourseChart(QWidget* parent) : QChartView(parent)
{
    setObjectName(QStringLiteral("courseChart"));
    setAccessibleName(tr("Temperatures over hours"));
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setMinimumSize(240, 160);
    setCacheMode(QGraphicsView::CacheNone); // the background is drawn from the course
    setViewportUpdateMode(QGraphicsView::FullViewportUpdate);
}

void CourseChart::show_course(const assess::CourseResult& course, const std::vector<TargetBand>& targets,
                              const words::Formatter& formatter)
{
    course_ = course;
    targets_ = targets;
    formatter_ = formatter;
    redraw();
}

void CourseChart::changeEvent(QEvent* event)
{
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        redraw();
    }
}

double CourseChart::shown(double celsius) const
{
    const words::DisplayUnit unit = words::display_unit(words::Quantity::temperature, formatter_.system());
    return celsius * unit.factor + unit.offset;
}

CourseChart::Scale CourseChart::scale() const
{
    Scale result;
    if (course_.course.points.empty()) {
        return result;
    }
    double low_c = course_.course.points.front().room_c;
    double high_c = low_c;
    const auto take = [&](double celsius) {
        low_c = std::min(low_c, celsius);
        high_c = std::max(high_c, celsius);
    };
    for (const climate::CoursePoint& point : course_.course.points) {
        take(point.room_c);
        take(point.basking_c + course_.basking_spread_k.low);
        take(point.basking_c + course_.basking_spread_k.high);
        take(point.warm_c + course_.warm_spread_k.low);
        take(point.warm_c + course_.warm_spread_k.high);
        take(point.cool_c + course_.cool_spread_k.low);
        take(point.cool_c + course_.cool_spread_k.high);
    }
    for (const TargetBand& band : targets_) {
        take(band.target_c.min.value_or(low_c));
        take(band.target_c.max.value_or(high_c));
    }
    // A limit far away would flatten what there is to see; the sentences name it.
    constexpr double near_k = 12.0;
    const double from_c = low_c - near_k;
    const double to_c = high_c + near_k;
    for (const assess::TimeToLimit& limit : course_.limits) {
        if (limit.limit_c > from_c && limit.limit_c < to_c) {
            take(limit.limit_c);
        }
    }
    const double span = shown(high_c) - shown(low_c);
    result.step = round_step(span, 7.0);
    result.low = std::floor((shown(low_c) - 0.04 * span) / result.step) * result.step;
    result.high = std::ceil((shown(high_c) + 0.02 * span) / result.step) * result.step;
    result.last_h = std::max(0.1, course_.course.points.back().hour);
    return result;
}

void CourseChart::add_line(QChart& chart, const QString& name, double climate::CoursePoint::*reading,
                           const Range& spread_k, const QPen& pen)
{
    auto* low = new QLineSeries(&chart);
    auto* high = new QLineSeries(&chart);
    auto* likely = new QLineSeries(&chart);
    likely->setName(name);
    // The basking spot's range is that of the lamp: in the dark hours of a day there is none of it.
    const bool while_lit =
        reading == &climate::CoursePoint::basking_c && words::course_kind(course_.id) == words::CourseKind::day;
    for (const climate::CoursePoint& point : course_.course.points) {
        const double celsius = point.*reading;
        likely->append(point.hour, shown(celsius));
        if (!while_lit || point.lamps_on) {
            low->append(point.hour, shown(celsius + spread_k.low));
            high->append(point.hour, shown(celsius + spread_k.high));
        }
    }
    if (spread_k.high > spread_k.low && low->count() > 1) {
        auto* band = new QAreaSeries(high, low);
        QColor wash = pen.color();
        wash.setAlphaF(0.20F);
        band->setPen(Qt::NoPen);
        band->setBrush(wash);
        chart.addSeries(band);
    }
    likely->setPen(pen);
    chart.addSeries(likely);
    lines_.push_back({name, pen, likely->points().back()});
}

void CourseChart::add_axes(QChart& chart, const QString& hours_since)
{
    auto* hours = new QValueAxis(&chart);
    hours->setRange(0.0, scale_.last_h);
    hours->setTickType(QValueAxis::TicksDynamic);
    hours->setTickInterval(hour_step(scale_.last_h));
    hours->setLabelFormat(scale_.last_h < 4.0 ? QStringLiteral("%.1f") : QStringLiteral("%.0f"));
    hours->setTitleText(hours_since);
    auto* degrees = new QValueAxis(&chart);
    degrees->setRange(scale_.low, scale_.high);
    degrees->setTickType(QValueAxis::TicksDynamic);
    degrees->setTickAnchor(scale_.low);
    degrees->setTickInterval(scale_.step);
    degrees->setLabelFormat(QStringLiteral("%.0f"));
    degrees->setTitleText(formatter_.unit(words::Quantity::temperature));
    dress(*hours, *this);
    dress(*degrees, *this);
    chart.addAxis(hours, Qt::AlignBottom);
    chart.addAxis(degrees, Qt::AlignLeft);
    for (QAbstractSeries* series : chart.series()) {
        series->attachAxis(hours);
        series->attachAxis(degrees);
    }
}

void CourseChart::find_limits()
{
    limits_.clear();
    for (const assess::TimeToLimit& limit : course_.limits) {
        const double at = shown(limit.limit_c);
        const bool outside = at < scale_.low || at > scale_.high;
        const bool told = std::any_of(limits_.begin(), limits_.end(),
                                      [at](const Limit& each) { return std::abs(each.at - at) < 1e-9; });
        if (!outside && !told) {
            const QString degrees = formatter_.value(limit.limit_c, words::Quantity::temperature);
            limits_.push_back({limit.direction == Direction::above ? tr("harmful over %1").arg(degrees)
                                                                   : tr("harmful under %1").arg(degrees),
                               at});
        }
    }
}

void CourseChart::tell_plot()
{
    const QRectF plot = chart()->plotArea();
    emit plotMoved(mapFromScene(chart()->mapToScene(plot.topLeft())).x(),
                   mapFromScene(chart()->mapToScene(plot.topRight())).x());
}

void CourseChart::redraw()
{
    scale_ = scale();
    lines_.clear();
    lit_ = words::lit_hours(course_.course);
    find_limits();
    auto* chart = new QChart;
    chart->setBackgroundVisible(false); // ours lies below
    chart->setLocale(formatter_.locale());
    chart->setLocalizeNumbers(true);
    chart->legend()->hide();
    const int names = fontMetrics().horizontalAdvance(words::zone(assess::Zone::basking)) + 18;
    chart->setMargins(QMargins(4, 8, names, 4));
    chart->layout()->setContentsMargins(0, 0, 0, 0);
    if (!course_.course.points.empty()) {
        const bool dark = is_dark(palette());
        add_line(*chart, tr("room"), &climate::CoursePoint::room_c, {}, room_pen(dark));
        add_line(*chart, words::zone(assess::Zone::cool), &climate::CoursePoint::cool_c, course_.cool_spread_k,
                 zone_pen(assess::Zone::cool, dark));
        add_line(*chart, words::zone(assess::Zone::warm), &climate::CoursePoint::warm_c, course_.warm_spread_k,
                 zone_pen(assess::Zone::warm, dark));
        add_line(*chart, words::zone(assess::Zone::basking), &climate::CoursePoint::basking_c, course_.basking_spread_k,
                 zone_pen(assess::Zone::basking, dark));
        const words::CourseKind kind = words::course_kind(course_.id);
        add_axes(*chart, kind == words::CourseKind::day       ? tr("Hours since the lamps went on")
                         : kind == words::CourseKind::warm_up ? tr("Hours since switch-on")
                                                              : tr("Hours since it began"));
    }
    QChart* old = this->chart();
    setChart(chart);
    delete old;
    // Queued: told while the chart is being laid out, when the view does not know yet where it will stand.
    connect(chart, &QChart::plotAreaChanged, this, &CourseChart::tell_plot, Qt::QueuedConnection);
    setAccessibleDescription(words::course_name(course_.id));
}

} // namespace loam::desk
