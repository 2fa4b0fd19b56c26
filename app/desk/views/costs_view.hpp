// What it costs to begin and to run, line by line and month by month, and the chart over the years.
#pragma once

#include <QWidget>

#include "app/report/cost_rows.hpp"
#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

class QLabel;
class QTreeWidget;

namespace loam::desk {

class TableBar;
class YearsChart;

class CostsView : public QWidget {
    Q_OBJECT

public:
    explicit CostsView(QWidget* parent = nullptr);

    void show_costs(const assess::Assessment& assessment, const words::Speaker& speaker);
    QTreeWidget* table() const { return table_; }

signals:
    void exportWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fill(const std::vector<report::CostRow>& rows, const words::Formatter& formatter);

    QTreeWidget* table_;
    YearsChart* chart_;
    QWidget* graph_; // the chart with its key
    QLabel* note_;
    TableBar* bar_;
};

} // namespace loam::desk
