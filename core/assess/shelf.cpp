#include "core/assess/shelf.hpp"

#include <algorithm>

namespace loam::assess {

Shelf::Shelf(const std::vector<plan::OwnedItem>& owned, const std::vector<buying::ItemOffer>& offers)
{
    for (const plan::OwnedItem& one : owned) {
        const auto offer = std::find_if(offers.begin(), offers.end(),
                                        [&](const buying::ItemOffer& each) { return each.id == one.item; });
        entries_.push_back({offer == offers.end() ? nullptr : &*offer, one.quantity, one.age_months});
    }
}

std::optional<Taken> Shelf::take(const buying::Need& need)
{
    for (std::size_t i = 0; i < entries_.size(); ++i) {
        Entry& entry = entries_[i];
        if (entry.left > 0.0 && entry.offer != nullptr && buying::serves(*entry.offer, need)) {
            entry.left -= need.amount;
            return Taken{entry.age_months, i};
        }
    }
    return std::nullopt;
}

} // namespace loam::assess
