// The shopping list for spreadsheets (RFC 4180, no cell is read as a formula) and for programs.
#pragma once

#include <string>
#include <vector>

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"
#include "core/json/node.hpp"

namespace loam::report {

std::string shopping_csv(const std::vector<assess::ShoppingLine>& lines, const words::Speaker& speaker);

json::Node shopping_node(const std::vector<assess::ShoppingLine>& lines);

} // namespace loam::report
