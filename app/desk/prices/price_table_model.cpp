#include "app/desk/prices/price_table_model.hpp"

#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <algorithm>

#include "app/desk/look/theme.hpp"
#include "app/drawing/verdict_mark.hpp"
#include "app/words/problems.hpp"

namespace loam::desk {

namespace {

PriceColumn column_of(const QModelIndex& index)
{
    return static_cast<PriceColumn>(index.column());
}

} // namespace

PriceTableModel::PriceTableModel(PriceDocument& document, SharedCatalog words, words::UnitSystem units, QObject* parent)
    : QAbstractTableModel(parent), document_(document), words_(std::move(words)),
      speaker_(words::Formatter(units, QLocale()), no_plan_, *words_),
      mark_(drawing::verdict_icon(Verdict::falls_short, is_dark(QGuiApplication::palette())))
{
    refresh();
    connect(&document_, &PriceDocument::changed, this, &PriceTableModel::refresh);
}

void PriceTableModel::refresh()
{
    std::vector<PackPlace> places = pack_places(document_.prices());
    const bool other_rows = places != places_;
    if (other_rows) {
        beginResetModel();
        places_ = std::move(places);
    }
    problems_.clear();
    for (const json::Problem& problem : document_.problems()) {
        if (const auto cell = cell_of_problem(problem.where)) {
            problems_.emplace(std::pair(row_of(cell->place), static_cast<int>(cell->column)),
                              words::problem_sentence(problem));
        }
    }
    if (other_rows) {
        endResetModel();
    } else if (!places_.empty()) {
        emit dataChanged(index(0, 0), index(static_cast<int>(places_.size()) - 1, price_column_count - 1));
    }
}

int PriceTableModel::row_of(const PackPlace& place) const
{
    const auto at = std::find(places_.begin(), places_.end(), place);
    return at == places_.end() ? -1 : static_cast<int>(at - places_.begin());
}

int PriceTableModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(places_.size());
}

int PriceTableModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : price_column_count;
}

QVariant PriceTableModel::order_of(const PackPlace& place, PriceColumn column) const
{
    const catalog::Item& item = document_.prices().items[place.item];
    const catalog::Pack& pack = item.packs[place.pack];
    switch (column) {
    case PriceColumn::fits:
        return item.fits_from.value_or(0.0);
    case PriceColumn::amount:
        return pack.amount.likely;
    case PriceColumn::low:
        return pack.low.value();
    case PriceColumn::typical:
        return pack.typical.value();
    case PriceColumn::high:
        return pack.high.value();
    case PriceColumn::mass:
        return pack.mass_kg.value_or(0.0);
    case PriceColumn::months:
        return item.life_months ? item.life_months->likely : 0.0;
    case PriceColumn::hours:
        return item.life_hours ? item.life_hours->likely : 0.0;
    default:
        return price_cell(document_.prices(), place, column, speaker_).toLower();
    }
}

QVariant PriceTableModel::data(const QModelIndex& index, int role) const
{
    const PackPlace& at = place(index.row());
    const PriceColumn column = column_of(index);
    const catalog::Item& item = document_.prices().items[at.item];
    const auto problem = problems_.find({index.row(), index.column()});
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
        if (column == PriceColumn::stock) {
            return role == Qt::DisplayRole ? QVariant() : QVariant(item.packs[at.pack].in_stock);
        }
        return price_cell(document_.prices(), at, column, speaker_);
    case Qt::CheckStateRole:
        if (column == PriceColumn::stock) {
            return item.packs[at.pack].in_stock ? Qt::Checked : Qt::Unchecked;
        }
        return {};
    case Qt::TextAlignmentRole:
        return int((is_figure(column) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case Qt::DecorationRole:
        return problem != problems_.end() ? QVariant(mark_) : QVariant();
    case Qt::ToolTipRole:
        return problem != problems_.end() ? problem->second : price_column_help(column);
    case Qt::AccessibleTextRole: {
        const QString text = price_cell(document_.prices(), at, column, speaker_);
        return problem != problems_.end() ? QStringLiteral("%1: %2").arg(text, problem->second) : text;
    }
    case code_role:
        return QString::fromStdString(column == PriceColumn::need ? item.serves : item.unit);
    case order_role:
        return order_of(at, column);
    default:
        return {};
    }
}

QVariant PriceTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal) {
        return {};
    }
    const auto column = static_cast<PriceColumn>(section);
    switch (role) {
    case Qt::DisplayRole:
        return price_column_head(column);
    case Qt::ToolTipRole:
        return price_column_help(column);
    case Qt::TextAlignmentRole:
        return int((is_figure(column) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

Qt::ItemFlags PriceTableModel::flags(const QModelIndex& index) const
{
    const Qt::ItemFlags can = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return can | (column_of(index) == PriceColumn::stock ? Qt::ItemIsUserCheckable : Qt::ItemIsEditable);
}

bool PriceTableModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const PriceColumn column = column_of(index);
    const bool tick = column == PriceColumn::stock;
    if (role != (tick ? Qt::CheckStateRole : Qt::EditRole)) {
        return false;
    }
    const QString typed = !tick                          ? value.toString()
                          : value.toInt() == Qt::Checked ? QStringLiteral("true")
                                                         : QStringLiteral("false");
    catalog::PriceList changed = document_.prices();
    const QString why = take_price_cell(changed, place(index.row()), column, typed, speaker_.formatter());
    emit refused(why);
    if (!why.isEmpty()) {
        return false;
    }
    document_.edit(tr("Change “%1”").arg(price_column_head(column)), QString(), std::move(changed));
    return true;
}

} // namespace loam::desk
