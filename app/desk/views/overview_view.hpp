// All enclosures at a glance; the one that is chosen is shown by form and drawing.
#pragma once

#include <QTreeWidget>

#include "app/report/overview_rows.hpp"

namespace loam::desk {

class OverviewView : public QTreeWidget {
    Q_OBJECT

public:
    explicit OverviewView(QWidget* parent = nullptr);

    void show_rows(const std::vector<report::OverviewRow>& rows, const words::Speaker& speaker);

signals:
    void enclosureChosen(const QString& id);
};

} // namespace loam::desk
