// Which cell of a row holds which of our columns.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>

#include "core/catalog/csv.hpp"
#include "core/json/problem.hpp"

namespace loam::catalog {

struct PriceHeader {
    std::map<std::string_view, std::size_t> cell_of; // by the name of the column
    std::size_t width = 0;
};

// Columns may stand in any order; one that begins with x_ is the keeper's own and passed over. Problems are told of
// row 1.
PriceHeader read_price_header(const csv::Row& row, json::Problems& problems);

// The cell as it was before it was made safe for spreadsheets; empty where the column is absent.
std::string cell_of(const PriceHeader& header, const csv::Row& row, std::string_view column);

} // namespace loam::catalog
