#include <QCoreApplication>

#include <algorithm>

#include "app/report/lines.hpp"
#include "app/report/price_lists.hpp"
#include "app/words/capitals.hpp"

namespace loam::report {

namespace {

QString say(const char* text)
{
    return QCoreApplication::translate("report", text);
}

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
                                 : say("%1 (%2–%3)").arg(typical, shown(pack.low.text()), shown(pack.high.text()));
}

// In the item's unit.
QString amount_text(const Range& amount, const words::Formatter& format)
{
    const auto number = [&](double value) { return format.locale().toString(value, 'g', 6); };
    return amount.low == amount.high
               ? number(amount.likely)
               : say("%1 (%2–%3)").arg(number(amount.likely), number(amount.low), number(amount.high));
}

QString changes_of(const catalog::PackDifference& pack, const words::Formatter& format)
{
    QStringList parts;
    if (pack.price) {
        QString part = say("%1 → %2").arg(price_text(*pack.before), price_text(*pack.after));
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
        parts << (before == after ? say("another unit") : say("amount %1 → %2").arg(before, after));
    }
    if (pack.stock) {
        parts << (pack.after->in_stock ? say("in stock again") : say("no longer in stock"));
    }
    return parts.join(QStringLiteral("; "));
}

QString pack_line(const catalog::PackDifference& pack, const words::Formatter& format)
{
    const catalog::Pack& known = pack.after ? *pack.after : *pack.before;
    const QString name = say("%1, %2").arg(shown(pack.item_name), shown(known.name));
    return say("%1: %2").arg(name,
                             pack.kind == catalog::Difference::changed ? changes_of(pack, format) : price_text(known));
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
    return say("the list is more than %1 months old; look its prices up again.")
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
               ? say("%1, after %2").arg(date, format.date(list.date))
               : say("%1, %2 months old on %3")
                     .arg(date, format.number(*list.state.age_months, 1), format.date(list.date));
}

QStringList price_list_remarks(const PriceListShown& list, const words::Speaker& speaker)
{
    QStringList remarks;
    if (list.prices.illustrative) {
        remarks << say("The prices are invented examples.");
    }
    if (list.state.old) {
        remarks << words::capitalised(old_words(speaker.formatter()));
    }
    QStringList gone;
    for (const std::string& id : list.state.out_of_stock) {
        gone << shown(name_of(list.prices, id));
    }
    if (!gone.isEmpty()) {
        remarks << say("Not in stock: %1.").arg(gone.join(QStringLiteral(", ")));
    }
    QStringList unserved;
    for (const std::string& kind : list.state.unserved) {
        unserved << speaker.need(kind);
    }
    if (!unserved.isEmpty()) {
        remarks << say("No price for: %1.").arg(unserved.join(QStringLiteral(", ")));
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
    QString text = wrapped(say("Price list: "), shown(prices.title));
    text += wrapped(say("Of:         "), price_list_age(list, speaker.formatter()));
    text += wrapped(say("Place:      "), shown(prices.place));
    text += wrapped(say("Currency:   "), shown(prices.currency));
    text += wrapped(say("Holds:      "), say("items: %1, packs: %2").arg(prices.items.size()).arg(packs));
    if (prices.illustrative) {
        text += wrapped({}, say("The prices are invented examples."));
    }
    if (list.state.old) {
        text += wrapped(say("Warning: "), old_words(speaker.formatter()));
    }
    text += listed(say("Not in stock"), out_of_stock(list));
    return text + listed(say("No price for"), without_price(list, speaker));
}

QString not_compared(const TwoPriceLists& lists)
{
    return lists.difference.prices_compared
               ? QString()
               : say("The first list is in %1 and the second in %2: their prices are not compared.")
                     .arg(shown(lists.first.currency), shown(lists.second.currency));
}

PastedTable price_difference_table(const TwoPriceLists& lists, const words::Formatter& format)
{
    using catalog::Difference;
    PastedTable table;
    table.title = say("%1 beside %2").arg(shown(lists.second.title), shown(lists.first.title));
    table.heads = {{say("What differs")}, {say("Item")}, {say("Pack")}, {say("How")}};
    for (const catalog::PackDifference& pack : lists.difference.packs) {
        const catalog::Pack& known = pack.after ? *pack.after : *pack.before;
        const QString what = pack.kind == Difference::changed ? say("changed")
                             : pack.kind == Difference::added ? say("only in the second list")
                                                              : say("only in the first list");
        const QString how = pack.kind == Difference::changed ? changes_of(pack, format) : price_text(known);
        table.rows.push_back({{what}, {shown(pack.item_name)}, {shown(known.name)}, {how}});
    }
    for (const catalog::ItemDifference& item : lists.difference.items) {
        if (item.kind == Difference::changed) {
            const QString how = item.meaning ? say("another need, unit or size") : say("another name or category");
            table.rows.push_back({{say("changed")}, {shown(item.name)}, {QString()}, {how}});
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
        return say("%1, %2, %3, %4")
            .arg(shown(list.title), format.iso_date(list.date), shown(list.place), shown(list.currency));
    };
    QString text = wrapped(say("First:  "), about(lists.first));
    text += wrapped(say("Second: "), about(lists.second));
    if (!lists.difference.prices_compared) {
        text += wrapped({}, not_compared(lists));
    }
    if (lists.difference.items.empty() && lists.difference.packs.empty()) {
        return text + wrapped({}, lists.difference.prices_compared
                                      ? say("Nothing differs.")
                                      : say("Nothing else differs: items, packs, amounts and stock are the same."));
    }
    using catalog::Difference;
    QStringList altered;
    for (const catalog::ItemDifference& item : lists.difference.items) {
        if (item.kind == Difference::changed) {
            altered << say("%1: %2").arg(named(item.id, item.name), item.meaning ? say("another need, unit or size")
                                                                                 : say("another name or category"));
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
    text += listed(say("Changed packs"), packs(Difference::changed));
    text += listed(say("Changed items"), altered);
    text += listed(say("Only in the second list"), packs(Difference::added));
    return text + listed(say("Only in the first list"), packs(Difference::removed));
}

} // namespace loam::report
