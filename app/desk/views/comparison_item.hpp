// One row of the comparison as an item of its table.
#pragma once

#include <QTreeWidgetItem>

#include "app/drawing/verdict_mark.hpp"
#include "app/report/comparison_rows.hpp"

namespace loam::desk {

enum ComparisonColumn { what_column, other_column, own_column, change_column };

// Whether the two sides of the row differ; a heading has no such data.
inline constexpr int differs_role = Qt::UserRole + 2;

// `heading` names the case of a zone or humidity; empty where the row speaks for itself.
QTreeWidgetItem* comparison_item(const report::ComparisonRow& row, const QString& heading,
                                 const drawing::VerdictIcons& icons);
// With the direction of what falls short, where there is room for it.
void say_in_full(QTreeWidgetItem& item, bool in_full);

} // namespace loam::desk
