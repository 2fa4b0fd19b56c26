#include "app/desk/views/shopping_item.hpp"

#include <QGuiApplication>
#include <QPalette>
#include <algorithm>

#include "app/desk/document/have_it.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/report/shopping_groups.hpp"
#include "app/words/line_breaks.hpp"

namespace loam::desk {

namespace {

bool all_owned(const assess::ShoppingLine& line)
{
    return line.amount_needed <= 0.0 && line.amount_owned > 0.0;
}

Explanation explain(const assess::ShoppingLine& line, const QString& name, const plan::Plan& plan,
                    const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    Explanation why;
    why.title = name;
    why.how = speaker.why(line);
    why.where = QString::fromStdString(line.where);
    QStringList inputs{QObject::tr("To be bought: %1").arg(formatter.figure(line.amount_needed, line.unit))};
    if (line.amount_owned > 0.0) {
        inputs << QObject::tr("Already owned: %1").arg(formatter.figure(line.amount_owned, line.unit));
    }
    if (line.line_total) {
        inputs << QObject::tr("Cost: %1").arg(formatter.money(*line.line_total));
    } else if (line.amount_needed > 0.0) {
        inputs << QObject::tr("No price is known, so it is not in the total.");
    }
    if (is_own_line(line)) {
        inputs << QObject::tr("It is changed or taken out under “Budget”.");
    } else if (!can_be_owned(line)) {
        inputs << QObject::tr("Nothing in the price list serves it, so it can't be ticked off.");
    }
    const auto owned = std::find_if(plan.owned.begin(), plan.owned.end(),
                                    [&line](const plan::OwnedItem& each) { return each.item == line.item; });
    if (all_owned(line) && owned != plan.owned.end()) {
        inputs << (owned->age_months
                       ? QObject::tr("In use for %1.").arg(formatter.value(*owned->age_months, words::Quantity::months))
                       : QObject::tr("How long it has been in use is not stated: say so under “Budget”, "
                                     "for it tells when it has to be replaced."));
        why.where = QString::fromStdString(owned->id);
    }
    why.inputs = inputs.join(QLatin1Char('\n'));
    return why;
}

void set_tick(QTreeWidgetItem& item, const assess::ShoppingLine& line)
{
    if (!can_be_owned(line)) {
        item.setFlags(item.flags() & ~Qt::ItemIsUserCheckable);
        return;
    }
    item.setFlags(item.flags() | Qt::ItemIsUserCheckable);
    item.setCheckState(item_column, all_owned(line)           ? Qt::Checked
                                    : line.amount_owned > 0.0 ? Qt::PartiallyChecked
                                                              : Qt::Unchecked);
}

} // namespace

QTreeWidgetItem* shopping_item(const assess::ShoppingLine& line, const plan::Plan& plan, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    const QString name = speaker.item(line);
    const QString unknown = all_owned(line) ? QObject::tr("owned") : QObject::tr("no price");
    const auto price = [&](const std::optional<MoneyRange>& range) {
        return range ? formatter.money_bare(range->typical) : unknown;
    };
    auto* item = new QTreeWidgetItem(
        {words::figures_kept_whole(name), line.packs > 0 ? formatter.count(line.packs) : QString(),
         price(line.pack_price), price(line.line_total),
         line.left_over.likely > 0.0 ? formatter.figure(line.left_over.likely, line.unit) : QString(),
         speaker.why(line)});
    for (const int column : {packs_column, each_column, total_column, left_column}) {
        item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    if (all_owned(line)) {
        for (const int column : {each_column, total_column}) {
            item->setForeground(column, QGuiApplication::palette().placeholderText());
        }
    }
    set_tick(*item, line);
    item->setData(item_column, explanation_role, QVariant::fromValue(explain(line, name, plan, speaker)));
    item->setData(item_column, Qt::AccessibleTextRole, all_owned(line) ? QObject::tr("%1, owned").arg(name) : name);
    item->setData(item_column, Qt::AccessibleDescriptionRole, speaker.why(line));
    item->setToolTip(item_column, name);
    item->setToolTip(why_column, item->text(why_column));
    return item;
}

} // namespace loam::desk
