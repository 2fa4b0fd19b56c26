#include "app/desk/views/costs_view.hpp"

#include <QLabel>
#include <QScrollBar>
#include <QSet>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/desk/views/table_bar.hpp"
#include "app/desk/views/years_chart.hpp"
#include "app/report/cost_rows.hpp"
#include "app/words/line_breaks.hpp"

namespace loam::desk {

namespace {

enum Column { name_column, low_column, typical_column, high_column };

QString amount_text(const report::CostRow& row, Money MoneyRange::*end, const words::Formatter& formatter)
{
    if (row.heading || !row.has(end)) {
        return {};
    }
    if (row.amount && row.round) {
        return formatter.number(((*row.amount).*end).decimal().value(), 0);
    }
    return row.amount ? formatter.money_bare((*row.amount).*end) : QObject::tr("not known");
}

QTreeWidgetItem* item_of(const report::CostRow& row, const QFont& plain, const words::Formatter& formatter)
{
    auto* item = new QTreeWidgetItem(
        {words::figures_kept_whole(row.name), amount_text(row, &MoneyRange::low, formatter),
         amount_text(row, &MoneyRange::typical, formatter), amount_text(row, &MoneyRange::high, formatter)});
    QFont bold = plain;
    bold.setBold(row.level == 0);
    for (int column = name_column; column <= high_column; ++column) {
        item->setFont(column, bold);
        if (column != name_column) {
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        }
    }
    Explanation why;
    why.title = row.name;
    if (row.amount) {
        why.title +=
            QStringLiteral(": ") + (row.round ? formatter.money_round_span(*row.amount) : formatter.money(*row.amount));
    }
    why.how = row.how;
    why.where = QString::fromStdString(row.where);
    item->setData(name_column, explanation_role, QVariant::fromValue(why));
    item->setToolTip(name_column, row.name);
    return item;
}

// What the chart's marks mean, below it: in it there is no room on a small screen.
QWidget* with_key(YearsChart* chart)
{
    auto* box = new QWidget;
    box->setBackgroundRole(QPalette::Base);
    box->setAutoFillBackground(true);
    auto* key = new QLabel(CostsView::tr("Line: typical. Band: low to high."), box);
    key->setWordWrap(true);
    key->setAlignment(Qt::AlignHCenter);
    key->setContentsMargins(4, 0, 4, 4);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(chart, 1);
    column->addWidget(key);
    return box;
}

} // namespace

CostsView::CostsView(QWidget* parent)
    : QWidget(parent), table_(new QTreeWidget(this)), chart_(new YearsChart(this)), graph_(with_key(chart_)),
      note_(new QLabel(this)), bar_(new TableBar(*table_, QStringLiteral("costs"), this))
{
    setObjectName(QStringLiteral("costsView"));
    table_->setObjectName(QStringLiteral("costs"));
    table_->setAccessibleName(tr("Costs"));
    table_->setColumnCount(high_column + 1);
    set_table_manners(*table_);
    note_->setWordWrap(true);
    note_->setTextFormat(Qt::PlainText);
    note_->setObjectName(QStringLiteral("costNote"));
    note_->setContentsMargins(6, 2, 6, 4);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(table_);
    split->addWidget(graph_);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes({420, 220});
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(bar_);
    column->addWidget(split, 1);
    column->addWidget(note_);
    connect(bar_, &TableBar::exportWanted, this, &CostsView::exportWanted);
}

void CostsView::resizeEvent(QResizeEvent* event)
{
    constexpr int narrow_px = 560; // in less, the figures need the room
    graph_->setVisible(width() >= narrow_px);
    QWidget::resizeEvent(event);
}

void CostsView::show_costs(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    const assess::Costs& costs = assessment.costs;
    const QString currency = QString::fromStdString(costs.currency.code);
    table_->setHeaderLabels({tr("Cost, %1").arg(currency), tr("Low"), tr("Typical"), tr("High")});
    for (const int column : {low_column, typical_column, high_column}) {
        table_->headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    fill(report::cost_rows(costs, speaker), speaker.formatter());
    chart_->show_horizon(costs, speaker.formatter());
    note_->setText(report::cost_notes(costs, speaker).join(QLatin1Char(' ')));
    const words::Formatter& formatter = speaker.formatter();
    bar_->show_table(
        costs.prices_match_currency
            ? tr("Typically %1 to begin, %2 a year.")
                  .arg(formatter.money(costs.startup.typical), formatter.money(costs.running_per_year.typical))
            : tr("The price list is in another currency than the plan, so nothing is costed."),
        report::costs_table(assessment, speaker));
}

void CostsView::fill(const std::vector<report::CostRow>& rows, const words::Formatter& formatter)
{
    // What was folded stays folded, where it was looked at stays in view.
    QSet<QString> folded;
    for (int i = 0; i < table_->topLevelItemCount(); ++i) {
        if (table_->topLevelItem(i)->childCount() > 0 && !table_->topLevelItem(i)->isExpanded()) {
            folded << table_->topLevelItem(i)->text(name_column);
        }
    }
    const QString chosen = table_->currentItem() != nullptr ? table_->currentItem()->text(name_column) : QString();
    const int scrolled = table_->verticalScrollBar()->value();
    table_->setUpdatesEnabled(false);
    table_->clear();
    QTreeWidgetItem* top = nullptr;
    QTreeWidgetItem* again = nullptr;
    for (const report::CostRow& row : rows) {
        QTreeWidgetItem* item = item_of(row, table_->font(), formatter);
        if (row.level > 0 && top != nullptr) {
            top->addChild(item);
        } else {
            table_->addTopLevelItem(item);
            top = item;
            item->setFirstColumnSpanned(row.heading);
        }
        again = again == nullptr && item->text(name_column) == chosen ? item : again;
    }
    for (int i = 0; i < table_->topLevelItemCount(); ++i) {
        table_->topLevelItem(i)->setExpanded(!folded.contains(table_->topLevelItem(i)->text(name_column)));
    }
    if (again != nullptr) {
        table_->setCurrentItem(again);
    }
    table_->setUpdatesEnabled(true);
    table_->verticalScrollBar()->setValue(scrolled);
}

} // namespace loam::desk
