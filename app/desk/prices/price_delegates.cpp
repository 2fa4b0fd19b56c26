#include "app/desk/prices/price_delegates.hpp"

#include <QComboBox>
#include <utility>

#include "app/desk/prices/price_table_model.hpp"

namespace loam::desk {

ChoiceDelegate::ChoiceDelegate(std::vector<Choice> choices, QObject* parent)
    : QStyledItemDelegate(parent), choices_(std::move(choices))
{
}

QWidget* ChoiceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                      const QModelIndex& /*index*/) const
{
    auto* box = new QComboBox(parent);
    for (const Choice& choice : choices_) {
        box->addItem(choice.text, choice.code);
    }
    return box;
}

void ChoiceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const
{
    auto* box = qobject_cast<QComboBox*>(editor);
    const QString code = index.data(PriceTableModel::code_role).toString();
    if (box->findData(code) < 0) {
        box->addItem(index.data().toString(), code); // of a list that knows more than we do
    }
    box->setCurrentIndex(box->findData(code));
}

void ChoiceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const
{
    model->setData(index, qobject_cast<QComboBox*>(editor)->currentData(), Qt::EditRole);
}

} // namespace loam::desk
