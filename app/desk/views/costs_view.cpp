#include "app/desk/views/costs_view.hpp"

#include <QLabel>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/desk/views/years_chart.hpp"
#include "app/sheets/typography.hpp"
#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/cost_lines.hpp"

namespace loam::desk {

namespace {

enum Column { name_column, low_column, typical_column, high_column };

QTreeWidgetItem* money_item(const QString& name, const std::optional<MoneyRange>& amount, const QString& how,
                            const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    const QString unknown = QObject::tr("not known");
    auto* item = new QTreeWidgetItem({sheets::figures_kept_whole(words::capitalised(name)),
                                      amount ? formatter.money_bare(amount->low) : unknown,
                                      amount ? formatter.money_bare(amount->typical) : unknown,
                                      amount ? formatter.money_bare(amount->high) : unknown});
    for (const int column : {low_column, typical_column, high_column}) {
        item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    Explanation why;
    why.title = name + QStringLiteral(": ") + (amount ? formatter.money(*amount) : unknown);
    why.how = how;
    item->setData(name_column, explanation_role, QVariant::fromValue(why));
    item->setToolTip(name_column, name);
    return item;
}

QTreeWidgetItem* heading(QTreeWidget* table, const QString& name, const MoneyRange& total,
                         const words::Speaker& speaker, const QString& how)
{
    QTreeWidgetItem* item = money_item(name, total, how, speaker);
    QFont bold = table->font();
    bold.setBold(true);
    for (int column = name_column; column <= high_column; ++column) {
        item->setFont(column, bold);
    }
    table->addTopLevelItem(item);
    return item;
}

QString line_reason(const assess::CostLine& line, const words::Speaker& speaker)
{
    QString how = words::cost_kind(line.kind);
    if (line.every_months) {
        how += QStringLiteral(". ") + QObject::tr("Due again about every %1.")
                                          .arg(speaker.formatter().value(*line.every_months, words::Quantity::months));
    }
    return how;
}

} // namespace

CostsView::CostsView(QWidget* parent)
    : QWidget(parent), table_(new QTreeWidget(this)), chart_(new YearsChart(this)), note_(new QLabel(this))
{
    table_->setObjectName(QStringLiteral("costs"));
    table_->setAccessibleName(tr("Costs"));
    table_->setColumnCount(high_column + 1);
    set_table_manners(*table_);
    note_->setWordWrap(true);
    note_->setObjectName(QStringLiteral("costNote"));
    note_->setContentsMargins(6, 2, 6, 4);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(table_);
    split->addWidget(chart_);
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 1);
    split->setSizes({420, 220});
    split->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(split, 1);
    column->addWidget(note_);
}

void CostsView::show_costs(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    const assess::Costs& costs = assessment.costs;
    const QString currency = QString::fromStdString(costs.currency.code);
    table_->clear();
    table_->setHeaderLabels({tr("Cost, %1").arg(currency), tr("Low"), tr("Typical"), tr("High")});
    for (const int column : {low_column, typical_column, high_column}) {
        table_->headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    heading(table_, tr("To begin"), costs.startup, speaker,
            tr("The sum of the shopping list, net of what is owned. Lines without a price are not in it."));
    QTreeWidgetItem* running =
        heading(table_, tr("To run, a year"), costs.running_per_year, speaker, tr("The sum of the lines below."));
    for (const assess::CostLine& line : assess::merged_by_name(costs.lines)) {
        running->addChild(
            money_item(QString::fromStdString(line.name), line.per_year, line_reason(line, speaker), speaker));
    }
    if (!costs.electricity_per_year) {
        running->addChild(money_item(tr("Electricity"), std::nullopt,
                                     tr("State the price of electricity under “Site and room”."), speaker));
    }
    if (costs.net_present_cost) {
        const Money& net = *costs.net_present_cost;
        heading(table_, tr("Net present cost"), {net, net, net}, speaker,
                tr("All payments of the horizon at typical prices, later ones discounted."));
    }
    if (costs.equivalent_annual_cost) {
        const Money& annual = *costs.equivalent_annual_cost;
        heading(table_, tr("Equivalent annual cost"), {annual, annual, annual}, speaker,
                tr("The even yearly payment that has the same net present cost."));
    }
    table_->expandAll();
    chart_->show_horizon(costs, speaker.formatter());
    QString note = tr("Prices of %1").arg(speaker.formatter().iso_date(costs.price_date));
    if (costs.price_illustrative) {
        note += tr(", invented for illustration: put in your own before you decide.");
    }
    if (!costs.unpriced.empty()) {
        note += QLatin1Char(' ') +
                (costs.unpriced.size() == 1
                     ? tr("One need has no price and is not in the totals.")
                     : tr("%1 needs have no price and are not in the totals.").arg(costs.unpriced.size()));
    }
    note_->setText(note);
}

} // namespace loam::desk
