#include "core/catalog/catalog.hpp"

#include <algorithm>

#include "core/catalog/files.hpp"

namespace loam::catalog {

template <class Entry> static const Entry* find_by_id(const std::vector<Entry>& entries, std::string_view id)
{
    const auto found =
        std::find_if(entries.begin(), entries.end(), [&](const Entry& entry) { return id_of(entry) == id; });
    return found == entries.end() ? nullptr : &*found;
}

const Species* Catalog::find_species(std::string_view id) const
{
    return find_by_id(species, id);
}

const Rule* Catalog::find_rule(std::string_view id) const
{
    return find_by_id(rules, id);
}

const Material* Catalog::find_material(std::string_view id) const
{
    return find_by_id(materials, id);
}

const DeviceTraits* Catalog::find_device(std::string_view kind) const
{
    return find_by_id(devices, kind);
}

const Assumption* Catalog::find_assumption(std::string_view id) const
{
    return find_by_id(assumptions, id);
}

const Item* find_item(const PriceList& prices, std::string_view id)
{
    const auto found =
        std::find_if(prices.items.begin(), prices.items.end(), [&](const Item& item) { return item.id == id; });
    return found == prices.items.end() ? nullptr : &*found;
}

} // namespace loam::catalog
