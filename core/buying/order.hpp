// From needs, offers and what is owned to the lines of an order.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/buying/need.hpp"
#include "core/buying/offer.hpp"
#include "core/buying/pack_choice.hpp"
#include "core/explain.hpp"
#include "core/money.hpp"

namespace loam::buying {

// One keeper: what is needed and what stands on the shelf already. A shelf serves its own keeper only.
struct Household {
    std::vector<Need> needs;
    std::vector<Owned> owned;
    friend bool operator==(const Household&, const Household&) = default;
};

// One kind of pack in a line; one printed row.
struct Bought {
    std::string item;
    std::string item_name;
    std::string pack;
    std::int64_t packs = 0;
    double covers = 0.0; // the part of the need that these packs are bought for; sums to the line's `needed`
    Range left_over;     // the line's, at its last row; zero at the others
    MoneyRange pack_price;
    MoneyRange total; // pack_price times packs
    std::string seller{};
    friend bool operator==(const Bought&, const Bought&) = default;
};

enum class Unpriced {
    no_item,      // nothing in the list serves the kind of need
    other_unit,   // something does, but in another unit
    fit_unknown,  // what chooses among the items (watts, area) is not known
    nothing_fits, // the kind is there, but not for these watts or this area
    out_of_stock, // only packs out of stock would do
    no_price,     // no price or no yield is given for what would do
    too_large     // beyond what can be counted, or a choice too fine to be made exactly
};

struct Line {
    std::string need; // kind
    std::string unit;
    std::optional<double> fits_value; // of the first need in the line
    double needed = 0.0;              // net of what is owned
    double owned = 0.0;               // what is owned and used here
    std::string owned_item;           // the first item that is owned and used here; empty: none
    std::vector<Bought> bought;       // empty where nothing is needed any more, or where `unpriced`
    std::optional<MoneyRange> total;  // sum of the rows; absent where `unpriced`, never zero for it
    std::optional<Unpriced> unpriced;
    Aim aim = Aim::cheapest;  // what the packs were chosen by; see order()
    std::string instead_of{}; // "item, pack" that would have been bought, were it in stock
    Range left_over;          // what is over once the need is covered, over the yields of the packs
    std::vector<std::string> enclosures;
    std::string why;
    std::string where;
    friend bool operator==(const Line&, const Line&) = default;
};

struct Order {
    std::vector<Line> lines; // in the order in which the needs were first mentioned
    MoneyRange total;        // of the priced lines
    friend bool operator==(const Order&, const Order&) = default;
};

// Needs that exactly the same items can serve are one line over all households and enclosures; each line takes the
// packs that `aim` prefers, chosen at `level`. The totals at the other levels are those of the same packs. Where an
// aim other than the cheapest can't be searched exactly, the line takes the cheapest and says so in its `aim`.
// Needs that share only some of their items stay apart, each at its own best.
Order order(const std::vector<Household>& households, const std::vector<ItemOffer>& offers, const Currency& currency,
            Aim aim = Aim::cheapest, Level level = Level::typical);

} // namespace loam::buying
