// The line over a table that can be taken along: what it comes to, and two buttons to copy or export it.
#pragma once

#include <QWidget>

#include "app/report/pasted_table.hpp"

class QAction;
class QLabel;
class QTreeWidget;

namespace loam::desk {

class TableBar : public QWidget {
    Q_OBJECT

public:
    // The actions stand in the table's context menu too. `stem` begins their object names: "shopping", "costs".
    TableBar(QTreeWidget& table, const QString& stem, QWidget* parent);

    void say(const QString& sum);
    // What the copy holds; nothing can be taken along before there is something.
    void show_table(const QString& sum, report::PastedTable table);

signals:
    void exportWanted();

private:
    void copy();

    QLabel* sum_;
    QAction* copy_;
    QAction* export_;
    report::PastedTable table_;
};

} // namespace loam::desk
