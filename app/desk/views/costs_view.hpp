// What it costs to begin and to run, line by line, and the chart over the years.
#pragma once

#include <QWidget>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

class QLabel;
class QTreeWidget;

namespace loam::desk {

class YearsChart;

class CostsView : public QWidget {
    Q_OBJECT

public:
    explicit CostsView(QWidget* parent = nullptr);

    void show_costs(const assess::Assessment& assessment, const words::Speaker& speaker);
    QTreeWidget* table() const { return table_; }

private:
    QTreeWidget* table_;
    YearsChart* chart_;
    QLabel* note_;
};

} // namespace loam::desk
