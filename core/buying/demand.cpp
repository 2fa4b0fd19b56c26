#include "core/buying/demand.hpp"

#include <algorithm>

#include "core/buying/quantity.hpp"

namespace loam::buying {

namespace {

std::vector<std::size_t> serving(const Need& need, const std::vector<ItemOffer>& offers)
{
    std::vector<std::size_t> result;
    for (std::size_t i = 0; i < offers.size(); ++i) {
        if (serves(offers[i], need)) {
            result.push_back(i);
        }
    }
    return result;
}

// Where nothing serves them, needs are alike only with the same fit: each would be served by something else.
bool alike(const Demand& demand, const Need& need, const std::vector<std::size_t>& items)
{
    return demand.first.kind == need.kind && demand.first.item == need.item && demand.first.unit == need.unit &&
           demand.items == items && (!items.empty() || demand.first.fits_value == need.fits_value);
}

void join(std::vector<std::string>& to, const std::vector<std::string>& from)
{
    for (const std::string& one : from) {
        if (std::find(to.begin(), to.end(), one) == to.end()) {
            to.push_back(one);
        }
    }
}

void add(std::int64_t& sum, std::int64_t amount, bool& countable)
{
    countable = countable && !__builtin_add_overflow(sum, amount, &sum);
}

void mention(std::vector<Demand>& demands, const Need& need, const std::vector<ItemOffer>& offers)
{
    const std::vector<std::size_t> items = serving(need, offers);
    auto found =
        std::find_if(demands.begin(), demands.end(), [&](const Demand& demand) { return alike(demand, need, items); });
    if (found == demands.end()) {
        Demand fresh;
        fresh.first = need;
        fresh.items = items;
        found = demands.insert(demands.end(), fresh);
    }
    const auto amount = millionths(need.amount);
    found->countable = found->countable && amount;
    add(found->needed, amount.value_or(0), found->countable);
    join(found->enclosures, need.enclosures);
}

std::int64_t quantity_owned(const std::vector<Owned>& owned, const std::string& item)
{
    std::int64_t sum = 0;
    bool countable = true;
    for (const Owned& one : owned) {
        if (one.item == item) {
            add(sum, millionths(one.quantity).value_or(0), countable);
        }
    }
    return countable ? sum : 0;
}

void take_off_owned(std::vector<Demand>& demands, const std::vector<Owned>& owned, const std::vector<ItemOffer>& offers)
{
    std::vector<Demand*> choosiest_first;
    choosiest_first.reserve(demands.size());
    for (Demand& demand : demands) {
        choosiest_first.push_back(&demand);
    }
    std::stable_sort(choosiest_first.begin(), choosiest_first.end(),
                     [](const Demand* a, const Demand* b) { return a->items.size() < b->items.size(); });
    for (std::size_t i = 0; i < offers.size(); ++i) {
        std::int64_t left = quantity_owned(owned, offers[i].id);
        for (Demand* demand : choosiest_first) {
            if (left == 0 || std::find(demand->items.begin(), demand->items.end(), i) == demand->items.end()) {
                continue;
            }
            const std::int64_t used = std::min(left, demand->needed);
            left -= used;
            demand->needed -= used;
            demand->owned += used;
            if (used > 0 && demand->owned_item.empty()) {
                demand->owned_item = offers[i].id;
            }
        }
    }
}

} // namespace

std::vector<Demand> demands(const std::vector<Household>& households, const std::vector<ItemOffer>& offers)
{
    std::vector<Demand> all;
    for (const Household& household : households) {
        std::vector<Demand> own;
        for (const Need& need : household.needs) {
            mention(own, need, offers);
        }
        take_off_owned(own, household.owned, offers);
        for (const Demand& demand : own) {
            const auto same = std::find_if(
                all.begin(), all.end(), [&](const Demand& other) { return alike(other, demand.first, demand.items); });
            if (same == all.end()) {
                all.push_back(demand);
                continue;
            }
            same->countable = same->countable && demand.countable;
            add(same->needed, demand.needed, same->countable);
            add(same->owned, demand.owned, same->countable);
            same->owned_item = same->owned_item.empty() ? demand.owned_item : same->owned_item;
            join(same->enclosures, demand.enclosures);
        }
    }
    return all;
}

} // namespace loam::buying
