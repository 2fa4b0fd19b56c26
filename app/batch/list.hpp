// A list of adopters as it was written: its columns, and its rows as text.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "app/batch/columns.hpp"
#include "core/catalog/csv.hpp"

namespace loam::batch {

// One reason why a row can't be used.
struct RowProblem {
    std::size_t row = 0; // as a spreadsheet counts, the header is 1
    QString column;      // empty: the row as a whole
    QString reason;      // a sentence; it may repeat what the cell holds
    friend bool operator==(const RowProblem&, const RowProblem&) = default;
};

struct AdopterList {
    char separator = ',';
    std::vector<const Column*> columns;  // by cell; nullptr: passed over
    std::vector<catalog::csv::Row> rows; // below the header
};

struct ListRead {
    AdopterList list;
    QStringList warnings; // columns that are passed over
    QStringList errors;   // not empty: no row can be trusted, and `list` is empty
};

// UTF-8, comma, semicolon or tab by the header, at most as large as core/catalog/csv.hpp reads. Columns may stand in
// any order; those that begin with x_ are the club's own. A row that is broken in itself stays in `rows` with its
// problem.
ListRead read_list(const QByteArray& bytes);

// What else makes the form of the row unfit: broken quotes or encoding, too few or too many cells.
std::optional<RowProblem> problem_of_form(const AdopterList& list, const catalog::csv::Row& row);

// The cell without the blanks around it and without the apostrophe that guards a formula. Empty where the column is
// absent.
std::string cell(const AdopterList& list, const catalog::csv::Row& row, std::string_view column);

} // namespace loam::batch
