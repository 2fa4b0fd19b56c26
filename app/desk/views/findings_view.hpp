// The findings, most serious first, each with its mark, its sentence and its remedy.
#pragma once

#include <QListView>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"

class QStandardItemModel;

namespace loam::desk {

class FindingsView : public QListView {
    Q_OBJECT

public:
    explicit FindingsView(QWidget* parent = nullptr);

    void show_findings(const assess::Assessment& assessment, const words::Speaker& speaker);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QStandardItemModel* model_;
};

} // namespace loam::desk
