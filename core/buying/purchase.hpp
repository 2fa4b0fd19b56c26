// An order over several places to buy, each with its terms.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/buying/order.hpp"

namespace loam::buying {

// On what terms a place sells.
struct Terms {
    std::string seller;
    MoneyRange delivery;            // zero where it is fetched
    std::optional<Money> free_from; // goods of this much are brought for nothing, by each price for itself
    double tax_share = 0.0;         // on top of goods and delivery, 0..1
    std::optional<Money> minimum;   // of goods, typical prices
    friend bool operator==(const Terms&, const Terms&) = default;
};

struct Delivered {
    std::string seller;
    MoneyRange goods;
    MoneyRange delivery;
    MoneyRange tax;
    bool below_minimum = false;
    friend bool operator==(const Delivered&, const Delivered&) = default;
};

struct Purchase {
    Order order;                       // its total is of the goods alone
    std::vector<Delivered> deliveries; // of the places where something is bought
    MoneyRange total;                  // goods, delivery and tax
    friend bool operator==(const Purchase&, const Purchase&) = default;
};

inline constexpr std::size_t most_sellers = 6;

// Method: every set of places is tried, in each the order() of what they sell; the set that leaves the fewest lines
//   without a price, then the fewest orders under their minimum, then the least total at `level` is taken, of equal
//   ones the smallest. Exact but for goods that would only be added to reach a minimum or free delivery: none are.
// Range: up to `most_sellers` places; what further ones sell is left out. One without terms sells without any.
Purchase purchase(const std::vector<Household>& households, const std::vector<ItemOffer>& offers,
                  const std::vector<Terms>& terms, const Currency& currency, Aim aim = Aim::cheapest,
                  Level level = Level::typical);

} // namespace loam::buying
