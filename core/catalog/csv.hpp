// Comma-separated values by RFC 4180, as spreadsheets write them: quoted cells, CRLF or LF, an optional byte order
// mark, and a comma, semicolon or tab between cells. Knows nothing of prices.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/json/problem.hpp"

namespace loam::catalog::csv {

struct Row {
    std::size_t number = 0; // as a spreadsheet counts, from 1; a quoted line break stays in its row
    std::vector<std::string> cells;
    std::optional<json::Problem> problem; // of read_each() only: what its cells can't be trusted for
};

struct Table {
    char separator = ',';
    std::vector<Row> rows;   // without the empty ones
    json::Problems problems; // of the form; empty: `rows` is whole
};

inline constexpr std::size_t largest_text_bytes = 8u * 1024u * 1024u;
inline constexpr std::size_t most_rows = 20'000;

// The separator is the one of the three that stands most often outside quotes in the first row.
Table read(std::string_view text);

// The same, but a row whose quotes or encoding are broken keeps its problem to itself and the next line of the text
// begins a row again. What is in `problems` then concerns the text as a whole, and `rows` is empty.
Table read_each(std::string_view text);

// One row, ended by CRLF. A cell that a spreadsheet would take for a formula (core/formula_guard.hpp) gets an
// apostrophe before it; so does one that begins with apostrophes before such a character, which makes `plain` its
// inverse.
std::string row(const std::vector<std::string>& cells);

// The cell's text without the apostrophe that `row` put before it.
std::string plain(std::string_view cell);

} // namespace loam::catalog::csv
