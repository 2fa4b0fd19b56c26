#include "app/desk/views/table_bar.hpp"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QToolButton>
#include <QTreeWidget>
#include <utility>

namespace loam::desk {

TableBar::TableBar(QTreeWidget& table, const QString& stem, QWidget* parent)
    : QWidget(parent), sum_(new QLabel(this)), copy_(new QAction(tr("Co&py as table"), this)),
      export_(new QAction(tr("E&xport CSV…"), this))
{
    sum_->setObjectName(stem + QStringLiteral("Sum"));
    sum_->setTextFormat(Qt::PlainText);
    sum_->setWordWrap(true);
    copy_->setObjectName(stem + QStringLiteral("Copy"));
    copy_->setToolTip(tr("Copies the whole table, for a text or a spreadsheet"));
    export_->setObjectName(stem + QStringLiteral("Export"));
    export_->setToolTip(tr("Saves the whole table as a file for spreadsheets"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(6, 3, 6, 3);
    row->addWidget(sum_, 1);
    for (QAction* action : {copy_, export_}) {
        action->setEnabled(false);
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        button->setObjectName(action->objectName() + QStringLiteral("Button"));
        button->setFocusPolicy(Qt::TabFocus);
        row->addWidget(button);
        setTabOrder(button, &table); // after it, as on the screen
        table.addAction(action);
    }
    table.setContextMenuPolicy(Qt::ActionsContextMenu);
    connect(copy_, &QAction::triggered, this, &TableBar::copy);
    connect(export_, &QAction::triggered, this, &TableBar::exportWanted);
}

void TableBar::say(const QString& sum)
{
    sum_->setText(sum);
}

void TableBar::show_table(const QString& sum, report::PastedTable table)
{
    say(sum);
    table_ = std::move(table);
    copy_->setEnabled(!table_.rows.empty());
    export_->setEnabled(!table_.rows.empty());
}

void TableBar::copy()
{
    auto* both = new QMimeData; // the clipboard owns it
    both->setHtml(report::pasted_html(table_));
    both->setText(report::pasted_lines(table_));
    QGuiApplication::clipboard()->setMimeData(both);
}

} // namespace loam::desk
