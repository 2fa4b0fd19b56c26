#include "app/report/lines.hpp"
#include "app/report/said.hpp"
#include "app/report/text_parts.hpp"
#include "app/words/seasons.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/iso_day.hpp"

namespace loam::report {

namespace {

using words::Formatter;
using words::Quantity;

constexpr double days_a_month = 365.0 / 12.0;

QString fact(const QString& name, const QString& text)
{
    return wrapped(QStringLiteral("  ") + name.leftJustified(14), text);
}

Range in_a_month(const Range& a_day)
{
    return {days_a_month * a_day.low, days_a_month * a_day.likely, days_a_month * a_day.high};
}

QString hours_text(const std::optional<double>& hours, const Formatter& formatter)
{
    return hours ? formatter.bare(*hours, Quantity::hours) : QStringLiteral("–");
}

QString month_row(const assess::LightDay& day, const assess::PowerResult& power, const Formatter& formatter)
{
    const auto month = static_cast<std::size_t>(day.month - 1);
    const bool off = day.running_share == 0.0;
    return row(2, {{words::month_name(day.month, formatter), 5},
                   {hours_text(day.sky_h, formatter), 8, true},
                   {day.planned ? QString::fromStdString(day.planned->on)
                    : off       ? Said::tr("rest")
                                : QString(),
                    6, true},
                   {day.planned ? QString::fromStdString(day.planned->off) : QString(), 6, true},
                   {day.planned ? formatter.bare(day.planned->hours, Quantity::hours) : QString(), 6, true},
                   {formatter.bare(power.month_kwh[month].likely, Quantity::energy), 7, true},
                   {formatter.span(power.month_kwh[month], Quantity::energy), 18, true},
                   {power.month_cost[month] ? formatter.money_bare(*power.month_cost[month]) : QString(), 8, true}});
}

QString weigh_in_table(const assess::CoolSeasonResult& rest, const Formatter& formatter)
{
    QString text = row(
        2, {{Said::tr("weigh on"), 14}, {Said::tr("ask a vet below"), 16, true}, {Said::tr("end it below"), 14, true}});
    for (const season::WeighIn& one : rest.weigh_ins) {
        text += row(2, {{formatter.iso_date(assess::iso_of(one.on)), 14},
                        {formatter.value(one.ask_below_kg, Quantity::small_mass), 16, true},
                        {formatter.value(one.stop_below_kg, Quantity::small_mass), 14, true}});
    }
    return text;
}

QString week_table(const assess::CoolSeasonResult& rest, const Formatter& formatter)
{
    QString text = row(2, {{Said::tr("week of"), 14}, {Said::tr("stage"), 13}, {Said::tr("by its end"), 14, true}});
    for (const season::Week& week : rest.weeks) {
        const Range band{week.by_its_end_c.low, week.by_its_end_c.low, week.by_its_end_c.high};
        text += row(2, {{formatter.iso_date(assess::iso_of(week.from)), 14},
                        {words::stage_name(week.stage), 13},
                        {formatter.span(band, Quantity::temperature), 14, true}});
    }
    return text;
}

} // namespace

QString text_water(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const Formatter& format = speaker.formatter();
    const assess::WaterResult& water = enclosure.water;
    QString text = fact(Said::tr("Water"), Said::tr("%1 a day, %2 a month: changed %3, topped up %4, misted %5")
                                               .arg(format.range(water.daily_l, Quantity::volume),
                                                    format.value(in_a_month(water.daily_l).likely, Quantity::volume),
                                                    format.value(water.changed_l_per_day.likely, Quantity::volume),
                                                    format.value(water.top_up_l_per_day.likely, Quantity::volume),
                                                    format.value(water.misted_l_per_day.likely, Quantity::volume)));
    if (water.bed_l_per_day) {
        text += fact({}, Said::tr("poured into the bed to keep it as damp: %1 a day")
                             .arg(format.range(*water.bed_l_per_day, Quantity::volume)));
    }
    for (const assess::BowlResult& bowl : water.bowls) {
        text += fact({}, Said::tr("%1 holds %2 and weighs %3 full: %4")
                             .arg(speaker.name_of(bowl.id), format.range(bowl.volume_l, Quantity::volume),
                                  format.value(bowl.carried_kg.likely, Quantity::mass),
                                  words::verdict(bowl.judgement, words::Subject::plain)));
    }
    if (water.conditioner_ml_per_day && water.conditioner_ml_per_fill) {
        text += fact({}, Said::tr("conditioner %1 a fill, %2 a month for %3 of treated water")
                             .arg(format.value(water.conditioner_ml_per_fill->likely, Quantity::dose),
                                  format.range(in_a_month(*water.conditioner_ml_per_day), Quantity::dose),
                                  format.value(in_a_month(water.treated_l_per_day).likely, Quantity::volume)));
    }
    if (water.source && water.drawn_l_per_day) {
        text += fact(
            {}, Said::tr("source: %1; drawn from the mains %2 a day")
                    .arg(words::water_source(*water.source), format.range(*water.drawn_l_per_day, Quantity::volume)));
    }
    if (water.cartridges_per_year) {
        text += fact({}, Said::tr("filter cartridges a year, by volume: %1")
                             .arg(format.range(*water.cartridges_per_year, Quantity::number)));
    }
    return text;
}

QString text_year(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const Formatter& format = speaker.formatter();
    if (enclosure.light_year.empty()) {
        return {};
    }
    QString text = QLatin1Char('\n') + row(2, {{Said::tr("Year"), 5},
                                               {Said::tr("sky, h"), 8, true},
                                               {Said::tr("on"), 6, true},
                                               {Said::tr("off"), 6, true},
                                               {Said::tr("h"), 6, true},
                                               {Said::tr("kWh"), 7, true},
                                               {Said::tr("range"), 18, true},
                                               {Said::tr("costs"), 8, true}});
    for (const assess::LightDay& day : enclosure.light_year) {
        if (day.day != 1) { // the middle of the month
            text += month_row(day, enclosure.power, format);
        }
    }
    text += fact(Said::tr("In a year"), format.range(enclosure.power.year_kwh, Quantity::energy));
    return text + wrapped(QStringLiteral("  "), words::how_months(enclosure.hemisphere_known));
}

QString text_cool_seasons(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const Formatter& format = speaker.formatter();
    QString text;
    for (const assess::CoolSeasonResult& rest : enclosure.cool_seasons) {
        if (!rest.asked) {
            continue;
        }
        text += QLatin1Char('\n');
        text += fact(Said::tr("Winter rest"),
                     speaker.name_of(rest.animal) + QStringLiteral(": ") + words::answer(rest.eligibility.answer) +
                         (rest.eligibility.bars.empty()
                              ? QString()
                              : QStringLiteral(": ") + words::bars(rest.eligibility.bars).join(QStringLiteral("; "))));
        if (rest.rest) {
            text += week_table(rest, format) + weigh_in_table(rest, format);
        }
    }
    return text;
}

} // namespace loam::report
