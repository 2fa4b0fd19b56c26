// The parts that a sheet is made of. A sheet's content is a list of blocks; how they look and where pages break is
// decided once, for all sheets.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <functional>
#include <variant>
#include <vector>

namespace loam::sheets {

// Who hands the sheet out, over its title.
struct Issuer {
    QString name;
    QString contact; // smaller, under it
};

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
    double line_pt = 130.0; // how long
};

// A drawing of a height of its own, painted into the width of the page. Lengths in points.
struct Figure {
    double height_pt = 0.0;
    std::function<void(QPainter&, const QRectF&)> paint;
};

// What follows begins a new page.
struct NewPage {};

struct Column {
    QString head;
    double width = 1.0; // share of the row
    bool right = false; // figures
};

struct Row {
    QStringList cells;
    bool tick = false;     // an empty box to tick before the first cell
    bool total = false;    // bold, with a line above
    bool group = false;    // the first cell alone, bold, over the rows that follow
    double least_pt = 0.0; // its height at least, to write in by hand
};

// Without any head in its columns it has no head row.
struct Table {
    std::vector<Column> columns;
    std::vector<Row> rows;
    bool grid = false;  // ruled between the columns too, to write in by hand
    bool small = false; // in smaller type, for what is a form more than a text
};

using Block = std::variant<Issuer, Title, Heading, Paragraph, Caution, Together, Blank, Table, Figure, NewPage>;

struct Content {
    std::vector<Block> blocks;
    QString name;   // beside the page number
    QString footer; // before it
    int pages = 0;  // how many it should take: type is made a little smaller to get there; 0: as many as it needs
};

} // namespace loam::sheets
