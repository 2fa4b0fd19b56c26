#include "app/batch/list.hpp"

#include <algorithm>

#include "app/batch/cell_words.hpp"
#include "app/batch/said.hpp"
#include "app/words/problems.hpp"
#include "core/catalog/problem_codes.hpp"
#include "core/json/nearest_name.hpp"

namespace loam::batch {

namespace {

std::string trimmed(std::string_view cell)
{
    const std::size_t first = cell.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string()
                                           : std::string(cell.substr(first, cell.find_last_not_of(" \t") - first + 1));
}

QString passed_over(const std::string& name)
{
    std::vector<std::string_view> known;
    for (const Column& column : columns()) {
        known.push_back(column.name);
    }
    const QString written = shown(text(name));
    const auto nearest = json::nearest_name(name, known);
    return nearest ? Said::tr("The column “%1” is not known and is passed over. Did you mean “%2”?")
                         .arg(written, text(*nearest))
                   : Said::tr("The column “%1” is not known and is passed over.").arg(written);
}

void read_header(const catalog::csv::Row& header, ListRead& read)
{
    for (const std::string& written : header.cells) {
        const std::string name = trimmed(written);
        const Column* const column = find_column(name);
        const bool twice = column != nullptr && std::count(read.list.columns.begin(), read.list.columns.end(), column);
        if (twice) {
            read.errors << Said::tr("The column “%1” stands there twice.").arg(text(name));
        } else if (column == nullptr && !name.empty() && !name.starts_with("x_")) {
            read.warnings << passed_over(name);
        }
        read.list.columns.push_back(column);
    }
    const auto has = [&](std::string_view name) {
        const auto& all = read.list.columns;
        return std::find(all.begin(), all.end(), find_column(name)) != all.end();
    };
    if (!has("name") && !has("number")) {
        read.errors << Said::tr("The first row must name the columns, and there is neither “name” nor “number” among "
                                "them.");
    }
}

} // namespace

ListRead read_list(const QByteArray& bytes)
{
    ListRead read;
    catalog::csv::Table table = catalog::csv::read_each({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    read.errors = words::problems(table.problems);
    if (!read.errors.isEmpty()) {
        return read;
    }
    if (table.rows.empty()) {
        read.errors << Said::tr("The list is empty.");
        return read;
    }
    if (table.rows.front().problem) {
        read.errors << words::problem(*table.rows.front().problem);
        return read;
    }
    read.list.separator = table.separator;
    read_header(table.rows.front(), read);
    if (read.errors.isEmpty() && table.rows.size() < 2) {
        read.errors << Said::tr("There are no rows below the header.");
    }
    if (!read.errors.isEmpty()) {
        read.list = {};
        return read;
    }
    table.rows.erase(table.rows.begin());
    read.list.rows = std::move(table.rows);
    return read;
}

std::optional<RowProblem> problem_of_form(const AdopterList& list, const catalog::csv::Row& row)
{
    if (row.problem) {
        return RowProblem{row.number, {}, words::problem_sentence(*row.problem)};
    }
    if (row.cells.size() != list.columns.size()) {
        const json::Problem count{"",
                                  std::string(catalog::problem::csv_cell_count),
                                  {std::to_string(row.cells.size()), std::to_string(list.columns.size())}};
        return RowProblem{row.number, {}, words::problem_sentence(count)};
    }
    return std::nullopt;
}

std::string cell(const AdopterList& list, const catalog::csv::Row& row, std::string_view column)
{
    for (std::size_t i = 0; i < list.columns.size() && i < row.cells.size(); ++i) {
        if (list.columns[i] != nullptr && list.columns[i]->name == column) {
            return catalog::csv::plain(trimmed(row.cells[i]));
        }
    }
    return {};
}

} // namespace loam::batch
