#include "app/desk/look/chart_manners.hpp"

#include <QGraphicsLayout>
#include <QWidget>
#include <QtCharts/QLegend>

namespace loam::desk {

QChart* quiet_chart(const QWidget& of, const words::Formatter& formatter)
{
    auto* chart = new QChart;
    chart->setBackgroundBrush(of.palette().base());
    chart->setBackgroundRoundness(0);
    chart->setMargins(QMargins(4, 4, 4, 4));
    chart->layout()->setContentsMargins(0, 0, 0, 0);
    chart->legend()->hide();
    chart->setLocale(formatter.locale());
    chart->setLocalizeNumbers(true);
    chart->setTitleBrush(of.palette().text());
    chart->setTitleFont(of.font());
    return chart;
}

void dress(QAbstractAxis& axis, const QWidget& of)
{
    axis.setLabelsBrush(of.palette().text());
    axis.setTitleBrush(of.palette().text());
    axis.setGridLineColor(of.palette().color(QPalette::Midlight));
    axis.setLinePenColor(of.palette().color(QPalette::Mid));
    axis.setTitleFont(of.font());
    axis.setLabelsFont(of.font());
}

} // namespace loam::desk
