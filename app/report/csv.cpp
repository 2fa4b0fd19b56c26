#include "app/report/csv.hpp"

#include <utility>

#include "core/formula_guard.hpp"

namespace loam::report {

namespace {

std::string quoted_where_needed(std::string text)
{
    // A semicolon or tab would end the cell where the reader's spreadsheet takes that for the separator, and what
    // follows would begin a cell of its own, unguarded.
    if (text.find_first_of(",;\t\"\r\n") == std::string::npos) {
        return text;
    }
    std::string quoted = "\"";
    for (const char c : text) {
        quoted += c == '"' ? "\"\"" : std::string(1, c);
    }
    return quoted + "\"";
}

} // namespace

std::string no_formula(std::string text)
{
    if (reads_as_formula(text)) {
        text.insert(text.begin(), '\'');
    }
    return text;
}

std::string csv_cell(std::string text)
{
    return quoted_where_needed(no_formula(std::move(text)));
}

std::string csv_figure(std::string text)
{
    return quoted_where_needed(std::move(text));
}

std::string csv_cell(const json::Node& node)
{
    if (node.kind == json::Kind::null) {
        return {};
    }
    return node.kind == json::Kind::number ? quoted_where_needed(node.text) : csv_cell(node.text);
}

std::string csv_row(const std::vector<std::string>& cells)
{
    std::string row;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        row += (i == 0 ? "" : ",") + cells[i];
    }
    return row + "\r\n";
}

} // namespace loam::report
