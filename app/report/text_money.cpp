#include <algorithm>
#include <set>

#include "app/report/cost_rows.hpp"
#include "app/report/lines.hpp"
#include "app/report/said.hpp"
#include "app/report/text_parts.hpp"
#include "app/report/text_report.hpp"
#include "app/words/catalog_names.hpp"
#include "app/words/seasons.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/cost_lines.hpp"

namespace loam::report {

namespace {

using words::Quantity;
using words::Speaker;

QString sum(const QString& name, const QString& amount)
{
    return row(2, {{name, 36}, {amount}});
}

} // namespace

QString text_electricity(const assess::Assessment& assessment, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    if (assessment.circuits.empty() && assessment.strips.empty() && assessment.stands.empty()) {
        return {};
    }
    QString text = heading(Said::tr("Loads"));
    for (const assess::CircuitResult& circuit : assessment.circuits) {
        text += row(
            2,
            {{speaker.name_of(circuit.id), 14},
             {format.span(circuit.load_w, Quantity::power), 18},
             {circuit.load_fraction ? format.value(circuit.load_fraction->likely, Quantity::fraction) : QString(), 16},
             {words::verdict(circuit.judgement, words::Subject::load)}});
    }
    for (const assess::StripResult& strip : assessment.strips) {
        text += row(2, {{speaker.name_of(strip.id), 14},
                        {format.span(strip.load_w, Quantity::power), 18},
                        {{}, 16},
                        {words::verdict(strip.judgement, words::Subject::load)}});
    }
    for (const assess::StandResult& stand : assessment.stands) {
        text += row(
            2, {{speaker.name_of(stand.id), 14},
                {format.span(stand.load_kg, Quantity::mass), 18},
                {stand.rated_kg ? Said::tr("of %1").arg(format.value(*stand.rated_kg, Quantity::mass)) : QString(), 16},
                {words::verdict(stand.judgement, words::Subject::load)}});
    }
    return text;
}

namespace {

QString month_rows(const assess::Costs& costs, const words::Formatter& format)
{
    if (costs.months.empty()) {
        return {};
    }
    QString text = row(2, {{Said::tr("Month, typical prices"), 24},
                           {Said::tr("electricity"), 13, true},
                           {Said::tr("replaced"), 11, true},
                           {Said::tr("others"), 11, true},
                           {Said::tr("in all"), 11, true}});
    for (const assess::CostMonth& one : costs.months) {
        const auto number = static_cast<int>(static_cast<unsigned>(one.month.month()));
        text += row(
            2,
            {{Said::tr("  %1 %2").arg(words::month_name(number, format)).arg(static_cast<int>(one.month.year())), 24},
             {costs.without_electricity ? QStringLiteral("?") : format.money_bare(one.electricity.typical), 13, true},
             {format.money_bare(one.replaced.typical), 11, true},
             {format.money_bare(one.others.typical), 11, true},
             {format.money_bare(one.spent.typical), 11, true}});
    }
    return text;
}

QString life_text(const assess::LifeCost& life, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    const QString years = format.span(life.years, Quantity::years);
    return wrapped(QStringLiteral("  "),
                   Said::tr("For the rest of a life (%1, %2): about %3 in all at today's prices, in round figures.")
                       .arg(speaker.name_of(life.animal), life.or_longer ? Said::tr("%1 or longer").arg(years) : years,
                            format.money_round_span(life.cost)));
}

} // namespace

QString text_deliveries(const std::vector<assess::DeliveryCost>& deliveries, const words::Formatter& format)
{
    QString text;
    for (const assess::DeliveryCost& one : deliveries) {
        const QString channel = QString::fromStdString(one.channel);
        const auto add = [&](const QString& name, const MoneyRange& amount) {
            if (amount.high.minor_units() > 0) {
                text += sum(name.arg(channel), format.money(amount));
            }
        };
        if (deliveries.size() > 1) {
            add(Said::tr("Goods, %1"), one.goods);
        }
        add(Said::tr("Delivery, %1"), one.delivery);
        add(Said::tr("Tax on top, %1"), one.tax);
    }
    return text;
}

QString text_costs(const assess::Costs& costs, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text = heading(Said::tr("Costs"));
    if (!costs.prices_match_currency) {
        return text + wrapped(QStringLiteral("  "),
                              Said::tr("The price list is in another currency than the plan, so nothing is costed."));
    }
    text += sum(Said::tr("To start"), format.money(costs.startup));
    text += text_deliveries(costs.deliveries, format);
    text += sum(Said::tr("To run, per year"), format.money(costs.running_per_year));
    text += sum(Said::tr("  of that, electricity"),
                costs.electricity_per_year ? format.money(*costs.electricity_per_year) : Said::tr("not known"));
    if (costs.running_per_animal && costs.animals > 1) {
        text +=
            sum(Said::tr("  by the head, of %1 animals").arg(costs.animals), format.money(*costs.running_per_animal));
    }
    const QString missing = not_included_text(costs, speaker);
    text += missing.isEmpty() ? QString() : wrapped(QStringLiteral("  "), missing);
    for (const assess::HorizonYear& year : costs.horizon) {
        text += sum(year.year == 0 ? Said::tr("After the start") : Said::tr("Year %1, in all so far").arg(year.year),
                    format.money(year.cumulative.typical));
    }
    if (costs.net_present_cost) {
        text += sum(Said::tr("Net present cost"), format.money(*costs.net_present_cost));
    }
    if (costs.equivalent_annual_cost) {
        text += sum(Said::tr("The same as a sum each year"), format.money(*costs.equivalent_annual_cost));
    }
    if (costs.life) {
        text += life_text(*costs.life, speaker);
    }
    text += month_rows(costs, format);
    if (costs.price_illustrative) {
        text +=
            wrapped(QStringLiteral("  "), Said::tr("The prices are invented examples. Put your own in their place."));
    }
    return text;
}

QString text_shopping(const std::vector<assess::ShoppingLine>& lines, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text = heading(Said::tr("To buy"));
    if (lines.empty()) {
        return text + row(2, {{Said::tr("Nothing.")}});
    }
    std::vector<assess::ShoppingLine> by_category = lines;
    std::stable_sort(by_category.begin(), by_category.end(),
                     [](const assess::ShoppingLine& left, const assess::ShoppingLine& right) {
                         return left.category < right.category;
                     });
    std::set<std::string> channels;
    for (const assess::ShoppingLine& line : lines) {
        channels.insert(line.channel);
    }
    channels.erase("");
    std::optional<catalog::Category> category;
    for (const assess::ShoppingLine& line : by_category) {
        if (category != line.category) {
            text += row(2, {{words::category(line.category)}});
            category = line.category;
        }
        const QString name = line.item_name.empty() ? speaker.need(line.need) : QString::fromStdString(line.item_name);
        const QString pack = words::pack_words(line.pack);
        const QString named = pack.isEmpty() ? name : name + QStringLiteral(", ") + pack;
        const bool told_where = channels.size() > 1 && !line.channel.empty();
        text += row(
            4, {{line.item.empty() ? QStringLiteral("?") : format.count(line.packs), 3, true},
                {told_where ? named + QStringLiteral(" (%1)").arg(QString::fromStdString(line.channel)) : named, 45},
                {line.line_total ? format.money_span(*line.line_total) : Said::tr("no price"), 22, true}});
        if (!line.instead_of.empty()) {
            text += wrapped(
                QString(9, QLatin1Char(' ')),
                Said::tr("in the place of %1, which is out of stock").arg(QString::fromStdString(line.instead_of)));
        }
    }
    return text;
}

} // namespace loam::report
