// How all result tables behave: a name that takes what room there is, figures as wide as they need, calm rows.
#pragma once

class QTreeWidget;

namespace loam::desk {

void set_table_manners(QTreeWidget& table);
// Long entries of this column go on in a second line.
void let_wrap(QTreeWidget& table, int column);

} // namespace loam::desk
