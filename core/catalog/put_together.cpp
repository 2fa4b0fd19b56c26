#include <algorithm>

#include "core/catalog/prices.hpp"

namespace loam::catalog {

namespace {

bool of_one_kind(const Item& a, const Item& b)
{
    return a.serves == b.serves && a.unit == b.unit && a.fits_from == b.fits_from && a.fits_to == b.fits_to;
}

std::string channel_among(const std::vector<Seller>& sellers, const std::string& channel)
{
    const auto taken = [&](const std::string& name) {
        return std::any_of(sellers.begin(), sellers.end(), [&](const Seller& one) { return one.channel == name; });
    };
    std::string name = channel;
    for (int number = 2; taken(name); ++number) {
        name = channel + "-" + std::to_string(number);
    }
    return name;
}

void add_item(PriceList& whole, Item item, const std::string& channel)
{
    for (Pack& pack : item.packs) {
        pack.seller = channel;
    }
    const auto same =
        std::find_if(whole.items.begin(), whole.items.end(), [&](const Item& other) { return other.id == item.id; });
    if (same == whole.items.end()) {
        whole.items.push_back(std::move(item));
    } else if (of_one_kind(*same, item)) {
        same->packs.insert(same->packs.end(), item.packs.begin(), item.packs.end());
    } else {
        item.id = channel + "." + item.id;
        whole.items.push_back(std::move(item));
    }
}

} // namespace

std::vector<Seller> sellers_of(const PriceList& prices)
{
    return prices.sellers.empty()
               ? std::vector<Seller>{{prices.channel, prices.delivery, prices.tax_share, prices.minimum_order}}
               : prices.sellers;
}

PriceList put_together(const std::vector<PriceList>& lists)
{
    if (lists.size() == 1) {
        return lists.front();
    }
    PriceList whole = lists.front();
    whole.items.clear();
    whole.title.clear();
    for (const PriceList& list : lists) {
        const std::string channel = channel_among(whole.sellers, list.channel);
        whole.sellers.push_back({channel, list.delivery, list.tax_share, list.minimum_order});
        whole.title += (whole.title.empty() ? "" : "; ") + list.title;
        whole.date = std::min(whole.date, list.date);
        whole.illustrative = whole.illustrative || list.illustrative;
        for (const Item& item : list.items) {
            add_item(whole, item, channel);
        }
    }
    return whole;
}

} // namespace loam::catalog
