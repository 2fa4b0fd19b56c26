// Text in lines of at most 80 columns. Internal to app/report.
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

namespace loam::report {

inline constexpr qsizetype terminal_columns = 80;

// Broken at blanks; the first line behind `first`, the others as far in as it is long.
QString wrapped(const QString& first, const QString& text);

struct Cell {
    QString text;
    qsizetype width = 0; // what is longer is cut, with a mark; 0: as long as it is
    bool right = false;
};

// Cells beside one another with two blanks between, behind `indent` blanks; ends with a line feed.
QString row(qsizetype indent, const std::vector<Cell>& cells);

QString heading(const QString& text);

} // namespace loam::report
