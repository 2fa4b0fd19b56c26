// What the description of a price list can't say of it.
#pragma once

#include "core/catalog/prices.hpp"
#include "core/json/problem.hpp"

namespace loam::catalog {

// Repeated ids of items and of packs within an item, and prices with more decimals than the currency has.
void check_prices(const PriceList& prices, json::Problems& problems);

// Whether `text` is YYYY-MM-DD and in the calendar.
bool is_calendar_date(std::string_view text);

} // namespace loam::catalog
