// Cells of the table of prices that are chosen from a list instead of typed.
#pragma once

#include <QStyledItemDelegate>
#include <vector>

namespace loam::desk {

struct Choice {
    QString code;
    QString text;
};

class ChoiceDelegate : public QStyledItemDelegate {
public:
    ChoiceDelegate(std::vector<Choice> choices, QObject* parent);

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

private:
    std::vector<Choice> choices_;
};

} // namespace loam::desk
