#include "app/desk/help/terms_dialog.hpp"

#include <QDialogButtonBox>
#include <QLineEdit>
#include <QListWidget>
#include <QSplitter>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "app/desk/help/terms.hpp"

namespace loam::desk {

TermsDialog::TermsDialog(QWidget* parent)
    : QDialog(parent), line_(new QLineEdit(this)), list_(new QListWidget(this)), text_(new QTextBrowser(this))
{
    setObjectName(QStringLiteral("terms"));
    setWindowTitle(tr("What the words mean"));
    line_->setObjectName(QStringLiteral("termsLine"));
    line_->setPlaceholderText(tr("Find a word"));
    line_->setAccessibleName(tr("Find a word"));
    line_->setClearButtonEnabled(true);
    list_->setObjectName(QStringLiteral("termsList"));
    list_->setAccessibleName(tr("Words"));
    list_->setWordWrap(true);
    text_->setObjectName(QStringLiteral("termsText"));
    text_->setAccessibleName(tr("Meaning"));
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(list_);
    split->addWidget(text_);
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 3);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* column = new QVBoxLayout(this);
    column->addWidget(line_);
    column->addWidget(split, 1);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(line_, &QLineEdit::textChanged, this, &TermsDialog::filter);
    connect(list_, &QListWidget::currentItemChanged, this, &TermsDialog::show_chosen);
    for (const Term& term : terms()) {
        auto* item = new QListWidgetItem(term.word, list_);
        item->setData(Qt::UserRole, term.meaning);
    }
    list_->setCurrentRow(0);
    resize(680, 420);
}

void TermsDialog::filter(const QString& text)
{
    QListWidgetItem* first = nullptr;
    for (int i = 0; i < list_->count(); ++i) {
        QListWidgetItem* item = list_->item(i);
        const bool found = item->text().contains(text, Qt::CaseInsensitive) ||
                           item->data(Qt::UserRole).toString().contains(text, Qt::CaseInsensitive);
        item->setHidden(!found);
        first = first == nullptr && found ? item : first;
    }
    list_->setCurrentItem(first);
}

void TermsDialog::show_chosen()
{
    const QListWidgetItem* item = list_->currentItem();
    text_->setHtml(item == nullptr
                       ? tr("Nothing here uses that word.").toHtmlEscaped()
                       : QStringLiteral("<h3>%1</h3><p>%2</p>")
                             .arg(item->text().toHtmlEscaped(), item->data(Qt::UserRole).toString().toHtmlEscaped()));
}

} // namespace loam::desk
