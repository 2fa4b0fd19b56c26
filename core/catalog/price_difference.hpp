// What one price list has that another hasn't, and what it costs otherwise there.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/catalog/prices.hpp"

namespace loam::catalog {

enum class Difference { added, removed, changed };

struct ItemDifference {
    Difference kind = Difference::changed;
    std::string id;
    std::string name;     // as the second list has it, where it has it
    bool meaning = false; // changed: it serves another need, is counted in another unit or fits otherwise; else only
                          // its name or category changed
    friend bool operator==(const ItemDifference&, const ItemDifference&) = default;
};

struct PackDifference {
    Difference kind = Difference::changed;
    std::string item;
    std::string item_name;
    std::optional<Pack> before; // absent: added
    std::optional<Pack> after;  // absent: removed
    // Of a changed pack, what is not the same. Prices that are written otherwise ("4.5", "4.50") are the same.
    bool price = false;
    bool amount = false;
    bool stock = false;
    // How much dearer the typical price became, exact. Absent where it can't be compared or does not fit.
    std::optional<Decimal> rise{};
    std::optional<double> rise_share{}; // of the first price; absent where that is zero
    friend bool operator==(const PackDifference&, const PackDifference&) = default;
};

struct PriceDifference {
    bool prices_compared = true; // false: the currencies differ
    std::vector<ItemDifference> items;
    std::vector<PackDifference> packs; // those of added and removed items too
    friend bool operator==(const PriceDifference&, const PriceDifference&) = default;
};

// Items and packs go together by their ids. In the first list's order, then what only the second has, in its order.
PriceDifference difference(const PriceList& first, const PriceList& second);

// minuend - subtrahend with as many decimals as the longer one has; nullopt where that does not fit.
std::optional<Decimal> exact_difference(const Decimal& minuend, const Decimal& subtrahend);

} // namespace loam::catalog
