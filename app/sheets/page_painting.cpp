// How pieces look; where they lie is page_layout.cpp's.
#include <QFontMetricsF>
#include <QObject>

#include "app/sheets/page_layout.hpp"
#include "app/sheets/page_measures.hpp"

namespace loam::sheets {

void PageLayout::paint_row(QPainter& painter, const Piece& piece) const
{
    const bool head = piece.kind == Piece::Kind::head;
    if (!head && piece.row->group) {
        painter.setFont(font_of(*piece.table, true));
        painter.drawText(QRectF(page_.left(), piece.top + group_space_pt, page_.width(), piece.height), wrap,
                         piece.row->cells.value(0));
        return;
    }
    const std::vector<QRectF> cells = cells_of(*piece.table, piece.top + row_pad_pt, piece.height - 2 * row_pad_pt);
    painter.setFont(font_of(*piece.table, head || piece.row->total));
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const Column& column = piece.table->columns[i];
        const QString text = head ? column.head : piece.row->cells.value(static_cast<qsizetype>(i));
        const Qt::Alignment side = column.right ? Qt::AlignRight : Qt::AlignLeft;
        painter.drawText(cells[i], static_cast<int>(side | Qt::AlignTop) | Qt::TextWordWrap, text);
    }
    paint_lines(painter, piece, cells);
    painter.setPen(Qt::black);
}

void PageLayout::paint_lines(QPainter& painter, const Piece& piece, const std::vector<QRectF>& cells) const
{
    const bool head = piece.kind == Piece::Kind::head;
    const bool grid = piece.table->grid;
    painter.setPen(QPen(Qt::black, head ? 1.0 : 0.3));
    const double bottom = piece.top + piece.height;
    const double line_y = !head && !grid && piece.row->total ? piece.top : bottom;
    painter.drawLine(QPointF(page_.left(), line_y), QPointF(page_.right(), line_y));
    if (grid) {
        for (std::size_t i = 1; i < cells.size(); ++i) {
            const double x = cells[i].left() - cell_gap_pt / 2.0;
            painter.drawLine(QPointF(x, piece.top), QPointF(x, bottom));
        }
    }
    if (!head && piece.row->tick) {
        painter.setPen(QPen(Qt::black, 1.0));
        painter.drawRect(QRectF(page_.left() + 1.0, piece.top + row_pad_pt + 1.0, tick_pt, tick_pt));
    }
}

void PageLayout::paint_texts(QPainter& painter, const QFont& font, const QRectF& box, const Piece& piece) const
{
    painter.setFont(font);
    painter.drawText(box, wrap, piece.texts[0]);
    if (piece.texts.value(1).isEmpty()) {
        return;
    }
    const bool issuer = piece.kind == Piece::Kind::issuer;
    const double offset = text_height(font, box.width(), piece.texts[0]) + (issuer ? 0.0 : gap_pt);
    painter.setFont(issuer ? fonts_.small : fonts_.body);
    painter.drawText(box.adjusted(0, offset, 0, 0), wrap, piece.texts[1]);
}

void PageLayout::paint_blank(QPainter& painter, const QRectF& box, const Piece& piece) const
{
    painter.setFont(fonts_.body);
    painter.drawText(box.adjusted(0, 0.6 * gap_pt, -piece.line_pt, 0), wrap, piece.texts[0]);
    painter.setPen(QPen(Qt::black, 0.6));
    const double y = box.top() + 0.6 * gap_pt + QFontMetricsF(fonts_.body).height();
    painter.drawLine(QPointF(box.right() - piece.line_pt + 8.0, y), QPointF(box.right(), y));
    painter.setPen(Qt::black);
}

void PageLayout::paint_piece(QPainter& painter, const Piece& piece) const
{
    const QRectF box(page_.left(), piece.top, page_.width(), piece.height);
    switch (piece.kind) {
    case Piece::Kind::issuer:
        paint_texts(painter, fonts_.bold, box, piece);
        painter.drawLine(box.bottomLeft(), box.bottomRight());
        return;
    case Piece::Kind::title:
        paint_texts(painter, fonts_.title, box, piece);
        return;
    case Piece::Kind::heading:
        painter.setFont(fonts_.heading);
        painter.drawText(box.adjusted(0, 1.7 * gap_pt, 0, 0), wrap, piece.texts[0]);
        return;
    case Piece::Kind::paragraph:
        paint_texts(painter, fonts_.body, box, piece);
        return;
    case Piece::Kind::caution:
        painter.setFont(fonts_.body);
        painter.fillRect(QRectF(box.left(), box.top() + 1, 3.5, box.height() - 0.7 * gap_pt), Qt::black);
        painter.drawText(box.adjusted(2.5 * gap_pt, 0, -gap_pt, 0), wrap, piece.texts[0]);
        return;
    case Piece::Kind::blank:
        paint_blank(painter, box, piece);
        return;
    case Piece::Kind::figure:
        painter.save();
        painter.scale(1.0 / zoom_, 1.0 / zoom_);
        piece.figure->paint(painter, QRectF(box.topLeft() * zoom_, box.size() * zoom_));
        painter.restore();
        return;
    case Piece::Kind::head:
    case Piece::Kind::row:
        paint_row(painter, piece);
        return;
    case Piece::Kind::new_page:
        return;
    }
}

void PageLayout::paint(QPainter& painter, int page) const
{
    painter.save();
    painter.scale(zoom_, zoom_);
    painter.setPen(Qt::black);
    for (const Piece& piece : pages_.at(static_cast<std::size_t>(page))) {
        paint_piece(painter, piece);
    }
    const QRectF foot(page_.left(), page_.bottom() + 6.0, page_.width(), footer_pt - 6.0);
    painter.setPen(QPen(Qt::black, 0.5));
    painter.drawLine(foot.topLeft(), foot.topRight());
    painter.setFont(fonts_.small);
    painter.setPen(Qt::black);
    // Sheets come apart: each page says of which it is.
    const QString number =
        content_->name + QStringLiteral("\n") + QObject::tr("Page %1 of %2").arg(page + 1).arg(page_count());
    const double number_width =
        QFontMetricsF(fonts_.small).boundingRect(QRectF(0, 0, 1e5, 1e5), Qt::AlignLeft, number).width() + 14.0;
    painter.drawText(foot.adjusted(0, 3, -number_width, 0), Qt::AlignLeft | Qt::TextWordWrap, content_->footer);
    painter.drawText(foot.adjusted(0, 3, 0, 0), Qt::AlignRight, number);
    painter.restore();
}

} // namespace loam::sheets
