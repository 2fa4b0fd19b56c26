#include "app/desk/views/finding_delegate.hpp"

#include <QApplication>
#include <QListView>
#include <QPainter>

#include "app/desk/look/theme.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/drawing/verdict_mark.hpp"

namespace loam::desk {

namespace {

constexpr int margin = 6;
constexpr int mark_size = 16;
constexpr int text_left = margin + mark_size + 8;
constexpr int wrap = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;

int text_width(const QStyleOptionViewItem& option)
{
    const auto* view = qobject_cast<const QListView*>(option.widget);
    const int width = view != nullptr ? view->viewport()->width() : option.rect.width();
    return std::max(80, width - text_left - margin);
}

QRect measured(const QStyleOptionViewItem& option, const QFont& font, const QString& text)
{
    if (text.isEmpty()) {
        return {};
    }
    return QFontMetrics(font).boundingRect(QRect(0, 0, text_width(option), 10000), wrap, text);
}

} // namespace

void FindingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    const QString text = row.text;
    row.text.clear();
    row.icon = QIcon();
    const QStyle* style = row.widget != nullptr ? row.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &row, painter, row.widget);

    painter->save();
    const bool selected = (option.state & QStyle::State_Selected) != 0;
    const QPalette::ColorRole ink = selected ? QPalette::HighlightedText : QPalette::Text;
    const QColor ink_colour = option.palette.color(ink);
    painter->setPen(ink_colour);
    if (index.data(heading_role).toBool()) {
        QFont bold = option.font;
        bold.setBold(true);
        painter->setFont(bold);
        painter->drawText(option.rect.adjusted(margin, 0, -margin, -2), Qt::AlignLeft | Qt::AlignBottom, text);
        painter->restore();
        return;
    }
    const auto explanation = index.data(explanation_role).value<Explanation>();
    const QRect mark =
        QStyle::visualRect(option.direction, option.rect,
                           QRect(option.rect.left() + margin, option.rect.top() + margin, mark_size, mark_size));
    if (explanation.judgement) {
        const bool dark_ground = selected ? !is_dark(option.palette) : is_dark(option.palette);
        drawing::paint_verdict_mark(*painter, mark, explanation.judgement->verdict, dark_ground);
    }
    const QRect sentence = measured(option, option.font, text);
    QRect at(option.rect.left() + text_left, option.rect.top() + margin, text_width(option), sentence.height());
    painter->setFont(option.font);
    painter->drawText(QStyle::visualRect(option.direction, option.rect, at), wrap, text);
    const QString remedy = index.data(remedy_role).toString();
    if (!remedy.isEmpty()) {
        at = QRect(at.left(), at.bottom() + 3, at.width(), measured(option, option.font, remedy).height());
        painter->setPen(selected ? ink_colour : option.palette.color(QPalette::PlaceholderText));
        painter->drawText(QStyle::visualRect(option.direction, option.rect, at), wrap, remedy);
    }
    painter->restore();
}

QSize FindingDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    if (index.data(heading_role).toBool()) {
        return {text_width(option), QFontMetrics(option.font).height() + 12};
    }
    const QString remedy = index.data(remedy_role).toString();
    const int remedy_height = remedy.isEmpty() ? 0 : measured(option, option.font, remedy).height() + 3;
    return {text_width(option),
            std::max(mark_size, measured(option, option.font, row.text).height() + remedy_height) + 2 * margin};
}

} // namespace loam::desk
