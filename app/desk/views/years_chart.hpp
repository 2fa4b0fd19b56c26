// What the enclosures will have cost after each year: the typical prices as a line, low to high as a band.
#pragma once

#include <QtCharts/QChartView>

#include "app/words/numbers.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

class YearsChart : public QChartView {
    Q_OBJECT

public:
    explicit YearsChart(QWidget* parent = nullptr);

    void show_horizon(const assess::Costs& costs, const words::Formatter& formatter);
};

} // namespace loam::desk
