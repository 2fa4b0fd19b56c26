#include "app/desk/prices/price_cells.hpp"

#include <QCoreApplication>
#include <QRegularExpression>
#include <utility>

#include "app/desk/prices/price_spans.hpp"

namespace loam::desk {

namespace {

// The translator finds these texts under "prices".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(prices)
};

using Item = catalog::Item;
using Pack = catalog::Pack;

Decimal* price_of(Pack& pack, PriceColumn column)
{
    switch (column) {
    case PriceColumn::low:
        return &pack.low;
    case PriceColumn::typical:
        return &pack.typical;
    case PriceColumn::high:
        return &pack.high;
    default:
        return nullptr;
    }
}

std::optional<catalog::Spread>& life_of(Item& item, PriceColumn column)
{
    return column == PriceColumn::months ? item.life_months : item.life_hours;
}

QString take_name(std::string& name, const QString& typed)
{
    if (typed.isEmpty()) {
        return Said::tr("A name can't be empty.");
    }
    name = typed.toStdString();
    return {};
}

QString take_price(Pack& pack, PriceColumn column, const QString& typed, const words::Formatter& format)
{
    const auto price = format.parse_price(typed);
    if (!price) {
        return Said::tr("“%1” is not a price. Write a number such as %2.").arg(typed, format.price({450, 2}));
    }
    // A single price is a range of one: whoever writes the first price of a pack need not write it three times.
    if (column == PriceColumn::typical && pack.low == pack.typical && pack.typical == pack.high) {
        pack.low = pack.high = *price;
    }
    *price_of(pack, column) = *price;
    return {};
}

QString take_amount(Pack& pack, const QString& typed, const words::Formatter& format)
{
    const auto amount = read_range(typed, format);
    if (!amount || amount->low <= 0.0) {
        return Said::tr(
                   "“%1” is not an amount. Write one number above zero, or the least, the likely and the most with "
                   "dashes between: 55 – 60 – 65.")
            .arg(typed);
    }
    pack.amount = *amount;
    return {};
}

QString take_fits(Item& item, const QString& typed, const words::Formatter& format)
{
    const auto span = read_open_span(typed, format);
    if (!span) {
        return Said::tr("“%1” is not a span. Write it as 75 – 100, open to one side as 75 –, or leave it empty.")
            .arg(typed);
    }
    item.fits_from = span->from;
    item.fits_to = span->to;
    return {};
}

QString take_life(std::optional<catalog::Spread>& life, const QString& typed, const words::Formatter& format)
{
    if (typed.isEmpty()) {
        life.reset();
        return {};
    }
    const auto range = read_range(typed, format);
    if (!range) {
        return Said::tr("“%1” is not a useful life. Write one number, the least, the likely and the most with dashes "
                        "between, or leave it empty where it is not known.")
            .arg(typed);
    }
    if (!life || life->range() != *range) {
        catalog::Spread stated;
        stated.low = range->low;
        stated.likely = range->likely;
        stated.high = range->high;
        // Who says so is the owner of the list, not the source of the figure before.
        stated.source.citation = QStringLiteral("Written by the owner of the price list").toStdString();
        life = std::move(stated);
    }
    return {};
}

QString take_mass(Pack& pack, const QString& typed, const words::Formatter& format)
{
    if (typed.isEmpty()) {
        pack.mass_kg.reset();
        return {};
    }
    const auto mass_kg = pack.mass_kg ? format.parse(typed, words::Quantity::mass, *pack.mass_kg)
                                      : format.parse(typed, words::Quantity::mass);
    if (!mass_kg || *mass_kg < 0.0) {
        return Said::tr("“%1” is not a weight.").arg(typed);
    }
    pack.mass_kg = mass_kg;
    return {};
}

} // namespace

std::vector<PackPlace> pack_places(const catalog::PriceList& prices)
{
    std::vector<PackPlace> places;
    for (std::size_t item = 0; item < prices.items.size(); ++item) {
        for (std::size_t pack = 0; pack < prices.items[item].packs.size(); ++pack) {
            places.push_back({item, pack});
        }
    }
    return places;
}

bool is_figure(PriceColumn column)
{
    switch (column) {
    case PriceColumn::item:
    case PriceColumn::need:
    case PriceColumn::pack:
    case PriceColumn::unit:
    case PriceColumn::stock:
        return false;
    default:
        return true;
    }
}

QString price_cell(const catalog::PriceList& prices, const PackPlace& place, PriceColumn column,
                   const words::Speaker& speaker)
{
    const Item& item = prices.items[place.item];
    const Pack& pack = item.packs[place.pack];
    const words::Formatter& format = speaker.formatter();
    const auto life = [&](const std::optional<catalog::Spread>& spread) {
        return spread ? written(spread->range(), format) : QString();
    };
    switch (column) {
    case PriceColumn::item:
        return QString::fromStdString(item.name);
    case PriceColumn::need:
        return speaker.need(item.serves);
    case PriceColumn::fits:
        return written(OpenSpan{item.fits_from, item.fits_to}, format);
    case PriceColumn::pack:
        return QString::fromStdString(pack.name);
    case PriceColumn::amount:
        return written(pack.amount, format);
    case PriceColumn::unit:
        return QString::fromStdString(item.unit);
    case PriceColumn::low:
        return format.price(pack.low);
    case PriceColumn::typical:
        return format.price(pack.typical);
    case PriceColumn::high:
        return format.price(pack.high);
    case PriceColumn::stock:
        return pack.in_stock ? Said::tr("yes") : Said::tr("no");
    case PriceColumn::mass:
        return pack.mass_kg ? format.value(*pack.mass_kg, words::Quantity::mass) : QString();
    case PriceColumn::months:
        return life(item.life_months);
    case PriceColumn::hours:
        return life(item.life_hours);
    }
    return {};
}

QString take_price_cell(catalog::PriceList& prices, const PackPlace& place, PriceColumn column, const QString& typed,
                        const words::Formatter& format)
{
    Item& item = prices.items[place.item];
    Pack& pack = item.packs[place.pack];
    const QString text = typed.trimmed();
    switch (column) {
    case PriceColumn::item:
        return take_name(item.name, text);
    case PriceColumn::need:
        return take_name(item.serves, text);
    case PriceColumn::fits:
        return take_fits(item, text, format);
    case PriceColumn::pack:
        return take_name(pack.name, text);
    case PriceColumn::amount:
        return take_amount(pack, text, format);
    case PriceColumn::unit:
        return take_name(item.unit, text);
    case PriceColumn::low:
    case PriceColumn::typical:
    case PriceColumn::high:
        return take_price(pack, column, text, format);
    case PriceColumn::stock:
        pack.in_stock = text != QStringLiteral("false");
        return {};
    case PriceColumn::mass:
        return take_mass(pack, text, format);
    case PriceColumn::months:
    case PriceColumn::hours:
        return take_life(life_of(item, column), text, format);
    }
    return {};
}

std::optional<PriceCell> cell_of_problem(const std::string& pointer)
{
    static const QRegularExpression form(QStringLiteral("^/items/(\\d+)(?:/packs/(\\d+))?(?:/([a-z_]+))?"));
    const QRegularExpressionMatch match = form.match(QString::fromStdString(pointer));
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    PriceCell cell{{match.captured(1).toULongLong(), match.captured(2).toULongLong()}, PriceColumn::item};
    const bool in_pack = match.capturedLength(2) > 0;
    const QString member = match.captured(3);
    // A pack as a whole is refused where its prices are out of order.
    static const struct {
        const char* member;
        PriceColumn column;
        bool in_pack;
    } columns[] = {{"serves", PriceColumn::need, false},
                   {"fits_from", PriceColumn::fits, false},
                   {"fits_to", PriceColumn::fits, false},
                   {"unit", PriceColumn::unit, false},
                   {"life_months", PriceColumn::months, false},
                   {"life_hours", PriceColumn::hours, false},
                   {"", PriceColumn::typical, true},
                   {"name", PriceColumn::pack, true},
                   {"amount", PriceColumn::amount, true},
                   {"low", PriceColumn::low, true},
                   {"typical", PriceColumn::typical, true},
                   {"high", PriceColumn::high, true},
                   {"mass_kg", PriceColumn::mass, true}};
    for (const auto& row : columns) {
        if (row.in_pack == in_pack && member == QLatin1String(row.member)) {
            cell.column = row.column;
        }
    }
    return cell;
}

} // namespace loam::desk
