// One cell of a price list as the JSON value that it means.
#pragma once

#include <optional>
#include <string>

#include "core/catalog/price_columns.hpp"
#include "core/json/problem.hpp"

namespace loam::catalog {

// Text as it stands; a number keeps its digits, so that a price never passes through a double; true and false in any
// case. nullopt, and `problem_code` set, where the text is not of the column's kind.
//
// Where a semicolon stands between the cells, a comma within a number is a decimal comma; elsewhere it might group
// thousands, and the number is refused.
std::optional<json::Node> value_of_cell(const std::string& text, ColumnKind kind, char separator,
                                        std::string_view& problem_code);

} // namespace loam::catalog
