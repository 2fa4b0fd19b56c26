// How all result tables behave: a name that takes what room there is, figures as wide as they need, calm rows.
#pragma once

#include <QString>

class QTreeWidget;

namespace loam::desk {

void set_table_manners(QTreeWidget& table);

// With a capital first letter, as a line of a table begins.
QString capitalised(const QString& text);

} // namespace loam::desk
