#include "app/desk/prices/price_edits.hpp"

#include <algorithm>

namespace loam::desk {

namespace {

template <class Entries> bool has_id(const Entries& entries, const std::string& id)
{
    return std::any_of(entries.begin(), entries.end(), [&](const auto& entry) { return entry.id == id; });
}

template <class Entries> std::string free_id(const Entries& entries, const std::string& stem)
{
    std::string id = stem;
    for (int number = 2; has_id(entries, id); ++number) {
        id = stem + "-" + std::to_string(number);
    }
    return id;
}

// Lower-case letters and digits in words joined by single hyphens, as ids are.
std::string kebab(const std::string& name)
{
    std::string id;
    for (const char c : name) {
        const char lower = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        if ((lower >= 'a' && lower <= 'z') || (lower >= '0' && lower <= '9')) {
            id += lower;
        } else if (!id.empty() && id.back() != '-') {
            id += '-';
        }
    }
    constexpr std::size_t longest = 50;
    id.resize(std::min(id.size(), longest));
    while (!id.empty() && id.back() == '-') {
        id.pop_back();
    }
    return id.empty() ? "item" : id;
}

} // namespace

PackPlace add_pack(catalog::PriceList& prices, const PackPlace& like)
{
    auto& packs = prices.items[like.item].packs;
    catalog::Pack pack = packs[like.pack];
    pack.id = free_id(packs, pack.id);
    packs.insert(packs.begin() + static_cast<std::ptrdiff_t>(like.pack) + 1, std::move(pack));
    return {like.item, like.pack + 1};
}

PackPlace add_item(catalog::PriceList& prices, const NewItem& wanted, const catalog::PriceList& kinds)
{
    catalog::Item item;
    item.id = free_id(prices.items, kebab(wanted.name));
    item.name = wanted.name;
    item.serves = wanted.need;
    item.unit = "each";
    for (const catalog::Item& known : kinds.items) {
        if (known.serves == wanted.need) {
            item.unit = known.unit;
            item.category = known.category;
            item.life_months = known.life_months;
            item.life_hours = known.life_hours;
            break;
        }
    }
    catalog::Pack pack;
    pack.id = kebab(wanted.pack);
    pack.name = wanted.pack;
    pack.amount = wanted.amount;
    pack.low = pack.typical = pack.high = wanted.price;
    item.packs.push_back(std::move(pack));
    prices.items.push_back(std::move(item));
    return {prices.items.size() - 1, 0};
}

void remove_packs(catalog::PriceList& prices, const std::vector<PackPlace>& places)
{
    for (std::size_t i = prices.items.size(); i-- > 0;) {
        auto& packs = prices.items[i].packs;
        for (std::size_t k = packs.size(); k-- > 0;) {
            if (std::find(places.begin(), places.end(), PackPlace{i, k}) != places.end()) {
                packs.erase(packs.begin() + static_cast<std::ptrdiff_t>(k));
            }
        }
        if (packs.empty()) {
            prices.items.erase(prices.items.begin() + static_cast<std::ptrdiff_t>(i));
        }
    }
}

} // namespace loam::desk
