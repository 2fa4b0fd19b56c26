// A table to take along: as HTML for texts and mails, as tabbed lines and as CSV for spreadsheets. What people wrote
// themselves is escaped in the one, and is no formula in either.
#pragma once

#include <QString>
#include <QStringList>
#include <string>
#include <vector>

namespace loam::report {

struct PastedCell {
    QString text;
    bool figure = false; // to the right, and left as it is: a minus begins no formula there
};

struct PastedTable {
    QString title;
    std::vector<PastedCell> heads; // a column of figures has a figure's head
    std::vector<std::vector<PastedCell>> rows;
    QStringList notes; // below it
};

QString pasted_html(const PastedTable& table);
// RFC 4180: the heads and the rows, without title and notes.
std::string pasted_csv(const PastedTable& table);
// Cells hold neither tabs nor line breaks: these become blanks.
QString pasted_lines(const PastedTable& table);

} // namespace loam::report
