#include "app/desk/views/comparison_view.hpp"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QSet>
#include <QTreeWidget>
#include <QTreeWidgetItemIterator>
#include <QVBoxLayout>
#include <functional>
#include <utility>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/look/theme.hpp"
#include "app/desk/views/comparison_item.hpp"
#include "app/desk/views/table_bar.hpp"

namespace loam::desk {

namespace {

void for_each_row(QTreeWidget& table, const std::function<void(QTreeWidgetItem&)>& visit)
{
    for (QTreeWidgetItemIterator item(&table); *item != nullptr; ++item) {
        if ((*item)->parent() != nullptr) {
            visit(**item);
        }
    }
}

// Hides what does not differ, and has no part that does.
bool show_differing(QTreeWidgetItem& item, bool only)
{
    bool shown = !only || item.data(what_column, differs_role).toBool();
    for (int i = 0; i < item.childCount(); ++i) {
        shown = show_differing(*item.child(i), only) || shown;
    }
    item.setHidden(!shown);
    return shown;
}

// Where an item stands, to find it again in a table that was filled anew.
std::vector<int> path_of(const QTreeWidgetItem* item)
{
    std::vector<int> path;
    for (; item != nullptr && item->parent() != nullptr; item = item->parent()) {
        path.insert(path.begin(), item->parent()->indexOfChild(const_cast<QTreeWidgetItem*>(item)));
    }
    if (item != nullptr) {
        path.insert(path.begin(), item->treeWidget()->indexOfTopLevelItem(const_cast<QTreeWidgetItem*>(item)));
    }
    return path;
}

QTreeWidgetItem* item_at(const QTreeWidget& table, const std::vector<int>& path)
{
    QTreeWidgetItem* item = path.empty() ? nullptr : table.topLevelItem(path.front());
    for (std::size_t i = 1; i < path.size() && item != nullptr; ++i) {
        item = item->child(path[i]);
    }
    return item;
}

QTreeWidgetItem* group_item(QTreeWidget& table, const QString& title)
{
    auto* top = new QTreeWidgetItem(&table, {title});
    top->setFirstColumnSpanned(true);
    QFont bold = table.font();
    bold.setBold(true);
    top->setFont(what_column, bold);
    return top;
}

} // namespace

ComparisonView::ComparisonView(QWidget* parent)
    : QWidget(parent), with_(new QLabel(this)), only_differing_(new QCheckBox(tr("Only what &differs"), this)),
      table_(new QTreeWidget(this)), bar_(new TableBar(*table_, QStringLiteral("comparison"), this))
{
    setObjectName(QStringLiteral("comparisonView"));
    with_->setObjectName(QStringLiteral("comparedWith"));
    with_->setTextFormat(Qt::PlainText);
    with_->setWordWrap(true);
    only_differing_->setObjectName(QStringLiteral("onlyDiffering"));
    auto* close = new QPushButton(tr("C&lose comparison"), this);
    close->setObjectName(QStringLiteral("closeComparison"));
    table_->setObjectName(QStringLiteral("comparison"));
    table_->setAccessibleName(tr("This plan beside the other"));
    table_->setHeaderLabels({tr("Figure"), tr("Other plan"), tr("This plan"), tr("Change")});
    set_table_manners(*table_);
    for (const int column : {other_column, own_column, change_column}) {
        let_wrap(*table_, column);
        table_->header()->setSectionResizeMode(column, QHeaderView::Interactive);
    }

    auto* row = new QHBoxLayout;
    row->setContentsMargins(6, 4, 6, 2);
    row->addWidget(with_, 1);
    row->addWidget(only_differing_);
    row->addWidget(close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addLayout(row);
    column->addWidget(bar_);
    column->addWidget(table_, 1);
    connect(bar_, &TableBar::exportWanted, this, &ComparisonView::exportWanted);
    connect(close, &QPushButton::clicked, this, &ComparisonView::closed);
    connect(only_differing_, &QCheckBox::toggled, this, &ComparisonView::filter);
}

void ComparisonView::show_comparison(const QString& called, const SharedAssessment& other, const SharedAssessment& own,
                                     const words::Speaker& speaker)
{
    const QString with = tr("Compared with %1").arg(called);
    if (!other) {
        with_->setText(with);
        table_->clear();
        csv_.clear();
        bar_->show_table(tr("The other plan is being worked out…"), {});
        return;
    }
    if (!own || !own->complete) {
        with_->setText(tr("%1. The new figures are being worked out…").arg(with));
        return;
    }
    with_->setText(with);
    const assess::Comparison comparison = assess::compare(*other, *own);
    const report::TwoPlans plans{{other.get(), own.get()}, comparison};
    const words::Formatter& formatter = speaker.formatter();
    std::vector<report::ComparisonGroup> groups = report::enclosure_groups(plans, formatter);
    groups.push_back(report::costs_group(plans, formatter));
    groups.push_back(report::purchases_group(plans, speaker));
    fill(groups);
    QString summary = report::payback_sentence(comparison.payback, tr("this plan"), formatter);
    int differing = 0;
    for_each_row(*table_,
                 [&](QTreeWidgetItem& item) { differing += item.data(what_column, differs_role).toBool() ? 1 : 0; });
    if (differing == 0) {
        summary = tr("Nothing differs.");
    } else if (own->costs.price_illustrative) {
        summary += QLatin1Char(' ') + tr("The prices are invented examples.");
    }
    report::PastedTable table = report::comparison_table(plans, {called, tr("This plan")}, summary, speaker);
    csv_ = report::pasted_csv(table);
    bar_->show_table(summary, std::move(table));
}

void ComparisonView::fill(const std::vector<report::ComparisonGroup>& groups)
{
    // What was folded stays folded, where it was looked at stays in view.
    QSet<QString> folded;
    for (int i = 0; i < table_->topLevelItemCount(); ++i) {
        if (!table_->topLevelItem(i)->isExpanded()) {
            folded << table_->topLevelItem(i)->text(what_column);
        }
    }
    const std::vector<int> kept = path_of(table_->currentItem());
    const int scrolled = table_->verticalScrollBar()->value();
    const drawing::VerdictIcons icons(is_dark(palette()));
    table_->setUpdatesEnabled(false);
    table_->clear();
    for (const report::ComparisonGroup& group : groups) {
        if (group.rows.empty()) {
            continue;
        }
        QTreeWidgetItem* top = group_item(*table_, group.title);
        QTreeWidgetItem* whole = top; // what the rows of level 1 are parts of
        QString heading;
        for (const report::ComparisonRow& row : group.rows) {
            heading = row.heading ? row.name : row.level == 0 ? QString() : heading;
            QTreeWidgetItem* item = comparison_item(row, heading, icons);
            if (row.level == 0) {
                top->addChild(item);
                whole = item;
            } else {
                whole->addChild(item);
            }
        }
        top->setExpanded(!folded.contains(group.title));
        for (int i = 0; i < top->childCount(); ++i) {
            top->child(i)->setExpanded(true);
        }
    }
    fit_columns();
    filter();
    if (QTreeWidgetItem* again = item_at(*table_, kept)) {
        table_->setCurrentItem(again);
    }
    table_->setUpdatesEnabled(true);
    table_->verticalScrollBar()->setValue(scrolled);
}

void ComparisonView::filter()
{
    for (int i = 0; i < table_->topLevelItemCount(); ++i) {
        show_differing(*table_->topLevelItem(i), only_differing_->isChecked());
    }
}

void ComparisonView::fit_columns()
{
    constexpr int roomy_px = 1000;
    const bool roomy = width() >= roomy_px;
    for_each_row(*table_, [roomy](QTreeWidgetItem& item) { say_in_full(item, roomy); });
    // Shares: figures with their verdicts are the widest, on a small screen they go on in a second line.
    const double side = roomy ? 0.3 : 0.275;
    table_->header()->resizeSection(other_column, qRound(side * width()));
    table_->header()->resizeSection(own_column, qRound(side * width()));
    table_->header()->resizeSection(change_column, qRound((roomy ? 0.2 : 0.23) * width()));
}

void ComparisonView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit_columns();
}

} // namespace loam::desk
