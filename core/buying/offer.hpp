// What a price list offers, as far as buying needs to know.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/buying/need.hpp"
#include "core/explain.hpp"
#include "core/money.hpp"

namespace loam::buying {

struct PackOffer {
    std::string name;
    Range amount;                    // what one pack yields, in the item's unit
    std::optional<MoneyRange> price; // absent: not known, so it can't be chosen
    bool in_stock = true;
    std::string seller{}; // where it is to be had; empty where there is one only
    friend bool operator==(const PackOffer&, const PackOffer&) = default;
};

struct ItemOffer {
    std::string id;
    std::string name;
    std::string serves; // the kind of need
    std::string unit;
    std::optional<double> fits_from; // both ends included, an absent end is open
    std::optional<double> fits_to;
    std::vector<PackOffer> packs;
    friend bool operator==(const ItemOffer&, const ItemOffer&) = default;
};

// Whether the need's watts, area or outlets lie within the item's bounds. A need without such a value is met only by
// items without bounds: what is not known is not guessed.
bool fits(const ItemOffer& item, const Need& need);

// The right kind, in the same unit, and fits; or the very item that is wished for, in the same unit.
bool serves(const ItemOffer& item, const Need& need);

} // namespace loam::buying
