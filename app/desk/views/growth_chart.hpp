// Lengths or weights of an animal by day, with the lengths that published growth makes expected as a band.
#pragma once

#include <QtCharts/QChartView>

#include "app/words/numbers.hpp"
#include "core/assess/record_result.hpp"

namespace loam::desk {

class GrowthChart : public QChartView {
    Q_OBJECT

public:
    enum class Shows { length, mass };
    explicit GrowthChart(Shows shows, QWidget* parent = nullptr);

    void show_record(const assess::RecordResult& record, const words::Formatter& formatter);

private:
    Shows shows_;
};

} // namespace loam::desk
