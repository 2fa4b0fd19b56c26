#include "core/catalog/price_csv_cell.hpp"

#include <algorithm>

#include "core/catalog/problem_codes.hpp"
#include "core/json/number_text.hpp"

namespace loam::catalog {

static std::string trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) {
        return "";
    }
    return std::string(text.substr(first, text.find_last_not_of(' ') - first + 1));
}

static std::optional<json::Node> flag_of(std::string text, std::string_view& problem_code)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    if (text == "true" || text == "false") {
        return json::Node::of(text == "true");
    }
    problem_code = problem::csv_not_a_flag;
    return std::nullopt;
}

static std::optional<json::Node> number_of(std::string text, char separator, std::string_view& problem_code)
{
    const std::size_t comma = text.find(',');
    if (separator == ';' && comma != std::string::npos && text.find('.') == std::string::npos) {
        text[comma] = '.'; // a second comma stays, and makes it no number
    }
    if (json::double_of(text)) {
        return json::Node::literal(std::move(text));
    }
    problem_code = problem::csv_not_a_number;
    return std::nullopt;
}

std::optional<json::Node> value_of_cell(const std::string& text, ColumnKind kind, char separator,
                                        std::string_view& problem_code)
{
    switch (kind) {
    case ColumnKind::flag:
        return flag_of(trimmed(text), problem_code);
    case ColumnKind::number:
        return number_of(trimmed(text), separator, problem_code);
    case ColumnKind::text:
        break;
    }
    return json::Node::of(std::string_view(text));
}

} // namespace loam::catalog
