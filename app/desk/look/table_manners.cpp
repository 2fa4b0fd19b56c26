#include "app/desk/look/table_manners.hpp"

#include <QHeaderView>
#include <QStyledItemDelegate>
#include <QTimer>
#include <QTreeWidget>

namespace loam::desk {

namespace {

// Long names go on in a second line: a name cut short tells less than a taller row.
class NameDelegate : public QStyledItemDelegate {
public:
    explicit NameDelegate(QTreeWidget& table) : QStyledItemDelegate(&table), table_(table) {}

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        QSize size = QStyledItemDelegate::sizeHint(option, index);
        if (!table_.isFirstColumnSpanned(index.row(), index.parent())) {
            constexpr int margins = 7; // what the style leaves free around a text
            const int width = table_.columnWidth(index.column()) -
                              (index.column() == 0 ? depth(index) * table_.indentation() : 0) - marks(option, index) -
                              margins;
            const QVariant font = index.data(Qt::FontRole);
            const QFontMetrics metrics = font.isValid() ? QFontMetrics(font.value<QFont>()) : option.fontMetrics;
            const int text =
                metrics.boundingRect(0, 0, width, 10000, Qt::TextWordWrap, index.data().toString()).height();
            size.setHeight(text + 4);
        }
        return size;
    }

private:
    static int depth(const QModelIndex& index) { return index.isValid() ? 1 + depth(index.parent()) : 0; }

    // What a box to tick and a mark take before the text.
    static int marks(const QStyleOptionViewItem& option, const QModelIndex& index)
    {
        if (option.widget == nullptr) {
            return 0;
        }
        const QStyle* style = option.widget->style();
        const int apart = 2 * (style->pixelMetric(QStyle::PM_FocusFrameHMargin, &option, option.widget) + 1);
        const int box = index.data(Qt::CheckStateRole).isValid()
                            ? style->pixelMetric(QStyle::PM_IndicatorWidth, &option, option.widget) + apart
                            : 0;
        const int mark = index.data(Qt::DecorationRole).isValid() ? option.decorationSize.width() + apart : 0;
        return box + mark;
    }

    QTreeWidget& table_;
};

} // namespace

void let_wrap(QTreeWidget& table, int column)
{
    table.setWordWrap(true);
    table.setItemDelegateForColumn(column, new NameDelegate(table));
    QObject::connect(table.header(), &QHeaderView::sectionResized, &table, [&table, column](int section) {
        if (section == column) {
            QTimer::singleShot(0, &table, [&table] { table.doItemsLayout(); });
        }
    });
}

void set_table_manners(QTreeWidget& table)
{
    table.setFrameShape(QFrame::NoFrame);
    table.setAlternatingRowColors(true);
    let_wrap(table, 0);
    table.setIndentation(12);
    table.setStyleSheet(QStringLiteral("QTreeView::item { padding: 2px 0px; }"));
    table.header()->setStretchLastSection(false);
    table.header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.header()->setSectionResizeMode(0, QHeaderView::Stretch);
    table.header()->setMinimumSectionSize(40);
}

} // namespace loam::desk
