// The parts that a sheet is made of. A sheet's content is a list of blocks; how they look and where pages break is
// decided once, for all sheets.
#pragma once

#include <QString>
#include <QStringList>
#include <variant>
#include <vector>

namespace loam::sheets {

struct Title {
    QString text;
    QString below; // smaller, under it
};

struct Heading {
    QString text;
};

struct Paragraph {
    QString text;
};

// A caution in a frame with a heavy bar at its left.
struct Caution {
    QString text;
};

// Cautions under one heading, all on one page.
struct Together {
    QString heading;
    std::vector<Caution> cautions;
};

// Something to write in by hand: the label, then a ruled line.
struct Blank {
    QString label;
};

struct Column {
    QString head;
    double width = 1.0; // share of the row
    bool right = false; // figures
};

struct Row {
    QStringList cells;
    bool tick = false;  // an empty box to tick before the first cell
    bool total = false; // bold, with a line above
    bool group = false; // the first cell alone, bold, over the rows that follow
};

struct Table {
    std::vector<Column> columns;
    std::vector<Row> rows;
};

using Block = std::variant<Title, Heading, Paragraph, Caution, Together, Blank, Table>;

struct Content {
    std::vector<Block> blocks;
    QString footer; // beside the page number
};

} // namespace loam::sheets
