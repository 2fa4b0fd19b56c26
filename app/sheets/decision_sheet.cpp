#include <QObject>
#include <algorithm>

#include "app/sheets/contents.hpp"
#include "app/sheets/decision_parts.hpp"
#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/context.hpp"
#include "core/assess/life_costs.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

QString band_text(const std::optional<catalog::Band>& band, Quantity quantity, const Request& request)
{
    if (!band || (!band->min && !band->max)) {
        return cell_blank();
    }
    return request.formatter.target({band->min, band->max, {}}, quantity);
}

QString measure_name(space::BodyMeasure measure)
{
    switch (measure) {
    case space::BodyMeasure::carapace:
        return QObject::tr("Grown: length of the shell");
    case space::BodyMeasure::snout_vent:
        return QObject::tr("Grown: length from snout to vent");
    case space::BodyMeasure::total:
        break;
    }
    return QObject::tr("Grown: whole length");
}

std::vector<const catalog::Species*> species_of(const Request& request)
{
    std::vector<const catalog::Species*> all;
    for (const plan::Enclosure& enclosure : request.plan.enclosures) {
        for (const catalog::Species* species : assess::species_in(enclosure, request.catalog)) {
            if (std::find(all.begin(), all.end(), species) == all.end()) {
                all.push_back(species);
            }
        }
    }
    return all;
}

void add_animals(Content& content, const Request& request, const words::Speaker& speaker)
{
    content.blocks.push_back(Heading{QObject::tr("How long, and how large")});
    Table table{{{QObject::tr("Of the species"), 2.6, false},
                 {QObject::tr("Figure"), 1.9, true},
                 {QObject::tr("How sure"), 2.4, false}},
                {}};
    for (const catalog::Species* species : species_of(request)) {
        const auto row = [&](const QString& what, const std::optional<catalog::Band>& band, Quantity quantity) {
            table.rows.push_back({.cells = {what, band_text(band, quantity, request),
                                            band ? words::confidence(band->source.confidence) : QString()}});
        };
        table.rows.push_back({.cells = {words::capitalised(speaker.name_of(species->id))}, .group = true});
        row(QObject::tr("Life span"), species->lifespan_years, Quantity::years);
        row(measure_name(species->measure), species->adult_length_m, Quantity::length);
        if (species->adult_total_length_m) {
            row(QObject::tr("Grown: whole length"), species->adult_total_length_m, Quantity::length);
        }
        row(QObject::tr("Grown: weight"), species->adult_mass_kg, Quantity::mass);
    }
    if (table.rows.empty()) {
        content.blocks.push_back(Blank{QObject::tr("No animal is in the plan yet. Species"), 260.0});
        return;
    }
    content.blocks.push_back(std::move(table));
    content.blocks.push_back(Blank{QObject::tr("Who takes it over if I can't keep it so long"), 240.0});
}

const assess::RuleResult* governing(const assess::SpaceResult& space)
{
    const auto found = std::find_if(space.rules.begin(), space.rules.end(),
                                    [&](const assess::RuleResult& rule) { return rule.id == space.governing_rule; });
    return found == space.rules.end() ? nullptr : &*found;
}

QString area_or_blank(const std::optional<double>& area_m2, const Request& request)
{
    return area_m2 ? request.formatter.value(*area_m2, Quantity::area) : cell_blank();
}

QString outgrown_text(const assess::SpaceResult& space, const Request& request)
{
    if (!space.outgrown_in_years) {
        return space.governing_rule.empty() ? cell_blank() : QObject::tr("not foreseen, or not known");
    }
    return *space.outgrown_in_years <= 0.0
               ? QObject::tr("now")
               : QObject::tr("in %1 at the earliest")
                     .arg(request.formatter.value(*space.outgrown_in_years, Quantity::years));
}

void add_floor(Content& content, const Request& request, const words::Speaker& speaker)
{
    content.blocks.push_back(Heading{QObject::tr("Floor space, now and grown")});
    Table table{{{QObject::tr("Enclosure"), 1.7, false},
                 {QObject::tr("Its floor"), 1.0, true},
                 {QObject::tr("Asked now"), 1.1, true},
                 {QObject::tr("Asked grown"), 1.2, true},
                 {QObject::tr("Outgrown"), 2.4, false}},
                {}};
    QStringList rules;
    for (const assess::EnclosureResult& enclosure : request.assessment.enclosures) {
        const assess::RuleResult* rule = governing(enclosure.space);
        table.rows.push_back(
            {.cells = {speaker.name_of(enclosure.id), request.formatter.value(enclosure.space.floor_m2, Quantity::area),
                       area_or_blank(enclosure.space.required_floor_m2, request),
                       area_or_blank(rule != nullptr ? rule->required_grown_m2 : std::nullopt, request),
                       outgrown_text(enclosure.space, request)}});
        if (rule != nullptr) {
            rules << QObject::tr("%1: “%2” (%3)")
                         .arg(speaker.name_of(enclosure.id), speaker.name_of(rule->id), words::rule_kind(rule->kind));
        }
    }
    content.blocks.push_back(std::move(table));
    rules.removeDuplicates();
    if (!rules.isEmpty()) {
        content.blocks.push_back(Paragraph{
            QObject::tr("The strictest rule that applies here decides. %1.").arg(rules.join(QObject::tr("; ")))});
    }
}

void add_money(Content& content, const Request& request)
{
    constexpr std::int64_t years = 10;
    const assess::Costs& costs = request.assessment.costs;
    const words::Formatter& formatter = request.formatter;
    const auto ten = assess::cost_over(costs, years);
    content.blocks.push_back(Heading{QObject::tr("What it costs")});
    if (!ten) {
        content.blocks.push_back(Blank{QObject::tr("Not known from the price list in use. Ten years")});
        return;
    }
    Table table{{{QObject::tr("In %1").arg(QString::fromStdString(costs.currency.code)), 2.6, false},
                 {QObject::tr("Low"), 1.1, true},
                 {QObject::tr("Typical"), 1.1, true},
                 {QObject::tr("High"), 1.1, true},
                 {QObject::tr("My figure"), 1.4, true}},
                {}};
    const auto row = [&](const QString& name, const MoneyRange& amount, bool total) {
        table.rows.push_back({.cells = {name,
                                        formatter.money_bare(amount.low),
                                        formatter.money_bare(amount.typical),
                                        formatter.money_bare(amount.high),
                                        {}},
                              .total = total});
    };
    row(QObject::tr("To begin"), costs.startup, false);
    row(QObject::tr("In a year"), costs.running_per_year, false);
    row(QObject::tr("Ten years, all together"), ten->cost, true);
    content.blocks.push_back(std::move(table));
    content.blocks.push_back(Paragraph{
        ten->from_horizon ? QObject::tr("Ten years as the plan's budget has them, at today's prices.")
                          : QObject::tr("Ten years: to begin, and ten times a year, at today's prices; nothing "
                                        "discounted.")});
    if (costs.price_illustrative) {
        content.blocks.push_back(Caution{QObject::tr("The prices are invented for illustration. Write in your own.")});
    }
    if (costs.without_electricity) {
        content.blocks.push_back(Blank{QObject::tr("Electricity is not in it: price of a kWh")});
    }
    if (!costs.unpriced.empty()) {
        content.blocks.push_back(Paragraph{
            QObject::tr("What has no price yet is not in it: %1 lines of the order.").arg(costs.unpriced.size())});
    }
    if (costs.life) {
        content.blocks.push_back(Paragraph{QObject::tr("For the rest of the longest life (%1%2): %3, in round figures.")
                                               .arg(formatter.span(costs.life->years, Quantity::years),
                                                    costs.life->or_longer ? QObject::tr(" or longer") : QString(),
                                                    formatter.money_round_span(costs.life->cost))});
    }
    content.blocks.push_back(Blank{QObject::tr("Set aside for a vet in an emergency")});
}

void add_decision(Content& content)
{
    content.blocks.push_back(Heading{QObject::tr("The decision")});
    content.blocks.push_back(Paragraph{
        QObject::tr("Not keeping one, or waiting until place, money and time are there, is a good decision too.")});
    add_cells(content, {QObject::tr("Yes, no, later"), QObject::tr("Decided by"), QObject::tr("Date")});
}

} // namespace

Content decision_content(const Request& request, const words::Speaker& speaker)
{
    Content content = begun(Sheet::decision, request);
    content.pages = 2;
    content.blocks.push_back(
        Paragraph{QObject::tr("To be read before anything is bought. What is not known is a line to fill in.")});
    add_dangers(content, request, speaker);
    add_animals(content, request, speaker);
    add_floor(content, request, speaker);
    add_money(content, request);
    add_care_hours(content, request, speaker);
    add_room_to_spare(content, request, speaker);
    add_way_in(content, request, speaker);
    add_company_and_law(content, request, speaker);
    add_decision(content);
    add_unknowns(content, Sheet::decision, request, speaker);
    return content;
}

} // namespace loam::sheets
