#include "app/desk/views/year_view.hpp"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "app/desk/look/table_manners.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/desk/views/year_strip.hpp"
#include "app/words/seasons.hpp"

namespace loam::desk {

namespace {

using words::Formatter;
using words::Quantity;

enum Column { month_column, on_column, off_column, light_column, sky_column, kwh_column, range_column, cost_column };

QString hours(const std::optional<double>& value, const Formatter& formatter)
{
    return value ? formatter.bare(*value, Quantity::hours) : QStringLiteral("–");
}

Explanation why(const assess::LightDay& day, const assess::EnclosureResult& enclosure, const Formatter& formatter)
{
    const Range& kwh = enclosure.power.month_kwh[static_cast<std::size_t>(day.month - 1)];
    Explanation why;
    why.title = YearView::tr("%1: %2").arg(formatter.locale().standaloneMonthName(day.month),
                                           formatter.range(kwh, Quantity::energy));
    why.how = words::how_months(enclosure.hemisphere_known);
    if (enclosure.light_with_the_sky) {
        why.how += QLatin1Char(' ') + YearView::tr("The lamps follow the day outside, held within what the sheet asks "
                                                   "for, about the middle of the times that are stated.");
    }
    if (day.sky_h) {
        why.inputs =
            YearView::tr("The day outside on the 16th: %1.\n").arg(formatter.value(*day.sky_h, Quantity::hours));
    }
    if (day.by_the_sky) {
        why.inputs += YearView::tr("With the sky, on the 16th: %1 of light, from %2 to %3.")
                          .arg(formatter.value(day.by_the_sky->hours, Quantity::hours),
                               QString::fromStdString(day.by_the_sky->on), QString::fromStdString(day.by_the_sky->off));
    }
    if (day.running_share < 1.0) {
        why.inputs += QLatin1Char('\n') +
                      YearView::tr("The animals rest in the cold: on the 16th %1 of the usual light and heat runs.")
                          .arg(formatter.value(day.running_share, Quantity::fraction));
    }
    why.inputs = why.inputs.trimmed();
    why.source = YearView::tr("Day length: Forsythe, Rykiel, Stahl, Wu & Schoolfield 1995. Lag of the cold behind the "
                              "sun: Trenberth 1983 (from memory). The cosine is our own.");
    return why;
}

QTreeWidgetItem* item_of(const assess::LightDay& day, const assess::EnclosureResult& enclosure,
                         const Formatter& formatter)
{
    const auto month = static_cast<std::size_t>(day.month - 1);
    const assess::PowerResult& power = enclosure.power;
    const auto cost = power.month_cost[month];
    const QString on = day.planned                ? QString::fromStdString(day.planned->on)
                       : day.running_share == 0.0 ? YearView::tr("rest")
                                                  : QStringLiteral("–");
    auto* item = new QTreeWidgetItem(
        {words::month_name(day.month, formatter), on,
         day.planned ? QString::fromStdString(day.planned->off) : QString(),
         day.planned ? formatter.bare(day.planned->hours, Quantity::hours) : QString(), hours(day.sky_h, formatter),
         formatter.bare(power.month_kwh[month].likely, Quantity::energy),
         formatter.span(power.month_kwh[month], Quantity::energy), cost ? formatter.money_bare(*cost) : QString()});
    for (int column = on_column; column <= cost_column; ++column) {
        item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    item->setData(month_column, explanation_role, QVariant::fromValue(why(day, enclosure, formatter)));
    return item;
}

} // namespace

struct YearView::Parts {
    YearStrip* strip = nullptr;
    QTreeWidget* table = nullptr;
};

YearView::YearView(QWidget* parent) : QWidget(parent), parts_(std::make_unique<Parts>())
{
    setObjectName(QStringLiteral("year"));
    parts_->strip = new YearStrip(this);
    parts_->table = new QTreeWidget(this);
    parts_->table->setObjectName(QStringLiteral("yearTable"));
    parts_->table->setAccessibleName(tr("Hours of light and kilowatt-hours by month"));
    parts_->table->setRootIsDecorated(false);
    parts_->table->setHeaderLabels(
        {tr("Month"), tr("On"), tr("Off"), tr("Light, h"), tr("Outside, h"), tr("kWh"), tr("Range"), tr("Costs")});
    set_table_manners(*parts_->table);
    for (int column = on_column; column <= cost_column; ++column) {
        parts_->table->headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    parts_->table->installEventFilter(this);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->addWidget(parts_->strip);
    split->addWidget(parts_->table);
    split->setChildrenCollapsible(false);
    split->setSizes({330, 330});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(split, 1);
    connect(parts_->strip, &YearStrip::monthChosen, this,
            [this](int month) { parts_->table->setCurrentItem(parts_->table->topLevelItem(month - 1)); });
    connect(parts_->table, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        const int row = parts_->table->indexOfTopLevelItem(item);
        if (row >= 0) {
            parts_->strip->choose_month(row + 1);
        }
    });
}

YearView::~YearView() = default;

QTreeWidget* YearView::table() const
{
    return parts_->table;
}

bool YearView::eventFilter(QObject* watched, QEvent* event)
{
    constexpr int roomy_px = 440; // in less, the chart shows both, and the "why?" pane tells them
    if (watched == parts_->table && event->type() == QEvent::Resize) {
        const bool narrow = parts_->table->width() < roomy_px;
        parts_->table->setColumnHidden(sky_column, narrow);
        parts_->table->setColumnHidden(range_column, narrow);
    }
    return QWidget::eventFilter(watched, event);
}

void YearView::clear()
{
    parts_->table->clear();
    parts_->strip->show_year({}, words::Formatter());
}

void YearView::show_year(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const Formatter& formatter = speaker.formatter();
    const int month = parts_->strip->month();
    parts_->strip->show_year(enclosure, formatter);
    parts_->table->setUpdatesEnabled(false);
    {
        const QSignalBlocker quiet(parts_->table); // while it is filled no month is chosen
        parts_->table->clear();
        for (const assess::LightDay& day : enclosure.light_year) {
            if (day.day != 1) { // the middle of each month
                parts_->table->addTopLevelItem(item_of(day, enclosure, formatter));
            }
        }
    }
    parts_->table->setUpdatesEnabled(true);
    parts_->table->setCurrentItem(parts_->table->topLevelItem(month - 1));
    QStringList told;
    for (int i = 0; i < parts_->table->topLevelItemCount(); ++i) {
        const QTreeWidgetItem* item = parts_->table->topLevelItem(i);
        told << tr("%1: %2 h, %3 kWh").arg(item->text(month_column), item->text(light_column), item->text(kwh_column));
    }
    parts_->strip->setAccessibleDescription(told.join(QStringLiteral("; ")));
}

} // namespace loam::desk
