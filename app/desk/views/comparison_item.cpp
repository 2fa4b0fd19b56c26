#include "app/desk/views/comparison_item.hpp"

#include <QGuiApplication>
#include <QPalette>

#include "app/desk/views/explanation.hpp"
#include "app/words/capitals.hpp"

namespace loam::desk {

namespace {

constexpr int short_role = Qt::UserRole + 3;
constexpr int full_role = Qt::UserRole + 4;

QString behind(const QString& figure, const QString& verdict)
{
    return figure.isEmpty() || verdict.isEmpty() ? figure + verdict : figure + QLatin1Char(' ') + verdict;
}

QString told(const report::ComparedCell& cell)
{
    return behind(cell.likely.isEmpty() ? cell.text : cell.likely, cell.in_full);
}

Explanation explain(const report::ComparisonRow& row, const QString& heading)
{
    Explanation why;
    why.title = words::capitalised(report::with_heading(heading, row.name)) + QStringLiteral(": ") + row.change;
    why.judgement = row.sides[1].judgement;
    why.how =
        row.note + (row.note.isEmpty() ? QString() : QStringLiteral(" ")) +
        QObject::tr(
            "Each plan is worked out by itself, with the same guidance and prices. The change is that of the likely "
            "values. What is not sure of the one plan is mostly not sure of the other either, so a change is mostly "
            "surer than the ranges beside it.");
    why.inputs = QObject::tr("Other plan: %1").arg(told(row.sides[0])) + QLatin1Char('\n') +
                 QObject::tr("This plan: %1").arg(told(row.sides[1]));
    return why;
}

} // namespace

QTreeWidgetItem* comparison_item(const report::ComparisonRow& row, const QString& heading,
                                 const drawing::VerdictIcons& icons)
{
    auto* item = new QTreeWidgetItem({words::capitalised(row.name)});
    if (row.heading) {
        return item;
    }
    for (const int column : {other_column, own_column}) {
        const report::ComparedCell& cell = row.sides[column - other_column];
        item->setData(column, short_role, report::cell_text(cell));
        item->setData(column, full_role, behind(cell.text, cell.in_full));
        item->setToolTip(column, told(cell));
        if (cell.judgement) {
            item->setIcon(column, icons[cell.judgement->verdict]);
        }
    }
    item->setText(change_column, row.change);
    item->setToolTip(change_column, row.change);
    if (!row.differs) {
        item->setForeground(change_column, QGuiApplication::palette().placeholderText());
    }
    item->setData(what_column, differs_role, row.differs);
    item->setData(what_column, explanation_role, QVariant::fromValue(explain(row, heading)));
    say_in_full(*item, false);
    return item;
}

void say_in_full(QTreeWidgetItem& item, bool in_full)
{
    for (const int column : {other_column, own_column}) {
        item.setText(column, item.data(column, in_full ? full_role : short_role).toString());
    }
}

} // namespace loam::desk
