#include "app/sheets/decision_parts.hpp"

#include <QObject>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "app/sheets/outer_size.hpp"
#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/care_time.hpp"
#include "core/assess/context.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

QString care_name(assess::CareKind kind)
{
    switch (kind) {
    case assess::CareKind::look:
        return QObject::tr("Look at animals and thermometers, spot-clean");
    case assess::CareKind::feeding:
        return QObject::tr("Feed");
    case assess::CareKind::water_change:
        return QObject::tr("Change the water, scrub the bowl");
    case assess::CareKind::misting:
        return QObject::tr("Mist by hand");
    case assess::CareKind::weekly:
        return QObject::tr("Weekly: weigh, clean, look over lamps, locks");
    case assess::CareKind::monthly:
        return QObject::tr("Monthly: disinfect, exchange part of the bed");
    }
    return {};
}

// One row for all enclosures together.
struct Task {
    Range times, hours;
};

void take(Range& sum, const Range& term)
{
    sum = {sum.low + term.low, sum.likely + term.likely, sum.high + term.high};
}

// From the finding of that code, wherever it stands; the first of them.
const Finding* find(const Request& request, std::string_view code)
{
    const auto& findings = request.assessment.findings;
    const auto found =
        std::find_if(findings.begin(), findings.end(), [&](const Finding& one) { return one.code == code; });
    return found == findings.end() ? nullptr : &*found;
}

// Notes of a species sheet that bear on whether to keep it; what concerns its care stands elsewhere.
bool weighs(const Finding& finding)
{
    static constexpr std::array notes{"giant-adult",      "large-adult",       "laying-female-depth", "feeder-rodents",
                                      "females-fight",    "eats-other-snakes", "mild-venom",          "escapes",
                                      "permit-terrapene", "cites-annex-a",     "licence-australia",   "cites-papers"};
    const auto& labels = finding.because.labels;
    const auto note = std::find_if(labels.begin(), labels.end(), [](const Label& one) { return one.name == "note"; });
    return note == labels.end() || std::find(notes.begin(), notes.end(), note->text) != notes.end();
}

// Each sentence once: two boxes with one species say the same.
void add_findings(std::vector<Caution>& cautions, std::string_view code, const Request& request,
                  const words::Speaker& speaker)
{
    for (const Finding& finding : request.assessment.findings) {
        if (finding.code != code || !weighs(finding)) {
            continue;
        }
        const QString text = speaker.finding(finding);
        const auto same = [&](const Caution& caution) { return caution.text == text; };
        if (std::none_of(cautions.begin(), cautions.end(), same)) {
            cautions.push_back({text});
        }
    }
}

double deepest_bed_m(const plan::Enclosure& enclosure)
{
    double left_m = 0.0;
    double right_m = 0.0;
    for (const plan::SubstrateLayer& layer : enclosure.substrate) {
        left_m += layer.depth_m;
        right_m += layer.depth_at_right_m.value_or(layer.depth_m);
    }
    return std::max(left_m, right_m);
}

bool may_lay(const plan::Enclosure& enclosure, const catalog::Catalog& catalog)
{
    return std::any_of(enclosure.animals.begin(), enclosure.animals.end(), [&](const plan::Animal& animal) {
        const catalog::Species* species = catalog.find_species(animal.species);
        return animal.sex.value_or(plan::Sex::unknown) != plan::Sex::male && species != nullptr &&
               species->group != catalog::Group::frog;
    });
}

void add_box(Content& content, const plan::Enclosure& enclosure, const assess::EnclosureResult& result,
             const Request& request)
{
    const words::Formatter& formatter = request.formatter;
    const QString name = QString::fromStdString(enclosure.name);
    const auto length = [&](double length_m) { return formatter.value(length_m, Quantity::length); };
    if (const auto size = outer_size(enclosure.shell)) {
        const Sides sides = sides_of(*size);
        content.blocks.push_back(Paragraph{
            QObject::tr("%1: outside %2 × %3 × %4, without lid and lamps. A door has to be clear by more than "
                        "%5 one way and %6 the other; to turn it on end the ceiling has to be over %7.")
                .arg(name, length(size->length_m), length(size->width_m), length(size->height_m), length(sides.least_m),
                     length(sides.middle_m), length(height_to_turn_m(sides)))});
    } else {
        content.blocks.push_back(Blank{QObject::tr("%1: outside, length × width × height, to be measured (inside %2 × "
                                                   "%3 × %4)")
                                           .arg(name, length(enclosure.shell.length_m), length(enclosure.shell.width_m),
                                                length(enclosure.shell.height_m))});
    }
    if (result.mass.shell_kg > 0.0) {
        content.blocks.push_back(
            Paragraph{QObject::tr("%1: empty about %2, by its materials; filled %3. Carry it empty only, by two people "
                                  "or more.")
                          .arg(name, formatter.about(result.mass.shell_kg, Quantity::mass),
                               formatter.span(result.mass.total_kg, Quantity::mass))});
    } else {
        content.blocks.push_back(Blank{QObject::tr("%1: weight empty, to be asked or weighed").arg(name)});
    }
}

} // namespace

void add_care_hours(Content& content, const Request& request, const words::Speaker& speaker)
{
    std::map<assess::CareKind, Task> tasks;
    Range total;
    for (std::size_t i = 0; i < request.plan.enclosures.size() && i < request.assessment.enclosures.size(); ++i) {
        const auto times =
            assess::care_times(request.plan.enclosures[i], request.assessment.enclosures[i].water, request.catalog);
        for (const assess::CareTime& one : times) {
            take(tasks[one.kind].times, one.times_per_week);
            take(tasks[one.kind].hours, one.hours_per_week);
            take(total, one.hours_per_week);
        }
    }
    if (tasks.empty()) {
        return;
    }
    const words::Formatter& formatter = speaker.formatter();
    content.blocks.push_back(Heading{QObject::tr("Hours of care a week")});
    Table table{{{QObject::tr("Task"), 4.0, false},
                 {QObject::tr("Times a week"), 1.3, true},
                 {QObject::tr("Low"), 0.7, true},
                 {QObject::tr("Likely"), 0.7, true},
                 {QObject::tr("High"), 0.7, true}},
                {}};
    const auto hours = [&](double amount) { return formatter.bare(amount, Quantity::hours); };
    for (const auto& [kind, task] : tasks) {
        const auto tenths = [](double times) { return std::round(times * 10.0) / 10.0; };
        const Range rounded{tenths(task.times.low), tenths(task.times.likely), tenths(task.times.high)};
        table.rows.push_back({.cells = {care_name(kind), formatter.span(rounded, Quantity::number),
                                        hours(task.hours.low), hours(task.hours.likely), hours(task.hours.high)}});
    }
    table.rows.push_back(
        {.cells =
             {QObject::tr("Hours a week, all together"), {}, hours(total.low), hours(total.likely), hours(total.high)},
         .total = true});
    content.blocks.push_back(std::move(table));
    content.blocks.push_back(
        Paragraph{QObject::tr("An estimate: water and misting as planned, the rest as keepers commonly do it, times "
                              "bracketed minutes (common practice, no source), the quick with the quick and the slow "
                              "with the slow. Shopping and visits to a vet are not in it.")});
    content.blocks.push_back(Blank{QObject::tr("Hours a week that I have, and who stands in for me"), 200.0});
}

void add_room_to_spare(Content& content, const Request& request, const words::Speaker& speaker)
{
    content.blocks.push_back(Heading{QObject::tr("Space beside the box: quarantine and eggs")});
    const Finding* quarantine = find(request, "caution.quarantine");
    content.blocks.push_back(Paragraph{
        (quarantine != nullptr ? speaker.finding(*quarantine) + QStringLiteral(" ") : QString()) +
        QObject::tr("That takes a second, simple heated box in another room, with tools of its own, served last.")});
    content.blocks.push_back(Blank{QObject::tr("Where it stands, and its size"), 240.0});
    for (const plan::Enclosure& enclosure : request.plan.enclosures) {
        if (may_lay(enclosure, request.catalog)) {
            content.blocks.push_back(
                Blank{QObject::tr("%1: a female may lay eggs, even when she lives alone. The bed is %2 deep at most. "
                                  "Depth and place she needs, by a vet or breeder")
                          .arg(QString::fromStdString(enclosure.name),
                               request.formatter.value(deepest_bed_m(enclosure), Quantity::length))});
        }
    }
}

void add_way_in(Content& content, const Request& request, const words::Speaker&)
{
    content.blocks.push_back(Heading{QObject::tr("Through the door and up the stairs")});
    for (std::size_t i = 0; i < request.plan.enclosures.size() && i < request.assessment.enclosures.size(); ++i) {
        add_box(content, request.plan.enclosures[i], request.assessment.enclosures[i], request);
    }
    add_cells(content, {QObject::tr("Narrowest door, clear"), QObject::tr("Stairs, lift, corner, clear"),
                        QObject::tr("Who carries")});
}

void add_company_and_law(Content& content, const Request& request, const words::Speaker& speaker)
{
    content.blocks.push_back(Heading{QObject::tr("One animal, hygiene and law")});
    std::vector<Caution> cautions;
    cautions.push_back(
        {QObject::tr("One animal is a valid choice. A second one needs more floor, hides and quarantine, and a second "
                     "box at hand should the two not get on.")});
    for (const char* code : {"animals.second-of-solitary", "animals.rival-males", "caution.salmonella", "caution.law",
                             "caution.species", "caution.vet"}) {
        add_findings(cautions, code, request, speaker);
    }
    content.blocks.insert(content.blocks.end(), cautions.begin(), cautions.end());
    add_cells(content, {QObject::tr("Under 5, over 65, ill here"), QObject::tr("Papers asked of, on"),
                        QObject::tr("Reptile vet, telephone")});
}

} // namespace loam::sheets
