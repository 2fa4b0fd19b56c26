// Cells and rows of CSV (RFC 4180). Internal to app/report.
#pragma once

#include <string>
#include <vector>

#include "core/json/node.hpp"

namespace loam::report {

// What a spreadsheet would take for a formula gets an apostrophe in front.
std::string no_formula(std::string text);
std::string csv_cell(std::string text);       // such, and quoted where needed
std::string csv_figure(std::string text);     // quoted where needed only: a minus begins no formula
std::string csv_cell(const json::Node& node); // numbers as they are; null: empty
std::string csv_row(const std::vector<std::string>& cells);

} // namespace loam::report
