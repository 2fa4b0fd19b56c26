// A price list from CSV: its rows become the JSON form, the reader of that form judges it, and what it finds is told
// by row and column.
#include "core/catalog/catalog.hpp"
#include "core/catalog/csv.hpp"
#include "core/catalog/price_csv_rows.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/catalog/read_prices.hpp"

namespace loam::catalog {

PriceListRead read_prices_csv(std::string_view csv_text)
{
    csv::Table table = csv::read(csv_text);
    if (!table.problems.empty()) {
        return {{}, std::move(table.problems)};
    }
    if (table.rows.size() < 2) {
        return {{}, {{"", std::string(problem::csv_no_rows), {}}}};
    }
    json::Problems problems;
    const PriceHeader header = read_price_header(table.rows.front(), problems);
    if (!problems.empty()) {
        return {{}, std::move(problems)}; // without its columns nothing can be said of the rows
    }
    PriceRows rows(table, header);
    if (rows.empty()) {
        return {{}, rows.problems()};
    }
    PriceListRead result = read_price_node(rows.node());
    for (const json::Problem& problem : result.problems) {
        rows.tell(problem);
    }
    if (!rows.problems().empty()) {
        return {{}, rows.problems()};
    }
    return result;
}

} // namespace loam::catalog
