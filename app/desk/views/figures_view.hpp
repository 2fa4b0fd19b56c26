// The figures of the enclosure in view as a table with groups: likely value, range, target, verdict.
#pragma once

#include <QTreeWidget>

#include "app/desk/views/figure_rows.hpp"

namespace loam::desk {

class FiguresView : public QTreeWidget {
    Q_OBJECT

public:
    explicit FiguresView(QWidget* parent = nullptr);

    void show_groups(const std::vector<FigureGroup>& groups);

protected:
    void resizeEvent(QResizeEvent* event) override; // what decides a range has a column where there is room

private:
    void set_widths(bool roomy);
};

} // namespace loam::desk
