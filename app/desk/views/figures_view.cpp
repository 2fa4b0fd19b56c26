#include "app/desk/views/figures_view.hpp"

#include <QHeaderView>
#include <QResizeEvent>
#include <QSet>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/look/theme.hpp"
#include "app/drawing/verdict_mark.hpp"
#include "app/words/capitals.hpp"

namespace loam::desk {

namespace {

enum Column { name_column, verdict_column, likely_column, range_column, target_column, decided_column };

const auto apart = QStringLiteral("  "); // from the figures that end at the column's edge

QTreeWidgetItem* item_of(const FigureRow& row, const drawing::VerdictIcons& icons)
{
    auto* item = new QTreeWidgetItem({words::capitalised(row.name), row.why.verdict_words, row.likely, row.range,
                                      row.target, apart + row.decided_by});
    item->setTextAlignment(likely_column, Qt::AlignRight | Qt::AlignVCenter);
    item->setTextAlignment(range_column, Qt::AlignRight | Qt::AlignVCenter);
    item->setTextAlignment(target_column, Qt::AlignRight | Qt::AlignVCenter);
    if (row.why.judgement) {
        item->setIcon(verdict_column, icons[row.why.judgement->verdict]);
    }
    item->setData(name_column, explanation_role, QVariant::fromValue(row.why));
    for (int column = name_column; column <= decided_column; ++column) {
        item->setToolTip(column, item->text(column));
    }
    if (!row.decided_by.isEmpty()) {
        item->setToolTip(range_column, row.range + QLatin1Char('\n') + row.why.inputs);
        item->setToolTip(decided_column, row.why.inputs);
    }
    return item;
}

} // namespace

FiguresView::FiguresView(QWidget* parent) : QTreeWidget(parent)
{
    setObjectName(QStringLiteral("figures"));
    setAccessibleName(tr("Figures of the enclosure in view"));
    setHeaderLabels(
        {tr("Figure"), tr("Verdict"), tr("Likely"), tr("Range"), tr("Target"), apart + tr("What decides the range")});
    set_table_manners(*this);
    for (const Column column : {verdict_column, range_column, target_column, decided_column}) {
        let_wrap(*this, column);
    }
    set_widths(true);
    for (const int column : {likely_column, range_column, target_column}) {
        headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
}

void FiguresView::resizeEvent(QResizeEvent* event)
{
    constexpr int roomy_px = 1000; // in less, the tip of the range and the "why?" pane tell it
    const bool roomy = event->size().width() >= roomy_px;
    if (roomy == isColumnHidden(decided_column)) {
        setColumnHidden(decided_column, !roomy);
        set_widths(roomy);
    }
    QTreeWidget::resizeEvent(event);
}

// Set widths, since one long entry must not push the names away.
void FiguresView::set_widths(bool roomy)
{
    const struct {
        Column column;
        int width;
    } widths[] = {{verdict_column, roomy ? 180 : 150},
                  {likely_column, 68},
                  {range_column, roomy ? 150 : 118},
                  {target_column, roomy ? 150 : 112},
                  {decided_column, 260}};
    for (const auto& each : widths) {
        header()->setSectionResizeMode(each.column, QHeaderView::Interactive);
        header()->resizeSection(each.column, each.width);
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
    const drawing::VerdictIcons icons(is_dark(palette()));
    setUpdatesEnabled(false);
    clear();
    for (const FigureGroup& group : groups) {
        auto* top = new QTreeWidgetItem(this, {group.name});
        top->setFirstColumnSpanned(true);
        QFont bold = font();
        bold.setBold(true);
        top->setFont(name_column, bold);
        for (const FigureRow& row : group.rows) {
            top->addChild(item_of(row, icons));
            if (group.name == chosen_group && words::capitalised(row.name) == chosen) {
                setCurrentItem(top->child(top->childCount() - 1));
            }
        }
        top->setExpanded(!folded.contains(group.name));
    }
    setUpdatesEnabled(true);
}

} // namespace loam::desk
