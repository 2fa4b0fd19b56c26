#include "core/catalog/price_csv_header.hpp"

#include <algorithm>

#include "core/catalog/price_columns.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/nearest_name.hpp"

namespace loam::catalog {

static void note(json::Problems& problems, std::string_view code, std::vector<std::string> args)
{
    problems.push_back({"row 1", std::string(code), std::move(args)});
}

PriceHeader read_price_header(const csv::Row& row, json::Problems& problems)
{
    PriceHeader header{{}, row.cells.size()};
    std::vector<std::string_view> known;
    known.reserve(price_columns.size());
    for (const Column& column : price_columns) {
        known.push_back(column.name);
    }
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const std::string& name = row.cells[i];
        const auto found = std::find(known.begin(), known.end(), name);
        if (found != known.end()) {
            if (!header.cell_of.emplace(*found, i).second) {
                note(problems, problem::csv_duplicate_column, {name});
            }
        } else if (!name.empty() && name.substr(0, 2) != "x_") {
            const auto nearest = json::nearest_name(name, known);
            note(problems, problem::csv_unknown_column,
                 nearest ? std::vector{name, std::string(*nearest)} : std::vector{name});
        }
    }
    for (const Column& column : price_columns) {
        if (column.required && header.cell_of.count(column.name) == 0) {
            note(problems, problem::csv_missing_column, {std::string(column.name)});
        }
    }
    return header;
}

std::string cell_of(const PriceHeader& header, const csv::Row& row, std::string_view column)
{
    const auto found = header.cell_of.find(column);
    return found == header.cell_of.end() ? "" : csv::plain(row.cells[found->second]);
}

} // namespace loam::catalog
