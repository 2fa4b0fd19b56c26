#include "app/desk/views/figures_view.hpp"

#include <QHeaderView>
#include <QSet>

#include "app/desk/look/theme.hpp"
#include "app/drawing/verdict_mark.hpp"

namespace loam::desk {

namespace {

enum Column { name_column, likely_column, range_column, target_column, verdict_column };

QTreeWidgetItem* item_of(const FigureRow& row, bool dark)
{
    auto* item = new QTreeWidgetItem({row.name, row.likely, row.range, row.target, row.why.verdict_words});
    item->setTextAlignment(likely_column, Qt::AlignRight | Qt::AlignVCenter);
    item->setTextAlignment(range_column, Qt::AlignRight | Qt::AlignVCenter);
    item->setTextAlignment(target_column, Qt::AlignRight | Qt::AlignVCenter);
    if (row.why.judgement) {
        item->setIcon(verdict_column, drawing::verdict_icon(row.why.judgement->verdict, dark));
    }
    item->setData(name_column, explanation_role, QVariant::fromValue(row.why));
    item->setToolTip(name_column, row.name);
    return item;
}

} // namespace

FiguresView::FiguresView(QWidget* parent) : QTreeWidget(parent)
{
    setObjectName(QStringLiteral("figures"));
    setAccessibleName(tr("Figures of the enclosure in view"));
    setHeaderLabels({tr("Figure"), tr("Likely"), tr("Range"), tr("Target"), tr("Verdict")});
    setFrameShape(QFrame::NoFrame);
    setAlternatingRowColors(true);
    setRootIsDecorated(true);
    setUniformRowHeights(true);
    header()->setStretchLastSection(true);
    header()->setSectionResizeMode(name_column, QHeaderView::Interactive);
    header()->resizeSection(name_column, 210);
    for (const int column : {likely_column, range_column, target_column}) {
        header()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
        headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
}

void FiguresView::show_groups(const std::vector<FigureGroup>& groups)
{
    // What was folded stays folded, where it was looked at stays in view.
    QSet<QString> folded;
    for (int i = 0; i < topLevelItemCount(); ++i) {
        if (!topLevelItem(i)->isExpanded()) {
            folded << topLevelItem(i)->text(name_column);
        }
    }
    const QString chosen = currentItem() != nullptr ? currentItem()->text(name_column) : QString();
    const QString chosen_group = currentItem() != nullptr && currentItem()->parent() != nullptr
                                     ? currentItem()->parent()->text(name_column)
                                     : QString();
    const bool dark = is_dark(palette());
    setUpdatesEnabled(false);
    clear();
    for (const FigureGroup& group : groups) {
        auto* top = new QTreeWidgetItem(this, {group.name});
        top->setFirstColumnSpanned(true);
        QFont bold = font();
        bold.setBold(true);
        top->setFont(name_column, bold);
        for (const FigureRow& row : group.rows) {
            top->addChild(item_of(row, dark));
            if (group.name == chosen_group && row.name == chosen) {
                setCurrentItem(top->child(top->childCount() - 1));
            }
        }
        top->setExpanded(!folded.contains(group.name));
    }
    setUpdatesEnabled(true);
}

} // namespace loam::desk
