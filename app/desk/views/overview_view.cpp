#include "app/desk/views/overview_view.hpp"

#include <QHeaderView>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/look/theme.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/drawing/verdict_mark.hpp"

namespace loam::desk {

namespace {

enum Column { name_column, verdict_column, floor_column, needed_column, watts_column, energy_column, cost_column };
constexpr int enclosure_role = explanation_role + 1;

} // namespace

OverviewView::OverviewView(QWidget* parent) : QTreeWidget(parent)
{
    setObjectName(QStringLiteral("overview"));
    setAccessibleName(tr("All enclosures"));
    setRootIsDecorated(false);
    setHeaderLabels({tr("Enclosure"), tr("Verdict"), tr("Floor"), tr("Needed"), tr("Connected"), tr("Energy a year"),
                     tr("Its cost")});
    set_table_manners(*this);
    connect(this, &QTreeWidget::itemActivated, this, [this](const QTreeWidgetItem* item) {
        if (const QString id = item->data(name_column, enclosure_role).toString(); !id.isEmpty()) {
            emit enclosureChosen(id);
        }
    });
}

void OverviewView::show_rows(const std::vector<report::OverviewRow>& rows, const words::Speaker& speaker)
{
    const int kept = indexOfTopLevelItem(currentItem());
    const drawing::VerdictIcons icons(is_dark(palette()));
    clear();
    for (const report::OverviewRow& row : rows) {
        auto* item = new QTreeWidgetItem(this, {row.name, row.verdict_words, row.floor, row.needed, row.connected,
                                                row.energy, row.electricity_cost});
        if (row.worst) { // what it is that falls short, beside the table
            item->setData(name_column, explanation_role, QVariant::fromValue(explanation_of(*row.worst, speaker)));
        }
        item->setIcon(verdict_column, icons[row.verdict]);
        item->setData(name_column, enclosure_role, QString::fromStdString(row.enclosure));
        for (const int column : {floor_column, needed_column, watts_column, energy_column, cost_column}) {
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        }
        item->setToolTip(energy_column, row.energy_range);
        if (row.enclosure.empty()) {
            QFont bold = font();
            bold.setBold(true);
            for (int column = 0; column < columnCount(); ++column) {
                item->setFont(column, bold);
            }
        }
    }
    if (kept >= 0 && kept < topLevelItemCount()) {
        setCurrentItem(topLevelItem(kept));
    }
}

} // namespace loam::desk
