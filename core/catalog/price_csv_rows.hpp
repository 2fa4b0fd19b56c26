// Gathers the rows of a price list into its JSON form, and remembers which row each part came from.
#pragma once

#include <cstddef>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/catalog/price_columns.hpp"
#include "core/catalog/price_csv_header.hpp"

namespace loam::catalog {

// Rows with the same item id are packs of one item, wherever they stand. What belongs to the item or to the list may
// be left empty in its later rows, but not say something else there.
class PriceRows {
public:
    // Both must outlive the object.
    PriceRows(const csv::Table& table, const PriceHeader& header);

    bool empty() const { return items_.empty(); } // no row had the right number of cells
    json::Node node() const;                      // the whole price list
    // Of the rows themselves and, once told, of the JSON form; at most one for a cell.
    const json::Problems& problems() const { return problems_; }
    // Adds a problem of node(), by the row and column that it came from.
    void tell(const json::Problem& problem);

private:
    struct ItemRows {
        json::Node node = json::Node::object();
        std::vector<json::Node> packs;
        std::vector<const csv::Row*> rows; // of the packs
    };
    struct Origin {
        const csv::Row* row = nullptr;
        const Column* column = nullptr; // none: the row as a whole
    };

    void add_row(const csv::Row& row);
    void take(json::Node& object, const csv::Row& row, const Column& column);
    void compare(const csv::Row& row, const csv::Row& first, const Column& column);
    void note(const csv::Row& row, std::string_view column, std::string_view code, std::vector<std::string> args);
    Origin origin_of(std::string_view pointer) const;

    const csv::Table& table_;
    const PriceHeader& header_;
    json::Problems problems_;
    std::set<std::string> told_;
    json::Node list_ = json::Node::object();
    const csv::Row* first_row_ = nullptr;
    std::vector<ItemRows> items_;
    std::map<std::string, std::size_t> index_of_; // by item id
};

} // namespace loam::catalog
