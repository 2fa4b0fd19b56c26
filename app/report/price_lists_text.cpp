#include <algorithm>

#include "app/report/lines.hpp"
#include "app/report/price_lists.hpp"
#include "app/report/said.hpp"
#include "app/words/capitals.hpp"

namespace loam::report {

namespace {

QString shown(const std::string& text)
{
    return QString::fromStdString(text);
}

QString named(const std::string& id, const std::string& name)
{
    return QStringLiteral("%1 (%2)").arg(shown(name), shown(id));
}

const std::string& name_of(const catalog::PriceList& prices, const std::string& id)
{
    const auto at = std::find_if(prices.items.begin(), prices.items.end(),
                                 [&](const catalog::Item& item) { return item.id == id; });
    return at->name;
}

QString listed(const QString& title, const QStringList& lines)
{
    QString text = lines.isEmpty() ? QString() : heading(title);
    for (const QString& line : lines) {
        text += wrapped(QStringLiteral("  "), line);
    }
    return text;
}

QString signed_text(const Decimal& rise)
{
    return (rise.coefficient > 0 ? QStringLiteral("+") : QString()) + shown(rise.text());
}

QString price_text(const catalog::Pack& pack)
{
    const QString typical = shown(pack.typical.text());
    return pack.low == pack.high ? typical
                                 : Said::tr("%1 (%2–%3)").arg(typical, shown(pack.low.text()), shown(pack.high.text()));
}

// In the item's unit.
QString amount_text(const Range& amount, const words::Formatter& format)
{
    const auto number = [&](double value) { return format.locale().toString(value, 'g', 6); };
    return amount.low == amount.high
               ? number(amount.likely)
               : Said::tr("%1 (%2–%3)").arg(number(amount.likely), number(amount.low), number(amount.high));
}

QString changes_of(const catalog::PackDifference& pack, const words::Formatter& format)
{
    QStringList parts;
    if (pack.price) {
        QString part = Said::tr("%1 → %2").arg(price_text(*pack.before), price_text(*pack.after));
        if (pack.rise && pack.rise->coefficient != 0) {
            part += QStringLiteral(", ") + signed_text(*pack.rise);
            if (pack.rise_share) {
                part += QStringLiteral(" (%1%2%)")
                            .arg(*pack.rise_share > 0 ? QStringLiteral("+") : QString(),
                                 format.number(*pack.rise_share * 100.0, 1));
            }
        }
        parts << part;
    }
    if (pack.amount) {
        const QString before = amount_text(pack.before->amount, format);
        const QString after = amount_text(pack.after->amount, format);
        parts << (before == after ? Said::tr("another unit") : Said::tr("amount %1 → %2").arg(before, after));
    }
    if (pack.stock) {
        parts << (pack.after->in_stock ? Said::tr("in stock again") : Said::tr("no longer in stock"));
    }
    return parts.join(QStringLiteral("; "));
}

QString pack_line(const catalog::PackDifference& pack, const words::Formatter& format)
{
    const catalog::Pack& known = pack.after ? *pack.after : *pack.before;
    const QString name = Said::tr("%1, %2").arg(shown(pack.item_name), shown(known.name));
    return Said::tr("%1: %2").arg(name, pack.kind == catalog::Difference::changed ? changes_of(pack, format)
                                                                                  : price_text(known));
}

QStringList out_of_stock(const PriceListShown& list)
{
    QStringList gone;
    for (const std::string& id : list.state.out_of_stock) {
        gone << named(id, name_of(list.prices, id));
    }
    return gone;
}

QStringList without_price(const PriceListShown& list, const words::Speaker& speaker)
{
    QStringList unserved;
    for (const std::string& kind : list.state.unserved) {
        unserved << named(kind, speaker.need(kind).toStdString());
    }
    return unserved;
}

QString old_words(const words::Formatter& format)
{
    return Said::tr("the list is more than %1 months old; look its prices up again.")
        .arg(format.number(catalog::old_prices_months, 0));
}

} // namespace

QString price_list_age(const PriceListShown& list, const words::Formatter& format)
{
    QString date = format.iso_date(list.prices.date);
    if (!list.state.age_months) {
        return date;
    }
    return *list.state.age_months < 0.0
               ? Said::tr("%1, after %2").arg(date, format.date(list.date))
               : Said::tr("%1, %2 months old on %3")
                     .arg(date, format.number(*list.state.age_months, 1), format.date(list.date));
}

QStringList price_list_remarks(const PriceListShown& list, const words::Speaker& speaker)
{
    QStringList remarks;
    if (list.prices.illustrative) {
        remarks << Said::tr("The prices are invented examples.");
    }
    if (list.state.old) {
        remarks << words::capitalised(old_words(speaker.formatter()));
    }
    QStringList gone;
    for (const std::string& id : list.state.out_of_stock) {
        gone << shown(name_of(list.prices, id));
    }
    if (!gone.isEmpty()) {
        remarks << Said::tr("Not in stock: %1.").arg(gone.join(QStringLiteral(", ")));
    }
    QStringList unserved;
    for (const std::string& kind : list.state.unserved) {
        unserved << speaker.need(kind);
    }
    if (!unserved.isEmpty()) {
        remarks << Said::tr("No price for: %1.").arg(unserved.join(QStringLiteral(", ")));
    }
    return remarks;
}

QString text_price_list(const PriceListShown& list, const words::Speaker& speaker)
{
    const catalog::PriceList& prices = list.prices;
    std::size_t packs = 0;
    for (const catalog::Item& item : prices.items) {
        packs += item.packs.size();
    }
    QString text = wrapped(Said::tr("Price list: "), shown(prices.title));
    text += wrapped(Said::tr("Of:         "), price_list_age(list, speaker.formatter()));
    text += wrapped(Said::tr("Place:      "), shown(prices.place));
    text += wrapped(Said::tr("Currency:   "), shown(prices.currency));
    text += wrapped(Said::tr("Holds:      "), Said::tr("items: %1, packs: %2").arg(prices.items.size()).arg(packs));
    if (prices.illustrative) {
        text += wrapped({}, Said::tr("The prices are invented examples."));
    }
    if (list.state.old) {
        text += wrapped(Said::tr("Warning: "), old_words(speaker.formatter()));
    }
    text += listed(Said::tr("Not in stock"), out_of_stock(list));
    return text + listed(Said::tr("No price for"), without_price(list, speaker));
}

QString not_compared(const TwoPriceLists& lists)
{
    return lists.difference.prices_compared
               ? QString()
               : Said::tr("The first list is in %1 and the second in %2: their prices are not compared.")
                     .arg(shown(lists.first.currency), shown(lists.second.currency));
}

PastedTable price_difference_table(const TwoPriceLists& lists, const words::Formatter& format)
{
    using catalog::Difference;
    PastedTable table;
    table.title = Said::tr("%1 beside %2").arg(shown(lists.second.title), shown(lists.first.title));
    table.heads = {{Said::tr("What differs")}, {Said::tr("Item")}, {Said::tr("Pack")}, {Said::tr("How")}};
    for (const catalog::PackDifference& pack : lists.difference.packs) {
        const catalog::Pack& known = pack.after ? *pack.after : *pack.before;
        const QString what = pack.kind == Difference::changed ? Said::tr("changed")
                             : pack.kind == Difference::added ? Said::tr("only in the second list")
                                                              : Said::tr("only in the first list");
        const QString how = pack.kind == Difference::changed ? changes_of(pack, format) : price_text(known);
        table.rows.push_back({{what}, {shown(pack.item_name)}, {shown(known.name)}, {how}});
    }
    for (const catalog::ItemDifference& item : lists.difference.items) {
        if (item.kind == Difference::changed) {
            const QString how =
                item.meaning ? Said::tr("another need, unit or size") : Said::tr("another name or category");
            table.rows.push_back({{Said::tr("changed")}, {shown(item.name)}, {QString()}, {how}});
        }
    }
    if (!lists.difference.prices_compared) {
        table.notes << not_compared(lists);
    }
    return table;
}

QString text_price_difference(const TwoPriceLists& lists, const words::Formatter& format)
{
    const auto about = [&](const catalog::PriceList& list) {
        return Said::tr("%1, %2, %3, %4")
            .arg(shown(list.title), format.iso_date(list.date), shown(list.place), shown(list.currency));
    };
    QString text = wrapped(Said::tr("First:  "), about(lists.first));
    text += wrapped(Said::tr("Second: "), about(lists.second));
    if (!lists.difference.prices_compared) {
        text += wrapped({}, not_compared(lists));
    }
    if (lists.difference.items.empty() && lists.difference.packs.empty()) {
        return text +
               wrapped({}, lists.difference.prices_compared
                               ? Said::tr("Nothing differs.")
                               : Said::tr("Nothing else differs: items, packs, amounts and stock are the same."));
    }
    using catalog::Difference;
    QStringList altered;
    for (const catalog::ItemDifference& item : lists.difference.items) {
        if (item.kind == Difference::changed) {
            altered << Said::tr("%1: %2").arg(named(item.id, item.name), item.meaning
                                                                             ? Said::tr("another need, unit or size")
                                                                             : Said::tr("another name or category"));
        }
    }
    const auto packs = [&](Difference kind) {
        QStringList lines;
        for (const catalog::PackDifference& pack : lists.difference.packs) {
            if (pack.kind == kind) {
                lines << pack_line(pack, format);
            }
        }
        return lines;
    };
    text += listed(Said::tr("Changed packs"), packs(Difference::changed));
    text += listed(Said::tr("Changed items"), altered);
    text += listed(Said::tr("Only in the second list"), packs(Difference::added));
    return text + listed(Said::tr("Only in the first list"), packs(Difference::removed));
}

} // namespace loam::report
