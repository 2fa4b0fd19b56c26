#include "app/desk/views/comparison_view.hpp"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QSet>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <functional>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/look/theme.hpp"
#include "app/desk/views/comparison_item.hpp"

namespace loam::desk {

namespace {

void for_each_row(const QTreeWidget& table, const std::function<void(QTreeWidgetItem&)>& visit)
{
    for (int i = 0; i < table.topLevelItemCount(); ++i) {
        for (int j = 0; j < table.topLevelItem(i)->childCount(); ++j) {
            visit(*table.topLevelItem(i)->child(j));
        }
    }
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
      summary_(new QLabel(this)), table_(new QTreeWidget(this))
{
    setObjectName(QStringLiteral("comparisonView"));
    with_->setObjectName(QStringLiteral("comparedWith"));
    with_->setTextFormat(Qt::PlainText);
    with_->setWordWrap(true);
    only_differing_->setObjectName(QStringLiteral("onlyDiffering"));
    auto* close = new QPushButton(tr("&Close comparison"), this);
    close->setObjectName(QStringLiteral("closeComparison"));
    summary_->setObjectName(QStringLiteral("comparisonSummary"));
    summary_->setTextFormat(Qt::PlainText);
    summary_->setWordWrap(true);
    summary_->setContentsMargins(6, 0, 6, 4);
    table_->setObjectName(QStringLiteral("comparison"));
    table_->setAccessibleName(tr("This plan beside the other"));
    table_->setHeaderLabels({tr("Figure"), tr("Other plan"), tr("This plan"), tr("Change")});
    set_table_manners(*table_);
    let_wrap(*table_, change_column);
    for (const int column : {other_column, own_column, change_column}) {
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
    column->addWidget(summary_);
    column->addWidget(table_, 1);
    connect(close, &QPushButton::clicked, this, &ComparisonView::closed);
    connect(only_differing_, &QCheckBox::toggled, this, &ComparisonView::filter);
}

void ComparisonView::show_comparison(const QString& called, const SharedAssessment& other, const SharedAssessment& own,
                                     const words::Speaker& speaker)
{
    with_->setText(tr("Compared with %1").arg(called));
    if (!other) {
        table_->clear();
        summary_->setText(tr("The other plan is being worked out…"));
        return;
    }
    if (!own || !own->complete) {
        return;
    }
    const assess::Comparison comparison = assess::compare(*other, *own);
    const report::TwoPlans plans{{other.get(), own.get()}, comparison};
    const words::Formatter& formatter = speaker.formatter();
    std::vector<report::ComparisonGroup> groups = report::enclosure_groups(plans, formatter);
    groups.push_back(report::costs_group(plans, formatter));
    groups.push_back(report::purchases_group(plans, speaker));
    fill(groups);
    QString summary = report::payback_sentence(comparison.payback, tr("this plan"), formatter);
    int differing = 0;
    for_each_row(*table_, [&](const QTreeWidgetItem& item) {
        differing += item.data(what_column, differs_role).toBool() ? 1 : 0;
    });
    if (differing == 0) {
        summary = tr("Nothing differs.");
    } else if (own->costs.price_illustrative) {
        summary += QLatin1Char(' ') + tr("The prices are invented examples.");
    }
    summary_->setText(summary);
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
    const QTreeWidgetItem* current = table_->currentItem();
    const int kept =
        current != nullptr && current->parent() != nullptr ? table_->indexOfTopLevelItem(current->parent()) : -1;
    const int kept_row = kept >= 0 ? current->parent()->indexOfChild(table_->currentItem()) : -1;
    const int scrolled = table_->verticalScrollBar()->value();
    const bool dark = is_dark(palette());
    table_->setUpdatesEnabled(false);
    table_->clear();
    for (const report::ComparisonGroup& group : groups) {
        if (group.rows.empty()) {
            continue;
        }
        QTreeWidgetItem* top = group_item(*table_, group.title);
        QString heading;
        for (const report::ComparisonRow& row : group.rows) {
            heading = row.heading ? row.name : row.level == 0 ? QString() : heading;
            top->addChild(comparison_item(row, heading, dark));
        }
        top->setExpanded(!folded.contains(group.title));
    }
    fit_columns();
    filter();
    if (kept >= 0 && kept < table_->topLevelItemCount() && kept_row < table_->topLevelItem(kept)->childCount()) {
        table_->setCurrentItem(table_->topLevelItem(kept)->child(kept_row));
    }
    table_->setUpdatesEnabled(true);
    table_->verticalScrollBar()->setValue(scrolled);
}

void ComparisonView::filter()
{
    const bool only = only_differing_->isChecked();
    for (int i = 0; i < table_->topLevelItemCount(); ++i) {
        QTreeWidgetItem* top = table_->topLevelItem(i);
        QTreeWidgetItem* heading = nullptr; // of the rows that follow
        bool any = false;
        for (int j = 0; j < top->childCount(); ++j) {
            QTreeWidgetItem* item = top->child(j);
            const QVariant differs = item->data(what_column, differs_role);
            const bool hidden = only && !differs.toBool();
            item->setHidden(hidden); // a heading until one of its rows is seen
            if (!differs.isValid()) {
                heading = item;
                continue;
            }
            if (!hidden && heading != nullptr) {
                heading->setHidden(false);
            }
            any = any || !hidden;
        }
        top->setHidden(!any);
    }
}

void ComparisonView::fit_columns()
{
    constexpr int roomy_px = 1000;
    const bool roomy = width() >= roomy_px;
    for_each_row(*table_, [roomy](QTreeWidgetItem& item) { say_in_full(item, roomy); });
    const int side_px = roomy ? 290 : 172;
    table_->header()->resizeSection(other_column, side_px);
    table_->header()->resizeSection(own_column, side_px);
    table_->header()->resizeSection(change_column, roomy ? 220 : 144);
}

void ComparisonView::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit_columns();
}

} // namespace loam::desk
