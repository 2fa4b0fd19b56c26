#include "app/desk/prices/price_difference_dialog.hpp"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/session/csv_export.hpp"
#include "app/desk/views/table_bar.hpp"

namespace loam::desk {

namespace {

QString about(const QString& which, const catalog::PriceList& prices, const words::Formatter& format)
{
    return QStringLiteral("%1 %2, %3, %4, %5")
        .arg(which, QString::fromStdString(prices.title), format.iso_date(prices.date),
             QString::fromStdString(prices.place), QString::fromStdString(prices.currency));
}

void fill(QTreeWidget& table, const report::PastedTable& rows)
{
    QStringList heads;
    for (const report::PastedCell& head : rows.heads) {
        heads << head.text;
    }
    table.setHeaderLabels(heads);
    for (const auto& row : rows.rows) {
        auto* item = new QTreeWidgetItem(&table);
        for (int i = 0; i < static_cast<int>(row.size()); ++i) {
            item->setText(i, row[static_cast<std::size_t>(i)].text);
        }
    }
}

} // namespace

PriceDifferenceDialog::PriceDifferenceDialog(const catalog::PriceList& first, const catalog::PriceList& second,
                                             const words::Formatter& format, QWidget* parent)
    : QDialog(parent)
{
    setObjectName(QStringLiteral("priceDifference"));
    setWindowTitle(tr("Two price lists"));
    const catalog::PriceDifference difference = catalog::difference(first, second);
    const report::TwoPriceLists lists{first, second, difference};
    report::PastedTable rows = report::price_difference_table(lists, format);

    auto* sides =
        new QLabel(about(tr("First:"), first, format) + QLatin1Char('\n') + about(tr("Second:"), second, format), this);
    sides->setTextFormat(Qt::PlainText);
    sides->setWordWrap(true);
    auto* table = new QTreeWidget(this);
    table->setObjectName(QStringLiteral("differenceTable"));
    table->setAccessibleName(tr("What differs between the two price lists"));
    table->setRootIsDecorated(false);
    fill(*table, rows);
    set_table_manners(*table);
    table->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    table->header()->setSectionResizeMode(1, QHeaderView::Stretch);
    let_wrap(*table, 1);
    auto* bar = new TableBar(*table, QStringLiteral("difference"), this);
    const QString summary = rows.rows.empty()    ? tr("Nothing differs.")
                            : rows.notes.empty() ? tr("Rows that differ: %1.").arg(rows.rows.size())
                                                 : rows.notes.join(QLatin1Char(' '));
    const std::string csv = report::price_difference_csv(lists);
    bar->show_table(summary, std::move(rows));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* column = new QVBoxLayout(this);
    column->addWidget(sides);
    column->addWidget(bar);
    column->addWidget(table, 1);
    column->addWidget(buttons);
    connect(bar, &TableBar::exportWanted, this,
            [this, csv] { export_csv_asking(tr("Export the difference"), tr("price-difference"), csv, this); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    resize(860, 520);
}

} // namespace loam::desk
