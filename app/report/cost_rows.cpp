#include "app/report/cost_rows.hpp"

#include <array>
#include <utility>

#include "app/report/csv.hpp"
#include "app/report/json_values.hpp"
#include "app/report/said.hpp"
#include "app/words/capitals.hpp"
#include "app/words/cost_names.hpp"
#include "app/words/seasons.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/cost_lines.hpp"

namespace loam::report {

namespace {

using words::Formatter;
using words::Quantity;

CostRow part_row(CostPart part, int level, const QString& name, const std::optional<MoneyRange>& amount,
                 const QString& how)
{
    CostRow row;
    row.part = part;
    row.level = level;
    row.name = words::capitalised(name);
    row.amount = amount;
    row.how = how;
    return row;
}

CostRow heading_row(CostPart part, const QString& name, const QString& how)
{
    CostRow row = part_row(part, 0, name, std::nullopt, how);
    row.heading = true;
    return row;
}

QString line_reason(const assess::CostLine& line, const Formatter& format)
{
    QString how = words::capitalised(words::cost_kind(line.kind));
    if (line.every_months) {
        how += QStringLiteral(". ") +
               Said::tr("Due again about every %1.").arg(format.value(*line.every_months, Quantity::months));
    }
    return how;
}

void add_deliveries(std::vector<CostRow>& rows, const assess::Costs& costs)
{
    for (const assess::DeliveryCost& one : costs.deliveries) {
        const QString channel = QString::fromStdString(one.channel);
        if (one.delivery.high.minor_units() > 0) {
            rows.push_back(
                part_row(CostPart::start, 1, Said::tr("of that, delivery by %1").arg(channel), one.delivery,
                         Said::tr("As the price list states it; goods of enough may be brought for nothing.")));
        }
        if (one.tax.high.minor_units() > 0) {
            rows.push_back(part_row(CostPart::start, 1, Said::tr("of that, tax at %1").arg(channel), one.tax,
                                    Said::tr("It comes on top of goods and delivery there.")));
        }
    }
}

void add_running(std::vector<CostRow>& rows, const assess::Costs& costs)
{
    rows.push_back(part_row(CostPart::running, 0, Said::tr("To run, a year"), costs.running_per_year,
                            Said::tr("The sum of the lines under “What runs up in a year”.")));
    if (costs.running_per_animal && costs.animals > 1) {
        rows.push_back(part_row(CostPart::running, 0, Said::tr("By the head, of %1 animals").arg(costs.animals),
                                costs.running_per_animal, Said::tr("What it costs to run, shared out evenly.")));
    }
}

void add_lines(std::vector<CostRow>& rows, const assess::Costs& costs, const words::Speaker& speaker)
{
    if (costs.lines.empty() && costs.electricity_per_year) {
        return;
    }
    rows.push_back(heading_row(CostPart::lines, Said::tr("What runs up in a year"),
                               Said::tr("What is used up, and each replacement spread evenly over its life.")));
    for (const assess::CostLine& line : assess::merged_by_name(costs.lines)) {
        rows.push_back(part_row(CostPart::lines, 1, words::cost_name(line.name), line.per_year,
                                line_reason(line, speaker.formatter())));
    }
    if (!costs.electricity_per_year) {
        rows.push_back(part_row(CostPart::lines, 1, Said::tr("Electricity"), std::nullopt,
                                Said::tr("State the price of electricity under “Site and room”.")));
    }
}

void add_horizon(std::vector<CostRow>& rows, const assess::Costs& costs)
{
    const auto add = [&rows](const QString& name, const std::optional<Money>& sum, const QString& how) {
        if (sum) {
            rows.push_back(part_row(CostPart::horizon, 0, name, MoneyRange{*sum, *sum, *sum}, how));
            rows.back().typical_only = true;
        }
    };
    add(Said::tr("Net present cost"), costs.net_present_cost,
        Said::tr("All payments of the horizon at typical prices, later ones discounted."));
    add(Said::tr("Equivalent annual cost"), costs.equivalent_annual_cost,
        Said::tr("The even yearly payment that has the same net present cost."));
}

void add_life(std::vector<CostRow>& rows, const assess::LifeCost& life, const words::Speaker& speaker)
{
    const QString years = speaker.formatter().span(life.years, Quantity::years);
    CostRow row =
        part_row(CostPart::life, 0, Said::tr("For the rest of a life"), life.cost,
                 Said::tr("To start and to run at today's prices, nothing discounted, for %1: %2. In round "
                          "figures, for nobody knows prices of decades ahead.")
                     .arg(speaker.place(life.animal), life.or_longer ? Said::tr("%1 or longer").arg(years) : years));
    row.round = true;
    row.where = life.animal;
    rows.push_back(std::move(row));
}

void add_months(std::vector<CostRow>& rows, const assess::Costs& costs, const Formatter& format)
{
    if (costs.months.empty()) {
        return;
    }
    rows.push_back(heading_row(CostPart::months, Said::tr("Month by month"),
                               Said::tr("The year ahead: electricity by the season, replacements whole in the month in "
                                        "which their likely life ends, the rest evenly.")));
    for (const assess::CostMonth& one : costs.months) {
        const auto number = static_cast<int>(static_cast<unsigned>(one.month.month()));
        const QString electricity =
            costs.without_electricity ? Said::tr("not known") : format.money(one.electricity.typical);
        CostRow row = part_row(
            CostPart::months, 1,
            Said::tr("%1 %2").arg(words::month_name(number, format)).arg(static_cast<int>(one.month.year())), one.spent,
            Said::tr("Typically: electricity %1, replaced %2, the rest %3.")
                .arg(electricity, format.money(one.replaced.typical), format.money(one.others.typical)));
        row.when = month(one.month).text;
        rows.push_back(std::move(row));
    }
}

void add_replacements(std::vector<CostRow>& rows, const assess::Costs& costs, const Formatter& format)
{
    if (costs.replacements.empty()) {
        return;
    }
    rows.push_back(heading_row(CostPart::replacements, Said::tr("To replace within a year"),
                               Said::tr("What is worn out within the year ahead by its likely life.")));
    for (const assess::Replacement& one : costs.replacements) {
        QString how = Said::tr("Due about %1").arg(format.date(one.due));
        if (one.earliest != one.due) {
            how += Said::tr(", perhaps from %1").arg(format.date(one.earliest));
        }
        how += QLatin1Char('.');
        if (one.uv_fades) {
            how += QLatin1Char(' ') + Said::tr("Its UV falls below what its animals need before it is worn out.");
        }
        CostRow row =
            part_row(CostPart::replacements, 1,
                     Said::tr("%1, %2").arg(QString::fromStdString(one.name), format.date(one.due)), one.price, how);
        row.when = date(one.due).text;
        row.where = one.where;
        rows.push_back(std::move(row));
    }
}

const char* part_id(CostPart part)
{
    static constexpr std::array ids{"start", "running", "horizon", "life", "line", "month", "replacement"};
    return ids[static_cast<std::size_t>(part)];
}

} // namespace

std::vector<CostRow> cost_rows(const assess::Costs& costs, const words::Speaker& speaker)
{
    std::vector<CostRow> rows;
    rows.push_back(part_row(CostPart::start, 0, Said::tr("To begin"), costs.startup,
                            Said::tr("The sum of the shopping list, net of what is owned, and what is set aside for "
                                     "surprises. Lines without a price are not in it.")));
    add_deliveries(rows, costs);
    add_running(rows, costs);
    add_horizon(rows, costs);
    if (costs.life) {
        add_life(rows, *costs.life, speaker);
    }
    add_lines(rows, costs, speaker);
    add_months(rows, costs, speaker.formatter());
    add_replacements(rows, costs, speaker.formatter());
    return rows;
}

QString not_included_text(const assess::Costs& costs, const words::Speaker& speaker)
{
    QStringList missing;
    for (const std::string& name : assess::not_included(costs)) {
        missing << (name == "electricity" ? Said::tr("electricity, whose price is not stated") : speaker.need(name));
    }
    return missing.isEmpty()
               ? QString()
               : Said::tr("Not in these sums, for want of a price: %1.").arg(missing.join(QStringLiteral(", ")));
}

QStringList cost_notes(const assess::Costs& costs, const words::Speaker& speaker)
{
    QString prices = Said::tr("Prices of %1").arg(speaker.formatter().iso_date(costs.price_date));
    prices += costs.price_illustrative ? Said::tr(", invented for illustration: put in your own before you decide.")
                                       : QStringLiteral(".");
    QStringList notes{prices};
    const QString missing = not_included_text(costs, speaker);
    return missing.isEmpty() ? notes : notes << missing;
}

PastedTable costs_table(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    const Formatter& format = speaker.formatter();
    PastedTable table;
    table.title = Said::tr("Costs: %1").arg(QString::fromStdString(assessment.plan_title));
    table.heads = {{Said::tr("Cost, %1").arg(QString::fromStdString(assessment.costs.currency.code)), false},
                   {Said::tr("Low"), true},
                   {Said::tr("Typical"), true},
                   {Said::tr("High"), true}};
    for (const CostRow& row : cost_rows(assessment.costs, speaker)) {
        const auto cell = [&](Money MoneyRange::*end) {
            const bool told = !row.heading && row.has(end);
            const QString known = row.amount ? format.money_bare((*row.amount).*end) : Said::tr("not known");
            return PastedCell{told ? known : QString(), true};
        };
        table.rows.push_back(
            {{row.name, false}, cell(&MoneyRange::low), cell(&MoneyRange::typical), cell(&MoneyRange::high)});
    }
    table.notes = cost_notes(assessment.costs, speaker);
    return table;
}

std::string costs_csv(const assess::Costs& costs, const words::Speaker& speaker)
{
    std::string csv = csv_row({"part", "name", "when", "currency", "low", "typical", "high", "how"});
    for (const CostRow& row : cost_rows(costs, speaker)) {
        if (row.heading) {
            continue;
        }
        const auto amount = [&row](Money MoneyRange::*end) {
            return row.amount && row.has(end) ? csv_cell(money((*row.amount).*end)) : std::string();
        };
        csv += csv_row({part_id(row.part), csv_cell(row.name.toStdString()), row.when, costs.currency.code,
                        amount(&MoneyRange::low), amount(&MoneyRange::typical), amount(&MoneyRange::high),
                        csv_cell(row.how.toStdString())});
    }
    return csv;
}

} // namespace loam::report
