#include "app/desk/views/shopping_view.hpp"

#include <QAction>
#include <QHeaderView>
#include <QScrollBar>
#include <QSet>
#include <QSignalBlocker>
#include <QTreeWidget>
#include <QTreeWidgetItemIterator>
#include <QVBoxLayout>
#include <optional>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/views/shopping_item.hpp"
#include "app/desk/views/table_bar.hpp"
#include "app/report/shopping_groups.hpp"
#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

namespace {

constexpr int line_role = Qt::UserRole + 2; // the line's place among those shown

QString sum_text(const std::vector<assess::ShoppingLine>& lines, const words::Speaker& speaker)
{
    std::int64_t to_buy = 0;
    std::optional<Money> sum; // of the lines as printed
    for (const assess::ShoppingLine& line : lines) {
        to_buy += line.amount_needed > 0.0 ? 1 : 0;
        if (line.line_total) {
            sum = sum ? *sum + line.line_total->typical : line.line_total->typical;
        }
    }
    const words::Formatter& formatter = speaker.formatter();
    const QString count = QObject::tr("To buy: %1 of %2 lines")
                              .arg(formatter.count(to_buy), formatter.count(static_cast<std::int64_t>(lines.size())));
    return (sum ? QObject::tr("%1, typically %2.").arg(count, formatter.money(*sum)) : count + QLatin1Char('.')) +
           QLatin1Char(' ') + QObject::tr("Tick what you have.");
}

void make_bold(QTreeWidgetItem& item, const QFont& plain)
{
    QFont bold = plain;
    bold.setBold(true);
    for (const int column : {item_column, total_column}) {
        item.setFont(column, bold);
    }
}

// Where there is one place only, its name would head everything and say nothing.
QTreeWidgetItem* place_item(QTreeWidget& table, const report::ShoppingPlace& place, const words::Speaker& speaker)
{
    auto* item = new QTreeWidgetItem(&table, {place.title});
    item->setFlags(item->flags() & ~Qt::ItemIsUserCheckable);
    make_bold(*item, table.font());
    if (place.total) {
        item->setText(total_column, speaker.formatter().money_bare(place.total->typical));
        item->setTextAlignment(total_column, Qt::AlignRight | Qt::AlignVCenter);
    }
    return item;
}

QSet<QString> folded_in(const QTreeWidget& table)
{
    QSet<QString> folded;
    for (int i = 0; i < table.topLevelItemCount(); ++i) {
        if (!table.topLevelItem(i)->isExpanded()) {
            folded << table.topLevelItem(i)->text(item_column);
        }
    }
    return folded;
}

} // namespace

ShoppingView::ShoppingView(QWidget* parent)
    : QWidget(parent), table_(new QTreeWidget(this)), bar_(new TableBar(*table_, QStringLiteral("shopping"), this)),
      leave_out_(new QAction(tr("&Leave it out of the order"), this))
{
    setObjectName(QStringLiteral("shoppingView"));
    table_->setObjectName(QStringLiteral("shopping"));
    table_->setAccessibleName(tr("Shopping list; the space bar ticks off what you have"));
    table_->setColumnCount(why_column + 1);
    set_table_manners(*table_);
    let_wrap(*table_, why_column);
    table_->header()->setSectionResizeMode(why_column, QHeaderView::Interactive); // it must not push the items away
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(bar_);
    column->addWidget(table_, 1);
    connect(table_, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* item) { ticked(*item); });
    connect(bar_, &TableBar::exportWanted, this, &ShoppingView::exportWanted);
    leave_out_->setObjectName(QStringLiteral("shoppingLeaveOut"));
    leave_out_->setShortcut(QKeySequence::Delete);
    leave_out_->setShortcutContext(Qt::WidgetShortcut);
    leave_out_->setEnabled(false);
    table_->addAction(leave_out_);
    connect(table_, &QTreeWidget::currentItemChanged, this,
            [this](const QTreeWidgetItem* item) { leave_out_->setEnabled(line_of(item) != nullptr); });
    connect(leave_out_, &QAction::triggered, this, [this] {
        if (const assess::ShoppingLine* line = line_of(table_->currentItem())) {
            emit leftOut(assess::ShoppingLine(*line));
        }
    });
}

void ShoppingView::resizeEvent(QResizeEvent* event)
{
    constexpr int roomy_px = 900;
    constexpr int narrow_px = 560; // in less, the names need the room; the "why?" pane tells the rest
    table_->setColumnHidden(why_column, width() < narrow_px);
    table_->setColumnHidden(left_column, width() < narrow_px);
    table_->header()->resizeSection(why_column, width() < roomy_px ? 148 : 300);
    QWidget::resizeEvent(event);
}

const assess::ShoppingLine* ShoppingView::line_of(const QTreeWidgetItem* item) const
{
    const QVariant place = item != nullptr ? item->data(item_column, line_role) : QVariant();
    return place.isValid() && place.toUInt() < lines_.size() ? &lines_[place.toUInt()] : nullptr;
}

void ShoppingView::ticked(const QTreeWidgetItem& item)
{
    if (const assess::ShoppingLine* line = line_of(&item)) {
        // A copy: what is shown may be filled anew before the one who hears it is done.
        emit haveIt(assess::ShoppingLine(*line), item.checkState(item_column) == Qt::Checked);
    }
}

void ShoppingView::show_order(const assess::Assessment& assessment, const plan::Plan& plan,
                              const words::Speaker& speaker)
{
    const QString currency = QString::fromStdString(assessment.costs.currency.code);
    table_->setHeaderLabels({tr("Have it? Item"), tr("Packs"), tr("Each, %1").arg(currency),
                             tr("Total, %1").arg(currency), tr("Left over"), tr("Needed because")});
    for (const int column : {packs_column, each_column, total_column, left_column}) {
        table_->headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    const int scrolled = table_->verticalScrollBar()->value();
    const assess::ShoppingLine* chosen = line_of(table_->currentItem());
    const auto kept = chosen != nullptr ? std::optional(*chosen) : std::nullopt;
    table_->setUpdatesEnabled(false);
    fill(assessment, plan, speaker);
    if (QTreeWidgetItem* again = kept ? item_like(*kept) : nullptr) {
        table_->setCurrentItem(again);
    }
    leave_out_->setEnabled(line_of(table_->currentItem()) != nullptr);
    table_->setUpdatesEnabled(true);
    table_->verticalScrollBar()->setValue(scrolled);
    bar_->show_table(sum_text(assessment.shopping, speaker), report::shopping_table(assessment, speaker));
}

// The same line, or the same thing in another pack: what is ticked off has none any more.
QTreeWidgetItem* ShoppingView::item_like(const assess::ShoppingLine& line) const
{
    QTreeWidgetItem* like = nullptr;
    for (QTreeWidgetItemIterator item(table_); *item != nullptr; ++item) {
        const assess::ShoppingLine* each = line_of(*item);
        if (each == nullptr || each->need != line.need || each->item != line.item || each->where != line.where) {
            continue;
        }
        if (each->pack == line.pack) {
            return *item;
        }
        like = like == nullptr ? *item : like;
    }
    return like;
}

void ShoppingView::fill(const assess::Assessment& assessment, const plan::Plan& plan, const words::Speaker& speaker)
{
    const QSignalBlocker filling(table_); // no tick of the user's
    const QSet<QString> folded = folded_in(*table_);
    table_->clear();
    lines_.clear();
    const std::vector<report::ShoppingPlace> places = report::shopping_places(assessment, speaker);
    for (const report::ShoppingPlace& place : places) {
        QTreeWidgetItem* top = places.size() > 1 ? place_item(*table_, place, speaker) : nullptr;
        for (const report::ShoppingGroup& group : place.groups) {
            auto* head = new QTreeWidgetItem({words::capitalised(words::category(group.category))});
            head->setFlags(head->flags() & ~Qt::ItemIsUserCheckable);
            top != nullptr ? top->addChild(head) : table_->addTopLevelItem(head);
            head->setFirstColumnSpanned(true);
            if (top == nullptr) {
                make_bold(*head, table_->font());
            } else {
                head->setForeground(item_column, palette().placeholderText());
            }
            for (const assess::ShoppingLine* line : group.lines) {
                QTreeWidgetItem* item = shopping_item(*line, plan, speaker);
                item->setData(item_column, line_role, static_cast<uint>(lines_.size()));
                head->addChild(item);
                lines_.push_back(*line);
            }
            head->setExpanded(!folded.contains(head->text(item_column)) || top != nullptr);
        }
        if (top != nullptr) {
            top->setExpanded(!folded.contains(place.title));
        }
    }
}

} // namespace loam::desk
