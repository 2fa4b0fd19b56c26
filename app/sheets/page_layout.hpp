// Breaks blocks into pages and paints them. Lengths are in points (1/72 inch).
#pragma once

#include <QFont>
#include <QPainter>
#include <QRectF>
#include <map>
#include <vector>

#include "app/sheets/block.hpp"

namespace loam::sheets {

struct Fonts {
    QFont body, bold, heading, title, small, small_bold;

    static Fonts standard();
};

class PageLayout {
public:
    // `page` is the printable area. Pages are made at once; painting needs no second look at the content. `zoom`: all
    // but figures, which are to scale, is made so much larger or smaller.
    PageLayout(const Content& content, const QRectF& page, const Fonts& fonts, double zoom = 1.0);

    int page_count() const { return static_cast<int>(pages_.size()); }
    void paint(QPainter& painter, int page) const;

private:
    // One thing that is not split across pages.
    struct Piece {
        enum class Kind { issuer, title, heading, paragraph, caution, blank, head, row, figure, new_page };
        Kind kind = Kind::paragraph;
        double height = 0.0;
        double company = 0.0; // height of what follows and has to stand on the same page
        double below = 0.0;   // space after it
        QStringList texts = {};
        const Table* table = nullptr;
        const Row* row = nullptr;
        const Figure* figure = nullptr;
        double line_pt = 0.0; // of a blank
        double top = 0.0;
    };

    std::vector<Piece> pieces_of(const Block& block) const;
    Piece text_piece(Piece::Kind kind, const QFont& font, const QString& text, const QString& below) const;
    std::vector<Piece> pieces_of(const Together& together) const;
    std::vector<Piece> pieces_of(const Table& table) const;
    Piece heading_piece(const QString& text) const;
    Piece caution_piece(const QString& text) const;
    Piece row_piece(const Table& table, const Row& row) const;
    Piece head_piece(const Table& table) const;
    double lines(int count) const; // height of so many lines of a table
    void place(std::vector<Piece> pieces);
    double text_height(const QFont& font, double width, const QString& text) const;
    void paint_piece(QPainter& painter, const Piece& piece) const;
    void paint_texts(QPainter& painter, const QFont& font, const QRectF& box, const Piece& piece) const;
    void paint_blank(QPainter& painter, const QRectF& box, const Piece& piece) const;
    void paint_row(QPainter& painter, const Piece& piece) const;
    void paint_lines(QPainter& painter, const Piece& piece, const std::vector<QRectF>& cells) const;
    const QFont& font_of(const Table& table, bool bold) const;
    std::vector<double> widths_of(const Table& table) const;
    std::vector<QRectF> cells_of(const Table& table, double top, double height) const;

    const Content* content_;
    QRectF page_;
    Fonts fonts_;
    double zoom_;
    std::map<const Table*, std::vector<double>> widths_; // of the columns
    std::vector<std::vector<Piece>> pages_{{}};
    double y_ = 0.0;
};

// With the largest type, of a few sizes that are still large, that gets the content onto as many pages as it should
// take, or else as near to it as can be.
PageLayout fitted(const Content& content, const QRectF& page, const Fonts& fonts);

} // namespace loam::sheets
