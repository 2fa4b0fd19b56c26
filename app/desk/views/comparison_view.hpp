// The open plan beside another: what either has, and how far it is from the one to the other, by sign and word.
#pragma once

#include <QWidget>

#include "app/desk/document/runner.hpp"
#include "app/report/comparison_rows.hpp"
#include "app/words/speaker.hpp"

class QCheckBox;
class QLabel;
class QTreeWidget;

namespace loam::desk {

class TableBar;

class ComparisonView : public QWidget {
    Q_OBJECT

public:
    explicit ComparisonView(QWidget* parent = nullptr);

    // `other`, which is called so, is null while it is being worked out; while `own` is not whole what was last
    // compared stays in view.
    void show_comparison(const QString& called, const SharedAssessment& other, const SharedAssessment& own,
                         const words::Speaker& speaker);
    QTreeWidget* table() const { return table_; }

    const std::string& csv() const { return csv_; } // of what is compared; empty before

signals:
    void closed();
    void exportWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fill(const std::vector<report::ComparisonGroup>& groups);
    void filter();
    void fit_columns();

    QLabel* with_;
    QCheckBox* only_differing_;
    QTreeWidget* table_;
    TableBar* bar_;
    std::string csv_;
};

} // namespace loam::desk
