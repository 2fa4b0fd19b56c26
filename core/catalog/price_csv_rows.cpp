#include "core/catalog/price_csv_rows.hpp"

#include <optional>

#include "core/catalog/price_csv_cell.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/pointer.hpp"

namespace loam::catalog {

namespace {

// The column whose cell counts: where this one's is empty, the one that it falls back on.
std::string_view counting_column(const PriceHeader& header, const csv::Row& row, const Column& column)
{
    const bool elsewhere = !column.fallback.empty() && column.fallback.front() != '\'';
    return elsewhere && cell_of(header, row, column.name).empty() ? column.fallback : column.name;
}

// The cell that counts, or the text that stands in for an empty one.
std::string cell_or_fallback(const PriceHeader& header, const csv::Row& row, const Column& column)
{
    std::string text = cell_of(header, row, counting_column(header, row, column));
    const bool literal = !column.fallback.empty() && column.fallback.front() == '\'';
    return text.empty() && literal ? std::string(column.fallback.substr(1, column.fallback.size() - 2)) : text;
}

// What follows `parent` in `pointer`, without the slash between them.
std::optional<std::string_view> below(std::string_view pointer, std::string_view parent)
{
    if (pointer == parent) {
        return std::string_view();
    }
    const bool under =
        pointer.size() > parent.size() && pointer.substr(0, parent.size()) == parent && pointer[parent.size()] == '/';
    return under ? std::optional(pointer.substr(parent.size() + 1)) : std::nullopt;
}

// The column of a member; of a member that is an object, the first column within it; nullptr where there is none.
const Column* column_at(ColumnLevel level, std::string_view path)
{
    for (const Column& column : price_columns) {
        if (!path.empty() && column.level == level && below(column.path, path)) {
            return &column;
        }
    }
    return nullptr;
}

} // namespace

PriceRows::PriceRows(const csv::Table& table, const PriceHeader& header) : table_(table), header_(header)
{
    list_.add("format", json::Node::of(std::string_view("loamstead-prices")));
    list_.add("version", json::Node::of(std::int64_t{1}));
    for (std::size_t i = 1; i < table.rows.size(); ++i) {
        add_row(table.rows[i]);
    }
}

void PriceRows::add_row(const csv::Row& row)
{
    if (row.cells.size() != header_.width) {
        problems_.push_back({"row " + std::to_string(row.number),
                             std::string(problem::csv_cell_count),
                             {std::to_string(row.cells.size()), std::to_string(header_.width)}});
        return;
    }
    const bool first_of_list = first_row_ == nullptr;
    first_row_ = first_of_list ? &row : first_row_;
    const auto [found, first_of_item] = index_of_.emplace(cell_of(header_, row, "item_id"), items_.size());
    if (first_of_item) {
        items_.emplace_back();
    }
    ItemRows& item = items_[found->second];
    item.rows.push_back(&row);
    item.packs.push_back(json::Node::object());
    for (const Column& column : price_columns) {
        switch (column.level) {
        case ColumnLevel::list:
            first_of_list ? take(list_, row, column) : compare(row, *first_row_, column);
            break;
        case ColumnLevel::item:
            first_of_item ? take(item.node, row, column) : compare(row, *item.rows.front(), column);
            break;
        case ColumnLevel::pack:
            take(item.packs.back(), row, column);
            break;
        }
    }
}

void PriceRows::take(json::Node& object, const csv::Row& row, const Column& column)
{
    const std::string text = cell_or_fallback(header_, row, column);
    if (text.empty()) {
        return; // whether it may be empty is the reader's business
    }
    std::string_view code;
    if (auto value = value_of_cell(text, column.kind, table_.separator, code)) {
        put_at_path(object, column.path, std::move(*value));
    } else {
        note(row, counting_column(header_, row, column), code, {text});
    }
}

void PriceRows::compare(const csv::Row& row, const csv::Row& first, const Column& column)
{
    const std::string text = cell_of(header_, row, column.name);
    const std::string before = cell_of(header_, first, column.name);
    if (!text.empty() && text != before) {
        note(row, column.name, problem::csv_differs, {text, before});
    }
}

void PriceRows::note(const csv::Row& row, std::string_view column, std::string_view code, std::vector<std::string> args)
{
    std::string where = "row " + std::to_string(row.number);
    if (!column.empty()) {
        where += ", column " + std::string(column);
    }
    if (told_.insert(where).second) {
        problems_.push_back({std::move(where), std::string(code), std::move(args)});
    }
}

json::Node PriceRows::node() const
{
    json::Node items = json::Node::array();
    for (const ItemRows& each : items_) {
        json::Node packs = json::Node::array();
        for (const json::Node& pack : each.packs) {
            packs.add(pack);
        }
        json::Node item = each.node;
        item.add("packs", std::move(packs));
        items.add(std::move(item));
    }
    json::Node list = list_;
    list.add("items", std::move(items));
    return list;
}

void PriceRows::tell(const json::Problem& problem)
{
    const Origin origin = origin_of(problem.where);
    if (origin.row == nullptr) {
        problems_.push_back({"", problem.code, problem.args});
    } else if (origin.column == nullptr) {
        note(*origin.row, "", problem.code, problem.args);
    } else {
        note(*origin.row, counting_column(header_, *origin.row, *origin.column), problem.code, problem.args);
    }
}

PriceRows::Origin PriceRows::origin_of(std::string_view pointer) const
{
    for (std::size_t i = 0; i < items_.size(); ++i) {
        const std::string item = json::pointer_to("/items", i);
        const auto in_item = below(pointer, item);
        for (std::size_t p = 0; in_item && p < items_[i].rows.size(); ++p) {
            if (const auto in_pack = below(pointer, json::pointer_to(item + "/packs", p))) {
                return {items_[i].rows[p], column_at(ColumnLevel::pack, *in_pack)};
            }
        }
        if (in_item) {
            return {items_[i].rows.front(), column_at(ColumnLevel::item, *in_item)};
        }
    }
    const Column* const column = column_at(ColumnLevel::list, below(pointer, "").value_or(""));
    return {column == nullptr ? nullptr : first_row_, column};
}

} // namespace loam::catalog
