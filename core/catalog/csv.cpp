#include "core/catalog/csv.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "core/catalog/problem_codes.hpp"
#include "core/formula_guard.hpp"
#include "core/json/problem_codes.hpp"
#include "core/json/utf8.hpp"

namespace loam::catalog::csv {

namespace {

char separator_of(std::string_view text)
{
    constexpr std::array candidates{',', ';', '\t'};
    std::array<std::size_t, candidates.size()> seen{};
    bool quoted = false;
    for (const char c : text) {
        if (c == '"') {
            quoted = !quoted;
        } else if (!quoted && (c == '\n' || c == '\r')) {
            break;
        } else if (!quoted) {
            for (std::size_t i = 0; i < candidates.size(); ++i) {
                seen[i] += c == candidates[i] ? 1 : 0;
            }
        }
    }
    const auto most = std::max_element(seen.begin(), seen.end());
    return candidates[static_cast<std::size_t>(most - seen.begin())];
}

// Where the text stops being UTF-8, which mostly means that a spreadsheet saved it in an older encoding.
json::Problem bad_encoding(std::string_view text, std::size_t offset, std::size_t first_line)
{
    const std::string_view before = text.substr(0, offset);
    const auto line = first_line + static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
    const std::size_t start = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    const std::size_t column = json::code_points(before.substr(start)) + 1;
    return {"", std::string(json::problem::invalid_utf8), {std::to_string(line), std::to_string(column)}};
}

enum class Trust { whole_or_nothing, row_by_row };

// Walks the text once, cell by cell.
class Reader {
public:
    Reader(std::string_view text, Table& table, Trust trust) : text_(text), table_(table), trust_(trust) {}

    void run()
    {
        while (at_ < text_.size()) {
            if (number_ == most_rows) {
                table_.problems.push_back({"", std::string(problem::csv_too_many_rows), {std::to_string(most_rows)}});
                if (trust_ == Trust::row_by_row) {
                    table_.rows.clear();
                }
                return;
            }
            read_row();
        }
    }

private:
    bool at_end_of_row() const { return at_ == text_.size() || text_[at_] == '\n' || text_[at_] == '\r'; }

    void read_row()
    {
        const std::size_t start = at_;
        Row row{++number_, {}, {}};
        row.cells.push_back(read_cell());
        while (at_ < text_.size() && text_[at_] == table_.separator) {
            ++at_;
            row.cells.push_back(read_cell());
        }
        if (trust_ == Trust::row_by_row) {
            row.problem = problem_of_row(start);
        }
        if (at_ < text_.size() && text_[at_] == '\r') {
            ++at_;
        }
        if (at_ < text_.size() && text_[at_] == '\n') {
            ++at_;
        }
        const bool empty = std::all_of(row.cells.begin(), row.cells.end(), [](const auto& c) { return c.empty(); });
        if (!empty || row.problem) {
            table_.rows.push_back(std::move(row));
        }
    }

    // A row whose quotes are broken may have swallowed the lines after it: they are given back.
    std::optional<json::Problem> problem_of_row(std::size_t start)
    {
        if (noted_) {
            at_ = std::min(text_.find_first_of("\r\n", start), text_.size());
            return std::exchange(noted_, std::nullopt);
        }
        const std::string_view row = text_.substr(start, at_ - start);
        const auto offset = json::first_invalid_utf8(row);
        return offset ? std::optional(bad_encoding(row, *offset, number_)) : std::nullopt;
    }

    std::string read_cell()
    {
        if (at_ < text_.size() && text_[at_] == '"') {
            return read_quoted();
        }
        const std::size_t start = at_;
        while (!at_end_of_row() && text_[at_] != table_.separator) {
            ++at_;
        }
        return std::string(text_.substr(start, at_ - start));
    }

    std::string read_quoted()
    {
        std::string cell;
        ++at_; // the opening quote
        while (at_ < text_.size()) {
            if (text_[at_] != '"') {
                cell += text_[at_++];
            } else if (at_ + 1 < text_.size() && text_[at_ + 1] == '"') {
                cell += '"';
                at_ += 2;
            } else {
                ++at_;
                refuse_text_after_quote();
                return cell;
            }
        }
        note(problem::csv_open_quote);
        return cell;
    }

    void refuse_text_after_quote()
    {
        if (at_end_of_row() || text_[at_] == table_.separator) {
            return;
        }
        note(problem::csv_stray_quote);
        while (!at_end_of_row() && text_[at_] != table_.separator) {
            ++at_;
        }
    }

    void note(std::string_view code)
    {
        json::Problem problem{"row " + std::to_string(number_), std::string(code), {}};
        if (trust_ == Trust::whole_or_nothing) {
            table_.problems.push_back(std::move(problem));
        } else if (!noted_) {
            noted_ = std::move(problem);
        }
    }

    std::string_view text_;
    Table& table_;
    Trust trust_;
    std::optional<json::Problem> noted_; // of the row being read, row by row
    std::size_t at_ = 0;
    std::size_t number_ = 0;
};

bool takes_apostrophe(std::string_view cell)
{
    const std::size_t first = cell.find_first_not_of('\'');
    return first != std::string_view::npos && reads_as_formula(cell.substr(first));
}

// False where the text is larger than is read.
bool begin(std::string_view text, Table& table)
{
    if (text.size() <= largest_text_bytes) {
        return true;
    }
    table.problems.push_back(
        {"", std::string(json::problem::too_large), {std::to_string(largest_text_bytes), std::to_string(text.size())}});
    return false;
}

std::string_view without_mark(std::string_view text)
{
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    return text.substr(0, mark.size()) == mark ? text.substr(mark.size()) : text;
}

} // namespace

Table read(std::string_view text)
{
    Table table;
    if (!begin(text, table)) {
        return table;
    }
    if (const auto offset = json::first_invalid_utf8(text)) {
        table.problems.push_back(bad_encoding(text, *offset, 1));
        return table;
    }
    text = without_mark(text);
    table.separator = separator_of(text);
    Reader(text, table, Trust::whole_or_nothing).run();
    return table;
}

Table read_each(std::string_view text)
{
    Table table;
    if (begin(text, table)) {
        text = without_mark(text);
        table.separator = separator_of(text);
        Reader(text, table, Trust::row_by_row).run();
    }
    return table;
}

std::string row(const std::vector<std::string>& cells)
{
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        line += i == 0 ? "" : ",";
        const std::string cell = (takes_apostrophe(cells[i]) ? "'" : "") + cells[i];
        if (cell.find_first_of(",;\t\"\r\n") == std::string::npos) {
            line += cell;
            continue;
        }
        line += '"';
        for (const char c : cell) {
            line += c == '"' ? "\"\"" : std::string(1, c);
        }
        line += '"';
    }
    return line + "\r\n";
}

std::string plain(std::string_view cell)
{
    if (!cell.empty() && cell.front() == '\'' && takes_apostrophe(cell)) {
        cell.remove_prefix(1);
    }
    return std::string(cell);
}

} // namespace loam::catalog::csv
