#include "app/report/comparison_rows.hpp"

#include "app/report/comparison_change.hpp"
#include "app/report/said.hpp"
#include "app/words/capitals.hpp"
#include "app/words/catalog_names.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using assess::Compared;
using assess::Sides;
using words::Formatter;
using words::Quantity;

struct Shown {
    int level;
    QString name;
    Quantity quantity;
    ChangeWords words;
};

Shown shown(Compared what)
{
    const ChangeWords size{Said::tr("larger"), Said::tr("smaller")};
    const ChangeWords amount{Said::tr("more"), Said::tr("less")};
    switch (what) {
    case Compared::floor_m2:
        return {0, Said::tr("Floor"), Quantity::area, size};
    case Compared::usable_floor_m2:
        return {1, Said::tr("can be walked on"), Quantity::area, size};
    case Compared::required_floor_m2:
        return {1, Said::tr("asked for"), Quantity::area, amount};
    case Compared::connected_w:
        return {0, Said::tr("Connected"), Quantity::power, amount};
    case Compared::year_kwh:
        return {0, Said::tr("Energy in a year"), Quantity::energy, amount};
    case Compared::winter_day_kwh:
        return {1, Said::tr("on a winter day"), Quantity::energy, amount};
    case Compared::summer_day_kwh:
        return {1, Said::tr("on a summer day"), Quantity::energy, amount};
    case Compared::water_l_per_day:
        return {0, Said::tr("Water a day"), Quantity::volume, amount};
    case Compared::mass_kg:
        return {0, Said::tr("Mass"), Quantity::mass, {Said::tr("heavier"), Said::tr("lighter")}};
    }
    return {};
}

ComparedCell figure_cell(const Range& range, Quantity quantity, const Formatter& format)
{
    ComparedCell cell;
    cell.text = format.span(range, quantity);
    const QString likely = format.range(range, quantity);
    cell.likely = likely == cell.text ? QString() : likely;
    return cell;
}

ComparedCell said_cell(const QString& text)
{
    ComparedCell cell;
    cell.text = text;
    return cell;
}

ComparedCell judged(ComparedCell cell, const Judgement& judgement, words::Subject subject)
{
    cell.verdict = words::verdict(judgement.verdict);
    cell.in_full = words::verdict(judgement, subject);
    cell.judgement = judgement;
    return cell;
}

// What stands for a figure that is not known, or whose enclosure is not there.
ComparedCell absent(const assess::ComparedEnclosure& enclosure, std::size_t side)
{
    return said_cell(enclosure.ids[side].empty() ? QStringLiteral("–") : Said::tr("not known"));
}

QString joined(const QString& first, const QString& second)
{
    return first.isEmpty() || second.isEmpty() ? first + second : first + QStringLiteral(", ") + second;
}

// Fills in what the row says of the way from one side to the other.
ComparisonRow finished(ComparisonRow row, const QString& change)
{
    const Sides<ComparedCell>& sides = row.sides;
    row.differs = !change.isEmpty() || sides[0].text != sides[1].text || sides[0].judgement != sides[1].judgement;
    row.change = !row.differs ? Said::tr("same") : change.isEmpty() ? Said::tr("can't be told") : change;
    return row;
}

// For a row of which an enclosure of one plan only has something to say.
QString one_sided(const assess::ComparedEnclosure& enclosure)
{
    if (enclosure.ids[0].empty()) {
        return Said::tr("new");
    }
    return enclosure.ids[1].empty() ? Said::tr("gone") : QString();
}

ComparisonRow verdict_row(const QString& name, const assess::ComparedEnclosure& enclosure,
                          const Sides<Judgement>& judgements, words::Subject subject)
{
    ComparisonRow row;
    row.name = name;
    for (std::size_t side = 0; side < 2; ++side) {
        row.sides[side] = enclosure.ids[side].empty() ? absent(enclosure, side) : judged({}, judgements[side], subject);
    }
    const QString alone = one_sided(enclosure);
    return finished(std::move(row), alone.isEmpty() ? change_of(judgements[0], judgements[1]) : alone);
}

ComparisonRow figure_row(const assess::ComparedFigure& figure, const assess::ComparedEnclosure& enclosure,
                         const Formatter& format)
{
    const Shown as = shown(figure.what);
    ComparisonRow row;
    row.level = as.level;
    row.name = as.name;
    for (std::size_t side = 0; side < 2; ++side) {
        const auto& value = figure.values[side];
        row.sides[side] = value ? figure_cell(*value, as.quantity, format) : absent(enclosure, side);
    }
    QString change = one_sided(enclosure);
    if (figure.values[0] && figure.values[1]) {
        change = change_of(*figure.values[0], *figure.values[1], as.quantity, as.words, format);
    }
    return finished(std::move(row), change);
}

ComparisonRow zone_row(const assess::ComparedZone& zone, const Formatter& format)
{
    ComparisonRow row;
    row.level = 1;
    row.name = words::zone(zone.zone);
    for (std::size_t side = 0; side < 2; ++side) {
        const auto& there = zone.sides[side];
        row.sides[side] = there ? judged(figure_cell(there->temperature_c, Quantity::temperature, format),
                                         there->judgement, words::Subject::temperature)
                                : said_cell(QStringLiteral("–"));
    }
    QString change = zone.sides[0] ? Said::tr("gone") : Said::tr("new");
    if (zone.sides[0] && zone.sides[1]) {
        change = joined(change_of(zone.sides[0]->temperature_c, zone.sides[1]->temperature_c, Quantity::temperature,
                                  {Said::tr("warmer"), Said::tr("colder")}, format),
                        change_of(zone.sides[0]->judgement, zone.sides[1]->judgement));
    }
    return finished(std::move(row), change);
}

ComparisonRow humidity_row(const assess::ComparedHumidity& humidity, const assess::ComparedEnclosure& enclosure,
                           const Formatter& format)
{
    ComparisonRow row;
    row.level = 1;
    row.name = words::case_name(humidity.case_id);
    const auto known = [&](std::size_t side) {
        return humidity.sides[side] && humidity.sides[side]->relative_humidity;
    };
    for (std::size_t side = 0; side < 2; ++side) {
        const auto& there = humidity.sides[side];
        row.sides[side] = known(side) ? judged(figure_cell(*there->relative_humidity, Quantity::fraction, format),
                                               there->judgement, words::Subject::humidity)
                                      : absent(enclosure, side);
    }
    QString change = one_sided(enclosure);
    if (known(0) && known(1)) {
        change = joined(change_of(*humidity.sides[0]->relative_humidity, *humidity.sides[1]->relative_humidity,
                                  Quantity::fraction, {Said::tr("damper"), Said::tr("drier")}, format),
                        change_of(humidity.sides[0]->judgement, humidity.sides[1]->judgement));
    }
    return finished(std::move(row), change);
}

ComparisonRow heading_row(const QString& name)
{
    ComparisonRow row;
    row.name = name;
    row.heading = true;
    return row;
}

QString title_of(const assess::ComparedEnclosure& enclosure)
{
    Sides<QString> names;
    for (std::size_t side = 0; side < 2; ++side) {
        const std::string& name = enclosure.names[side].empty() ? enclosure.ids[side] : enclosure.names[side];
        names[side] = name.empty() ? Said::tr("(none)") : QString::fromStdString(name);
    }
    return names[0] == names[1] ? names[0] : names[0] + QStringLiteral(" | ") + names[1];
}

ComparisonGroup enclosure_group(const assess::ComparedEnclosure& enclosure, const Formatter& format)
{
    ComparisonGroup group{title_of(enclosure), {}};
    group.rows.push_back(verdict_row(Said::tr("All in all"), enclosure, enclosure.overall, words::Subject::plain));
    group.rows.push_back(verdict_row(Said::tr("Space"), enclosure, enclosure.space, words::Subject::space));
    for (const assess::ComparedFigure& figure : enclosure.figures) {
        group.rows.push_back(figure_row(figure, enclosure, format));
    }
    std::string case_id;
    for (const assess::ComparedZone& zone : enclosure.zones) {
        if (case_id != zone.case_id) {
            case_id = zone.case_id;
            group.rows.push_back(heading_row(words::case_name(case_id)));
        }
        group.rows.push_back(zone_row(zone, format));
    }
    if (!enclosure.humidity.empty()) {
        group.rows.push_back(heading_row(Said::tr("Humidity")));
    }
    for (const assess::ComparedHumidity& humidity : enclosure.humidity) {
        group.rows.push_back(humidity_row(humidity, enclosure, format));
    }
    return group;
}

// A cost of either side; `of` gives it where it is known.
template <typename Of>
ComparisonRow cost_row(int level, const QString& name, const TwoPlans& plans, const Formatter& format, const Of& of)
{
    ComparisonRow row;
    row.level = level;
    row.name = name;
    Sides<std::optional<MoneyRange>> sums;
    for (std::size_t side = 0; side < 2; ++side) {
        sums[side] = of(plans.sides[side]->costs);
        row.sides[side] = said_cell(sums[side] ? format.money(sums[side]->typical) : Said::tr("not known"));
        if (sums[side] && !(sums[side]->low == sums[side]->high)) {
            row.sides[side].likely = format.money(*sums[side]);
        }
    }
    return finished(std::move(row),
                    sums[0] && sums[1] ? change_of(sums[0]->typical, sums[1]->typical, format) : QString());
}

} // namespace

std::vector<ComparisonGroup> enclosure_groups(const TwoPlans& plans, const Formatter& format)
{
    std::vector<ComparisonGroup> groups;
    for (const assess::ComparedEnclosure& enclosure : plans.comparison.enclosures) {
        groups.push_back(enclosure_group(enclosure, format));
    }
    return groups;
}

ComparisonGroup costs_group(const TwoPlans& plans, const Formatter& format)
{
    using assess::Costs;
    const auto costed = [](MoneyRange Costs::*sum) {
        return [sum](const Costs& costs) {
            return costs.prices_match_currency ? std::optional(costs.*sum) : std::nullopt;
        };
    };
    const auto amount = [](std::optional<Money> Costs::*sum) {
        return [sum](const Costs& costs) {
            const std::optional<Money>& known = costs.*sum;
            return known ? std::optional(MoneyRange{*known, *known, *known}) : std::nullopt;
        };
    };
    ComparisonGroup group{Said::tr("Costs, at typical prices"), {}};
    group.rows.push_back(cost_row(0, Said::tr("To start"), plans, format, costed(&Costs::startup)));
    group.rows.back().note = Said::tr("Net of what is owned; lines without a price are not in it.");
    group.rows.push_back(cost_row(0, Said::tr("To run, per year"), plans, format, costed(&Costs::running_per_year)));
    group.rows.back().note = Said::tr("What is used up, and each replacement spread evenly over its life.");
    group.rows.push_back(cost_row(1, Said::tr("of that, electricity"), plans, format,
                                  [](const Costs& costs) { return costs.electricity_per_year; }));
    group.rows.push_back(cost_row(0, Said::tr("Net present cost"), plans, format, amount(&Costs::net_present_cost)));
    group.rows.push_back(
        cost_row(0, Said::tr("As a sum each year"), plans, format, amount(&Costs::equivalent_annual_cost)));
    ComparisonRow unpriced;
    unpriced.name = Said::tr("Without a price");
    Sides<std::int64_t> counts{};
    for (std::size_t side = 0; side < 2; ++side) {
        counts[side] = static_cast<std::int64_t>(plans.sides[side]->costs.unpriced.size());
        unpriced.sides[side] = said_cell(format.count(counts[side]));
    }
    group.rows.push_back(finished(std::move(unpriced), change_of(counts[0], counts[1], format)));
    if (plans.sides[0]->costs.without_electricity || plans.sides[1]->costs.without_electricity) {
        ComparisonRow electricity;
        electricity.name = Said::tr("Electricity in it");
        for (std::size_t side = 0; side < 2; ++side) {
            electricity.sides[side] = said_cell(
                plans.sides[side]->costs.without_electricity ? Said::tr("no: price not stated") : Said::tr("yes"));
        }
        group.rows.push_back(finished(std::move(electricity), {}));
    }
    return group;
}

ComparisonGroup purchases_group(const TwoPlans& plans, const words::Speaker& speaker)
{
    const Formatter& format = speaker.formatter();
    ComparisonGroup group{Said::tr("Bought in different numbers"), {}};
    for (const assess::ComparedPurchase& one : plans.comparison.purchases) {
        ComparisonRow row;
        const QString name = one.item_name.empty() ? speaker.need(one.need) : QString::fromStdString(one.item_name);
        const QString pack = words::pack_words(one.pack);
        row.name = pack.isEmpty() ? name : name + QStringLiteral(", ") + pack;
        for (std::size_t side = 0; side < 2; ++side) {
            row.sides[side] = said_cell(format.count(one.packs[side]));
            if (one.totals[side]) {
                row.sides[side].likely = format.money(*one.totals[side]);
            }
        }
        QString change = change_of(one.packs[0], one.packs[1], format);
        if (change.isEmpty() && one.totals[0] && one.totals[1]) {
            change = change_of(one.totals[0]->typical, one.totals[1]->typical, format);
        }
        row = finished(std::move(row), change);
        row.differs = true; // only such are among them, though it be the price alone
        group.rows.push_back(std::move(row));
    }
    return group;
}

PastedTable comparison_table(const TwoPlans& plans, const Sides<QString>& called, const QString& summary,
                             const words::Speaker& speaker)
{
    std::vector<ComparisonGroup> groups = enclosure_groups(plans, speaker.formatter());
    groups.push_back(costs_group(plans, speaker.formatter()));
    groups.push_back(purchases_group(plans, speaker));
    PastedTable table;
    table.title = Said::tr("Comparison");
    table.heads = {{Said::tr("Of"), false},
                   {Said::tr("Figure"), false},
                   {called[0], false},
                   {called[1], false},
                   {Said::tr("Change"), false}};
    for (const ComparisonGroup& group : groups) {
        QString heading;
        for (const ComparisonRow& row : group.rows) {
            heading = row.heading ? row.name : row.level == 0 ? QString() : heading;
            if (!row.heading) {
                // The word tells the direction; a sign in front would make a formula of it.
                const bool with_sign = row.change.startsWith(QLatin1Char('+')) || row.change.startsWith(QChar(0x2212));
                table.rows.push_back({{group.title, false},
                                      {words::capitalised(with_heading(heading, row.name)), false},
                                      {cell_text(row.sides[0]), false},
                                      {cell_text(row.sides[1]), false},
                                      {with_sign ? row.change.mid(1) : row.change, false}});
            }
        }
    }
    table.notes << summary;
    return table;
}

QString with_heading(const QString& heading, const QString& name)
{
    return heading.isEmpty() ? name : heading + QStringLiteral(", ") + name;
}

QString cell_text(const ComparedCell& cell)
{
    return cell.text.isEmpty() || cell.verdict.isEmpty() ? cell.text + cell.verdict
                                                         : cell.text + QLatin1Char(' ') + cell.verdict;
}

QString payback_sentence(const assess::PaybackResult& payback, const QString& second, const Formatter& format)
{
    const QString years = payback.years ? format.value(*payback.years, Quantity::years) : QString();
    switch (payback.kind) {
    case assess::Payback::at_once:
        return words::capitalised(Said::tr("%1 costs no more to start and no more to run.").arg(second));
    case assess::Payback::after:
        return Said::tr("What %1 costs more to start comes back in %2 by what it costs less to run.")
            .arg(second, years);
    case assess::Payback::never:
        return words::capitalised(
            Said::tr("%1 costs no less to start and no less to run: nothing comes back.").arg(second));
    case assess::Payback::trade:
        return words::capitalised(
            Said::tr("%1 costs less to start and more to run: after %2 it has cost more.").arg(second, years));
    case assess::Payback::not_known:
        break;
    }
    return Said::tr(
        "Whether it pays back is not known: a tariff is missing, different things have no price, or the price "
        "list is in another currency.");
}

} // namespace loam::report
