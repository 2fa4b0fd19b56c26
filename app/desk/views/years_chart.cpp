#include "app/desk/views/years_chart.hpp"

#include <QtCharts/QAreaSeries>
#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <cmath>

#include "app/desk/look/chart_manners.hpp"

namespace loam::desk {

namespace {

double major(const Money& money)
{
    return money.decimal().value();
}

} // namespace

YearsChart::YearsChart(QWidget* parent) : QChartView(parent)
{
    setObjectName(QStringLiteral("yearsChart"));
    setAccessibleName(tr("Cost over the years"));
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setMinimumSize(220, 140);
}

void YearsChart::show_horizon(const assess::Costs& costs, const words::Formatter& formatter)
{
    QChart* chart = quiet_chart(*this, formatter);
    chart->setTitle(tr("Spent so far, %1").arg(QString::fromStdString(costs.currency.code)));

    auto* low = new QLineSeries(chart);
    auto* high = new QLineSeries(chart);
    auto* typical = new QLineSeries(chart);
    double most = 1.0;
    for (const assess::HorizonYear& year : costs.horizon) {
        const auto x = static_cast<double>(year.year);
        low->append(x, major(year.cumulative.low));
        high->append(x, major(year.cumulative.high));
        typical->append(x, major(year.cumulative.typical));
        most = std::max(most, major(year.cumulative.high));
    }
    QColor accent = palette().color(QPalette::Highlight);
    auto* band = new QAreaSeries(high, low);
    band->setPen(Qt::NoPen);
    QColor wash = accent;
    wash.setAlphaF(0.22F);
    band->setBrush(wash);
    typical->setPen(QPen(accent, 2.2));
    typical->setPointsVisible(true);
    chart->addSeries(band);
    chart->addSeries(typical);

    auto* years = new QValueAxis(chart);
    const auto last =
        static_cast<double>(costs.horizon.empty() ? 1 : std::max<std::int64_t>(1, costs.horizon.back().year));
    years->setRange(-0.02 * last, 1.02 * last); // the first and the last dot whole
    years->setTickType(QValueAxis::TicksDynamic);
    years->setTickInterval(std::max(1.0, std::ceil(last / 10.0)));
    years->setLabelFormat(QStringLiteral("%.0f"));
    years->setTitleText(tr("Years; 0 is the start"));
    auto* amount = new QValueAxis(chart);
    amount->setRange(0.0, most * 1.05);
    amount->applyNiceNumbers();
    amount->setMin(0.0);
    amount->setLabelFormat(QStringLiteral("%.0f"));
    dress(*years, *this);
    dress(*amount, *this);
    chart->addAxis(years, Qt::AlignBottom);
    chart->addAxis(amount, Qt::AlignLeft);
    for (QAbstractSeries* series : {static_cast<QAbstractSeries*>(band), static_cast<QAbstractSeries*>(typical)}) {
        series->attachAxis(years);
        series->attachAxis(amount);
    }
    QChart* old = this->chart();
    setChart(chart);
    delete old;
    setToolTip({});
    if (!costs.horizon.empty()) {
        setToolTip(
            tr("After %1 years: %2")
                .arg(formatter.count(costs.horizon.back().year), formatter.money(costs.horizon.back().cumulative)));
    }
    setAccessibleDescription(toolTip());
}

} // namespace loam::desk
