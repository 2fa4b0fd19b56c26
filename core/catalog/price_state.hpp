// What a keeper should know of a price list before relying on it.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "core/catalog/prices.hpp"

namespace loam::catalog {

inline constexpr double old_prices_months = 12.0;

// Since the list's date, in months of mean length; less than zero: dated later; absent: no such date.
std::optional<double> age_months(const PriceList& prices, std::chrono::year_month_day today);

struct PriceState {
    std::optional<double> age_months; // as above
    bool old = false;
    std::vector<std::string> out_of_stock; // ids of items of which no pack is in stock, in the list's order
    std::vector<std::string> unserved;     // kinds of need without an item, sorted: they have no price, not a zero
};

// `kinds` serves every kind of need that there is, as the shipped list does.
PriceState price_state(const PriceList& prices, const PriceList& kinds, std::chrono::year_month_day today);

} // namespace loam::catalog
