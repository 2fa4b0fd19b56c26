// The heads of the table of prices, and what may be written below them.
#include <QCoreApplication>
#include <array>

#include "app/desk/prices/price_cells.hpp"

namespace loam::desk {

namespace {

struct Words {
    const char* head;
    const char* help;
};

// In the order of PriceColumn.
constexpr std::array<Words, price_column_count> heads{{
    {QT_TRANSLATE_NOOP("prices", "Item"), QT_TRANSLATE_NOOP("prices", "A generic name, in all rows of this item")},
    {QT_TRANSLATE_NOOP("prices", "Bought for"), QT_TRANSLATE_NOOP("prices", "The kind of need that the item meets")},
    {QT_TRANSLATE_NOOP("prices", "Fits"),
     QT_TRANSLATE_NOOP("prices", "Which lamp watts, floor area in m² or number of outlets it fits: 75 – 100, 75 –, or "
                                 "empty where it fits all")},
    {QT_TRANSLATE_NOOP("prices", "Pack"), QT_TRANSLATE_NOOP("prices", "How it is sold, as it stands on the shelf")},
    {QT_TRANSLATE_NOOP("prices", "Holds"),
     QT_TRANSLATE_NOOP("prices", "How much of the unit is in a pack: one number, or least – likely – most")},
    {QT_TRANSLATE_NOOP("prices", "Unit"), QT_TRANSLATE_NOOP("prices", "What the item is counted in")},
    {QT_TRANSLATE_NOOP("prices", "Low"), QT_TRANSLATE_NOOP("prices", "The least a pack costs")},
    {QT_TRANSLATE_NOOP("prices", "Typical"), QT_TRANSLATE_NOOP("prices", "What a pack costs most of the time")},
    {QT_TRANSLATE_NOOP("prices", "High"), QT_TRANSLATE_NOOP("prices", "The most a pack costs")},
    {QT_TRANSLATE_NOOP("prices", "In stock"), QT_TRANSLATE_NOOP("prices", "Whether the pack can be bought now")},
    {QT_TRANSLATE_NOOP("prices", "Weight"), QT_TRANSLATE_NOOP("prices", "Of a pack as bought, for carrying it home")},
    {QT_TRANSLATE_NOOP("prices", "Lasts, months"),
     QT_TRANSLATE_NOOP("prices", "Useful life: one number, or least – likely – most; empty where it is not known")},
    {QT_TRANSLATE_NOOP("prices", "Lasts, hours"),
     QT_TRANSLATE_NOOP(
         "prices", "Useful life in hours of use: one number, or least – likely – most; empty where it is not known")},
}};

QString translated(const char* text)
{
    return QCoreApplication::translate("prices", text);
}

} // namespace

QString price_column_head(PriceColumn column)
{
    return translated(heads[static_cast<std::size_t>(column)].head);
}

QString price_column_help(PriceColumn column)
{
    return translated(heads[static_cast<std::size_t>(column)].help);
}

} // namespace loam::desk
