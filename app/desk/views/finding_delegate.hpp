// Paints one finding: mark, verdict word, sentence, remedy; or a group's heading.
#pragma once

#include <QStyledItemDelegate>

namespace loam::desk {

inline constexpr int remedy_role = Qt::UserRole + 2;
inline constexpr int heading_role = Qt::UserRole + 3; // true: a group's heading

class FindingDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace loam::desk
