#include "app/desk/look/table_manners.hpp"

#include <QHeaderView>
#include <QTreeWidget>

namespace loam::desk {

void set_table_manners(QTreeWidget& table)
{
    table.setFrameShape(QFrame::NoFrame);
    table.setAlternatingRowColors(true);
    table.setUniformRowHeights(true);
    table.setIndentation(14);
    table.setStyleSheet(QStringLiteral("QTreeView::item { padding: 2px 0px; }"));
    table.header()->setStretchLastSection(false);
    table.header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.header()->setSectionResizeMode(0, QHeaderView::Stretch);
    table.header()->setMinimumSectionSize(40);
}

} // namespace loam::desk
