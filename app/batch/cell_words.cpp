#include "app/batch/cell_words.hpp"

#include <vector>

#include "app/batch/said.hpp"
#include "core/json/nearest_name.hpp"

namespace loam::batch {

namespace {

template <class Entries, class Id> QString nearest(const QString& mistyped, const Entries& entries, Id id)
{
    std::vector<std::string_view> names;
    names.reserve(entries.size());
    for (const auto& entry : entries) {
        names.push_back(entry.*id);
    }
    const auto found = json::nearest_name(mistyped.toStdString(), names);
    return found ? text(*found) : QString();
}

} // namespace

QString text(std::string_view utf8)
{
    return QString::fromUtf8(utf8);
}

QString shown(const QString& typed)
{
    constexpr qsizetype longest = 60;
    return typed.size() > longest ? typed.left(longest) + QStringLiteral("…") : typed;
}

QString no_such_item(const QString& item, const catalog::PriceList& prices)
{
    const QString meant = nearest(item, prices.items, &catalog::Item::id);
    return meant.isEmpty() ? Said::tr("The price list has no item “%1”.").arg(shown(item))
                           : Said::tr("The price list has no item “%1”. Did you mean “%2”?").arg(shown(item), meant);
}

QString no_such_species(const QString& species, const catalog::Catalog& catalog)
{
    const QString meant = nearest(species, catalog.species, &catalog::Species::id);
    return meant.isEmpty()
               ? Said::tr("There is no sheet of a species “%1”.").arg(shown(species))
               : Said::tr("There is no sheet of a species “%1”. Did you mean “%2”?").arg(shown(species), meant);
}

} // namespace loam::batch
