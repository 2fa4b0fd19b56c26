#include "app/desk/views/shopping_view.hpp"

#include <QHeaderView>
#include <map>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/sheets/typography.hpp"
#include "app/words/capitals.hpp"
#include "app/words/quantity.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

namespace {

enum Column { item_column, packs_column, each_column, total_column, left_column, for_column };

QString enclosure_names(const assess::ShoppingLine& line, std::size_t enclosures, const words::Speaker& speaker)
{
    if (line.enclosures.size() >= enclosures) {
        return QObject::tr("all");
    }
    QStringList names;
    for (const std::string& id : line.enclosures) {
        names << speaker.name_of(id);
    }
    return names.join(QStringLiteral(" · "));
}

Explanation explain(const assess::ShoppingLine& line, const QString& name, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    Explanation explanation;
    explanation.title = name;
    explanation.how = speaker.why(line);
    explanation.inputs = QObject::tr("Needed: %1").arg(formatter.figure(line.amount_needed, line.unit));
    if (line.amount_owned > 0.0) {
        explanation.inputs +=
            QStringLiteral("\n") + QObject::tr("Already owned: %1").arg(formatter.figure(line.amount_owned, line.unit));
    }
    if (line.line_total) {
        explanation.inputs += QStringLiteral("\n") + QObject::tr("Cost: %1").arg(formatter.money(*line.line_total));
    } else {
        explanation.inputs += line.amount_needed <= 0.0
                                  ? QString()
                                  : QStringLiteral("\n") + QObject::tr("No price is known, so it is not in the total.");
    }
    explanation.where = QString::fromStdString(line.where);
    return explanation;
}

// As on paper: a pack of a single piece says nothing that the item does not.
QString with_pack(const QString& name, const assess::ShoppingLine& line)
{
    const bool worth_naming = !line.pack.empty() && line.pack != "one";
    return sheets::figures_kept_whole(worth_naming ? name + QStringLiteral(" – ") + QString::fromStdString(line.pack)
                                                   : name);
}

QTreeWidgetItem* item_of(const assess::ShoppingLine& line, std::size_t enclosures, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    const QString name = line.item_name.empty() ? speaker.need(line.need) : QString::fromStdString(line.item_name);
    const bool owned = line.amount_needed <= 0.0;
    const QString unknown = owned ? QObject::tr("owned") : QObject::tr("no price");
    auto* item = new QTreeWidgetItem(
        {words::capitalised(with_pack(name, line)), line.packs > 0 ? formatter.count(line.packs) : QString(),
         line.pack_price ? formatter.money_bare(line.pack_price->typical) : unknown,
         line.line_total ? formatter.money_bare(line.line_total->typical) : unknown,
         line.left_over.likely > 0.0 ? formatter.figure(line.left_over.likely, line.unit) : QString(),
         enclosure_names(line, enclosures, speaker)});
    for (const int column : {packs_column, each_column, total_column, left_column}) {
        item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    item->setData(item_column, explanation_role, QVariant::fromValue(explain(line, name, speaker)));
    item->setToolTip(item_column, name);
    item->setToolTip(for_column, item->text(for_column));
    return item;
}

} // namespace

ShoppingView::ShoppingView(QWidget* parent) : QTreeWidget(parent)
{
    setObjectName(QStringLiteral("shopping"));
    setAccessibleName(tr("Shopping list"));
    setColumnCount(for_column + 1);
    set_table_manners(*this);
    let_wrap(*this, for_column);
}

void ShoppingView::show_order(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    const QString currency = QString::fromStdString(assessment.costs.currency.code);
    setHeaderLabels({tr("Item"), tr("Packs"), tr("Each, %1").arg(currency), tr("Total, %1").arg(currency),
                     tr("Left over"), tr("For")});
    for (const int column : {packs_column, each_column, total_column, left_column}) {
        headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    const int kept = indexOfTopLevelItem(currentItem() != nullptr ? currentItem()->parent() : nullptr);
    const int kept_child = kept >= 0 ? currentItem()->parent()->indexOfChild(currentItem()) : -1;
    setUpdatesEnabled(false);
    clear();
    header()->setSectionResizeMode(for_column, QHeaderView::Interactive); // names of boxes must not push the items away
    header()->resizeSection(for_column, 110);
    std::map<catalog::Category, QTreeWidgetItem*> tops;
    for (const assess::ShoppingLine& line : assessment.shopping) {
        QTreeWidgetItem*& top = tops[line.category];
        if (top == nullptr) {
            top = new QTreeWidgetItem(this, {words::category(line.category)});
            top->setFirstColumnSpanned(true);
            QFont bold = font();
            bold.setBold(true);
            top->setFont(item_column, bold);
        }
        top->addChild(item_of(line, assessment.enclosures.size(), speaker));
    }
    expandAll();
    setColumnHidden(for_column, assessment.enclosures.size() < 2);
    if (kept >= 0 && kept < topLevelItemCount() && kept_child < topLevelItem(kept)->childCount()) {
        setCurrentItem(topLevelItem(kept)->child(kept_child));
    }
    setUpdatesEnabled(true);
}

} // namespace loam::desk
