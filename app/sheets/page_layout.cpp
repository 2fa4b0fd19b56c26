#include "app/sheets/page_layout.hpp"

#include <QFontMetricsF>
#include <QObject>
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "app/sheets/column_widths.hpp"
#include "app/sheets/page_measures.hpp"

namespace loam::sheets {

namespace {

bool has_ticks(const Table& table)
{
    for (const Row& row : table.rows) {
        if (row.tick) {
            return true;
        }
    }
    return false;
}

bool has_head(const Table& table)
{
    return std::any_of(table.columns.begin(), table.columns.end(),
                       [](const Column& column) { return !column.head.isEmpty(); });
}

} // namespace

Fonts Fonts::standard()
{
    QFont body(QStringLiteral("DejaVu Sans"));
    body.setPixelSize(11); // one pixel is one point here
    Fonts fonts{body, body, body, body, body, body};
    fonts.bold.setBold(true);
    fonts.heading.setPixelSize(13);
    fonts.heading.setBold(true);
    fonts.title.setPixelSize(20);
    fonts.title.setBold(true);
    fonts.small.setPixelSize(9);
    fonts.small_bold.setPixelSize(9);
    fonts.small_bold.setBold(true);
    return fonts;
}

// Laid out on a page of another size, which is painted at the zoom.
PageLayout::PageLayout(const Content& content, const QRectF& page, const Fonts& fonts, double zoom)
    : content_(&content), page_(QRectF(page.topLeft() / zoom, page.size() / zoom).adjusted(0, 0, 0, -footer_pt)),
      fonts_(fonts), zoom_(zoom), y_(page_.top())
{
    for (const Block& block : content_->blocks) {
        if (const auto* table = std::get_if<Table>(&block)) {
            widths_.emplace(table, widths_of(*table));
        }
        place(pieces_of(block));
    }
}

PageLayout fitted(const Content& content, const QRectF& page, const Fonts& fonts)
{
    constexpr std::array zooms{0.97, 0.94, 0.91, 0.88, 0.85};
    PageLayout best(content, page, fonts);
    for (const double zoom : zooms) {
        if (content.pages == 0 || best.page_count() <= content.pages) {
            break;
        }
        PageLayout smaller(content, page, fonts, zoom);
        if (smaller.page_count() < best.page_count()) {
            best = std::move(smaller);
        }
    }
    return best;
}

double PageLayout::text_height(const QFont& font, double width, const QString& text) const
{
    return std::ceil(QFontMetricsF(font).boundingRect(QRectF(0, 0, width, 1e5), wrap, text).height());
}

PageLayout::Piece PageLayout::head_piece(const Table& table) const
{
    Piece piece;
    piece.kind = Piece::Kind::head;
    piece.table = &table;
    double height = 0.0;
    const std::vector<QRectF> cells = cells_of(table, 0.0, 1.0);
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        height = std::max(height, text_height(font_of(table, true), cells[i].width(), table.columns[i].head));
    }
    piece.height = height + 2 * row_pad_pt;
    return piece;
}

PageLayout::Piece PageLayout::row_piece(const Table& table, const Row& row) const
{
    Piece piece;
    piece.kind = Piece::Kind::row;
    piece.table = &table;
    piece.row = &row;
    if (row.group) {
        piece.height =
            text_height(font_of(table, true), page_.width(), row.cells.value(0)) + row_pad_pt + group_space_pt;
        return piece;
    }
    double height = std::max(row.tick ? tick_pt : 0.0, row.least_pt - 2 * row_pad_pt);
    const std::vector<QRectF> cells = cells_of(table, 0.0, 1.0);
    for (std::size_t i = 0; i < table.columns.size() && static_cast<qsizetype>(i) < row.cells.size(); ++i) {
        height = std::max(
            height, text_height(font_of(table, row.total), cells[i].width(), row.cells[static_cast<qsizetype>(i)]));
    }
    piece.height = height + 2 * row_pad_pt;
    return piece;
}

const QFont& PageLayout::font_of(const Table& table, bool bold) const
{
    if (table.small) {
        return bold ? fonts_.small_bold : fonts_.small;
    }
    return bold ? fonts_.bold : fonts_.body;
}

// A head or a figure is never cut off: the widest word decides how narrow a column may be.
std::vector<double> PageLayout::widths_of(const Table& table) const
{
    const QFontMetricsF body(font_of(table, false));
    const QFontMetricsF bold(font_of(table, true));
    const double ticks = has_ticks(table) ? tick_space_pt : 0.0;
    const double gaps = cell_gap_pt * static_cast<double>(table.columns.size() - 1);
    std::vector<double> shares;
    std::vector<double> least;
    for (const Column& column : table.columns) {
        shares.push_back(column.width);
        least.push_back(std::ceil(unbreakable_width(column.head, bold)));
    }
    for (const Row& row : table.rows) {
        const QFontMetricsF& metrics = row.total ? bold : body;
        for (qsizetype i = 0; i < row.cells.size() && i < std::ssize(least) && !row.group; ++i) {
            double& widest = least[static_cast<std::size_t>(i)];
            widest = std::max(widest, std::ceil(unbreakable_width(row.cells[i], metrics)));
        }
    }
    return column_widths(shares, least, page_.width() - ticks - gaps);
}

std::vector<QRectF> PageLayout::cells_of(const Table& table, double top, double height) const
{
    std::vector<QRectF> cells;
    double x = page_.left() + (has_ticks(table) ? tick_space_pt : 0.0);
    for (const double width : widths_.at(&table)) {
        cells.emplace_back(x, top, width, height);
        x += width + cell_gap_pt;
    }
    return cells;
}

PageLayout::Piece PageLayout::text_piece(Piece::Kind kind, const QFont& font, const QString& text,
                                         const QString& below) const
{
    const QFont& second = kind == Piece::Kind::issuer ? fonts_.small : fonts_.body;
    const double under = below.isEmpty() ? 0.0 : text_height(second, page_.width(), below);
    const double between = below.isEmpty() || kind == Piece::Kind::issuer ? 0.0 : gap_pt;
    return {.kind = kind,
            .height = text_height(font, page_.width(), text) + between + under + gap_pt,
            .texts = {text, below}};
}

std::vector<PageLayout::Piece> PageLayout::pieces_of(const Block& block) const
{
    const double width = page_.width();
    if (const auto* issuer = std::get_if<Issuer>(&block)) {
        Piece piece = text_piece(Piece::Kind::issuer, fonts_.bold, issuer->name, issuer->contact);
        piece.below = gap_pt;
        return {piece};
    }
    if (const auto* title = std::get_if<Title>(&block)) {
        return {text_piece(Piece::Kind::title, fonts_.title, title->text, title->below)};
    }
    if (const auto* heading = std::get_if<Heading>(&block)) {
        return {heading_piece(heading->text)};
    }
    if (const auto* paragraph = std::get_if<Paragraph>(&block)) {
        return {text_piece(Piece::Kind::paragraph, fonts_.body, paragraph->text, {})};
    }
    if (const auto* caution = std::get_if<Caution>(&block)) {
        return {caution_piece(caution->text)};
    }
    if (const auto* together = std::get_if<Together>(&block)) {
        return pieces_of(*together);
    }
    if (const auto* blank = std::get_if<Blank>(&block)) {
        return {{.kind = Piece::Kind::blank,
                 .height = text_height(fonts_.body, width - blank->line_pt, blank->label) + 1.6 * gap_pt,
                 .texts = {blank->label},
                 .line_pt = blank->line_pt}};
    }
    if (const auto* figure = std::get_if<Figure>(&block)) {
        return {{.kind = Piece::Kind::figure, .height = figure->height_pt / zoom_, .below = gap_pt, .figure = figure}};
    }
    if (std::holds_alternative<NewPage>(block)) {
        return {{.kind = Piece::Kind::new_page}};
    }
    return pieces_of(std::get<Table>(block));
}

PageLayout::Piece PageLayout::heading_piece(const QString& text) const
{
    return {.kind = Piece::Kind::heading,
            .height = text_height(fonts_.heading, page_.width(), text) + 2.5 * gap_pt,
            .company = lines(6), // a table's group and head may stand under it
            .texts = {text}};
}

PageLayout::Piece PageLayout::caution_piece(const QString& text) const
{
    return {.kind = Piece::Kind::caution,
            .height = text_height(fonts_.body, page_.width() - 4 * gap_pt, text) + 1.1 * gap_pt,
            .texts = {text}};
}

std::vector<PageLayout::Piece> PageLayout::pieces_of(const Together& together) const
{
    std::vector<Piece> pieces{heading_piece(together.heading)};
    double company = 0.0;
    for (const Caution& caution : together.cautions) {
        pieces.push_back(caution_piece(caution.text));
        company += pieces.back().height;
    }
    pieces.front().company = company;
    return pieces;
}

std::vector<PageLayout::Piece> PageLayout::pieces_of(const Table& table) const
{
    std::vector<Piece> pieces;
    if (has_head(table)) {
        pieces.push_back(head_piece(table));
        pieces.front().company = lines(3);
    }
    for (const Row& row : table.rows) {
        pieces.push_back(row_piece(table, row));
        pieces.back().company = row.group ? lines(3) : 0.0;
    }
    // The last rows go over to the next page together, so that none stands there alone.
    double company = 0.0;
    for (std::size_t i = 0; i < 2 && pieces.size() > 3; ++i) {
        company += pieces[pieces.size() - 1 - i].height;
        Piece& above = pieces[pieces.size() - 2 - i];
        above.company = std::max(above.company, company);
    }
    if (!pieces.empty()) {
        pieces.back().below = gap_pt;
    }
    return pieces;
}

double PageLayout::lines(int count) const
{
    return count * (QFontMetricsF(fonts_.body).height() + row_pad_pt);
}

void PageLayout::place(std::vector<Piece> pieces)
{
    for (Piece& piece : pieces) {
        if (piece.kind == Piece::Kind::new_page) {
            if (!pages_.back().empty()) {
                pages_.emplace_back();
                y_ = page_.top();
            }
            continue;
        }
        if (y_ + piece.height + piece.company > page_.bottom() && !pages_.back().empty()) {
            pages_.emplace_back();
            y_ = page_.top();
            if (piece.kind == Piece::Kind::row && has_head(*piece.table)) { // the table goes on: its head stands again
                Piece head = head_piece(*piece.table);
                head.top = y_;
                y_ += head.height;
                pages_.back().push_back(std::move(head));
            }
        }
        piece.top = y_;
        y_ += piece.height + piece.below;
        pages_.back().push_back(std::move(piece));
    }
}

} // namespace loam::sheets
