#include "app/report/csv.hpp"

#include <string_view>
#include <utility>

namespace loam::report {

namespace {

std::string quoted_where_needed(std::string text)
{
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
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
    // By common practice (OWASP, "CSV Injection", from memory).
    if (!text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos) {
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
