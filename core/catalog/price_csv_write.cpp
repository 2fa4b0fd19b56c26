#include "core/catalog/catalog.hpp"
#include "core/catalog/csv.hpp"
#include "core/catalog/describe.hpp"
#include "core/catalog/price_columns.hpp"
#include "core/json/front.hpp"

namespace loam::catalog {

static std::string cell_text(const json::Node* node)
{
    if (node == nullptr) {
        return "";
    }
    if (node->kind == json::Kind::boolean) {
        return node->boolean ? "true" : "false";
    }
    return node->text;
}

std::string write_csv(const PriceList& prices)
{
    std::vector<std::string> cells;
    cells.reserve(price_columns.size());
    for (const Column& column : price_columns) {
        cells.emplace_back(column.name);
    }
    std::string text = csv::row(cells);
    const json::Node list = json::to_node(prices);
    const json::Node* const items = list.find("items");
    for (std::size_t i = 0; items != nullptr && i < items->items.size(); ++i) {
        const json::Node& item = items->items[i];
        for (const json::Node& pack : item.find("packs")->items) {
            const json::Node* const sources[] = {&list, &item, &pack}; // by ColumnLevel
            cells.clear();
            for (const Column& column : price_columns) {
                cells.push_back(cell_text(at_path(*sources[static_cast<std::size_t>(column.level)], column.path)));
            }
            text += csv::row(cells);
        }
    }
    return text;
}

} // namespace loam::catalog
