// Needs brought together: one demand for all needs that exactly the same items can serve.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/buying/offer.hpp"
#include "core/buying/order.hpp"

namespace loam::buying {

struct Demand {
    Need first;                     // the need that was mentioned first; its amount is not the sum
    std::vector<std::size_t> items; // offers that serve it, in their order
    std::int64_t needed = 0;        // net of what is owned, millionths of the unit
    std::int64_t owned = 0;
    std::string owned_item;
    std::vector<std::string> enclosures;
    bool countable = true; // false: an amount is negative, not finite or beyond what can be counted
};

// In the order of first mention over the households. What a household owns is taken off its own needs only, offers in
// their order, demands with the fewest serving items first (they have the fewest other ways to be met). So a further
// owned item never raises a demand.
std::vector<Demand> demands(const std::vector<Household>& households, const std::vector<ItemOffer>& offers);

} // namespace loam::buying
