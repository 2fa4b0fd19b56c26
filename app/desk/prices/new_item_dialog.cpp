#include "app/desk/prices/new_item_dialog.hpp"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <utility>

#include "app/desk/prices/price_spans.hpp"

namespace loam::desk {

NewItemDialog::NewItemDialog(const std::vector<Choice>& needs, words::Formatter format, QWidget* parent)
    : QDialog(parent), format_(std::move(format)), need_(new QComboBox(this)), name_(new QLineEdit(this)),
      pack_(new QLineEdit(tr("one"), this)), amount_(new QLineEdit(QStringLiteral("1"), this)),
      price_(new QLineEdit(this)), missing_(new QLabel(this))
{
    setObjectName(QStringLiteral("newItemDialog"));
    setWindowTitle(tr("New item"));
    need_->setObjectName(QStringLiteral("newItemNeed"));
    for (const Choice& need : needs) {
        need_->addItem(need.text, need.code);
    }
    name_->setObjectName(QStringLiteral("newItemName"));
    pack_->setObjectName(QStringLiteral("newItemPack"));
    amount_->setObjectName(QStringLiteral("newItemAmount"));
    price_->setObjectName(QStringLiteral("newItemPrice"));
    missing_->setTextFormat(Qt::PlainText);
    missing_->setWordWrap(true);
    missing_->setMinimumHeight(2 * fontMetrics().lineSpacing()); // the longer of its texts takes two lines
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    add_ = buttons->addButton(tr("&Add it"), QDialogButtonBox::AcceptRole);
    add_->setObjectName(QStringLiteral("newItemAdd"));
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Bought for"), need_);
    form->addRow(tr("&Name, without a brand"), name_);
    form->addRow(tr("&How it is sold"), pack_);
    form->addRow(tr("A pack h&olds"), amount_);
    form->addRow(tr("A pack &costs"), price_);
    form->addRow(missing_);
    form->addRow(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 64);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (QLineEdit* line : {name_, pack_, amount_, price_}) {
        connect(line, &QLineEdit::textChanged, this, &NewItemDialog::refresh);
    }
    refresh();
}

std::optional<NewItem> NewItemDialog::item() const
{
    const auto amount = read_range(amount_->text(), format_);
    const auto price = format_.parse_price(price_->text());
    const std::string name = name_->text().trimmed().toStdString();
    const std::string pack = pack_->text().trimmed().toStdString();
    if (name.empty() || pack.empty() || !amount || amount->low <= 0.0 || !price) {
        return std::nullopt;
    }
    return NewItem{need_->currentData().toString().toStdString(), name, pack, *amount, *price};
}

void NewItemDialog::refresh()
{
    const bool ready = item().has_value();
    missing_->setText(
        ready ? tr("Unit and useful life are taken from an item for the same purpose; the table shows them.")
              : tr("It needs a name, a pack with an amount above zero, and a price."));
    add_->setEnabled(ready);
}

} // namespace loam::desk
