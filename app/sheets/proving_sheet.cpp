#include <QObject>
#include <algorithm>
#include <array>
#include <utility>

#include "app/sheets/contents.hpp"
#include "app/sheets/targets.hpp"
#include "app/words/capitals.hpp"
#include "app/words/courses.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/context.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

constexpr int days = 7;
constexpr double hand_row_pt = 21.0; // to write in by hand

// Cells under the zones' heads and the humidity's, between a first one and two that stay empty.
Row row_of(const QString& first, const assess::EnclosureResult& result, const words::Formatter& formatter,
           const char* case_id, bool target)
{
    Row row{.cells = {first, {}}, .total = target};
    for (const assess::Zone zone : zones_of(result)) {
        row.cells << (target ? target_of(result, case_id, zone, formatter)
                             : expected_of(result, case_id, zone, formatter));
    }
    row.cells << (target ? humidity_target_of(result, case_id, formatter)
                         : humidity_expected_of(result, case_id, formatter))
              << QString();
    return row;
}

Table log_table(const assess::EnclosureResult& result, const words::Formatter& formatter)
{
    Table table{{{QObject::tr("Day, time"), 2.1, false}, {QObject::tr("Room"), 0.7, false}}, {}, true};
    for (const assess::Zone zone : zones_of(result)) {
        table.columns.push_back({column_head(result, zone), 1.3, false});
    }
    table.columns.push_back({QObject::tr("Humidity, cool side"), 1.2, false});
    table.columns.push_back({QObject::tr("By"), 0.5, false});
    table.rows.push_back(row_of(QObject::tr("Target by day"), result, formatter, "winter-day", true));
    table.rows.push_back(row_of(QObject::tr("Target at night"), result, formatter, "winter-night", true));
    for (const auto& [case_id, name] : std::array{std::pair{"winter-day", QObject::tr("Expected: winter day")},
                                                  std::pair{"winter-night", QObject::tr("… winter night")},
                                                  std::pair{"summer-day", QObject::tr("… summer day")}}) {
        table.rows.push_back(row_of(name, result, formatter, case_id, false));
    }
    for (int day = 1; day <= days; ++day) {
        for (const QString& time :
             {QObject::tr("Day %1, morning"), QObject::tr("Day %1, afternoon"), QObject::tr("Day %1, night")}) {
            table.rows.push_back({.cells = {time.arg(day)}, .least_pt = hand_row_pt});
        }
    }
    return table;
}

void add_how(Content& content)
{
    content.blocks.push_back(Paragraph{QObject::tr(
        "Run it as it will be kept, empty, for seven days at least; no animal moves in before all readings "
        "have been in their targets for so long. Read three times a day. Morning: two hours after the lamps "
        "come on. Afternoon: an hour before they go off. Night: the lowest since, from a thermometer with a "
        "memory. The basking spot is read at its surface with an infrared thermometer, the other places in "
        "the shade at ground level.")});
    content.blocks.push_back(Paragraph{
        QObject::tr("“Expected” is what was worked out for this plan, as a range that should hold nine times in ten. A "
                    "reading outside it is worth a second look even where the target is met.")});
    content.blocks.push_back(Blank{QObject::tr("Begun on; thermometers compared with each other on"), 200.0});
}

// About how long after switching on; nullopt where that is not known.
QString settling_text(const assess::EnclosureResult& result, const words::Formatter& formatter)
{
    if (!result.warm_up || result.warm_up->course.points.size() < 2) {
        return {};
    }
    const auto warm = words::settled_h(result.warm_up->course, &climate::CoursePoint::warm_c);
    const auto cool = words::settled_h(result.warm_up->course, &climate::CoursePoint::cool_c);
    if (!warm || !cool) {
        return QObject::tr("It settles slowly: readings count from the second day.");
    }
    return QObject::tr("Warm and cool side come within %1 of where they settle about %2 after switching on.")
        .arg(formatter.value(1.0, Quantity::temperature_difference),
             formatter.about(std::max({1.0, *warm, *cool}), Quantity::hours));
}

void add_log(Content& content, const plan::Enclosure& enclosure, const assess::EnclosureResult& result,
             const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    content.blocks.push_back(Heading{QObject::tr("Log: %1").arg(speaker.name_of(enclosure.id))});
    QStringList before;
    if (enclosure.photoperiod) {
        before << QObject::tr("Lamps are on from %1 to %2.")
                      .arg(QString::fromStdString(enclosure.photoperiod->on),
                           QString::fromStdString(enclosure.photoperiod->off));
    }
    before << settling_text(result, formatter);
    before.removeAll(QString());
    if (!before.isEmpty()) {
        content.blocks.push_back(Paragraph{before.join(QLatin1Char(' '))});
    }
    content.blocks.push_back(log_table(result, formatter));
    const Target& target = result.uv.target_uvi;
    if (target.min || target.max) {
        content.blocks.push_back(Blank{QObject::tr("UV index at the back of a basking animal, target %1, by meter")
                                           .arg(formatter.target(target, Quantity::uv_index))});
    }
}

void add_limits(Content& content, const Request& request, const words::Speaker& speaker)
{
    std::vector<const catalog::Species*> told;
    for (const plan::Enclosure& enclosure : request.plan.enclosures) {
        for (const catalog::Species* species : assess::species_in(enclosure, request.catalog)) {
            const auto& harmful = species->temperatures.harmful_c;
            if (!harmful || !harmful->max || std::find(told.begin(), told.end(), species) != told.end()) {
                continue;
            }
            told.push_back(species);
            content.blocks.push_back(
                Caution{QObject::tr("%1 comes to harm over %2. Where every place of the box may get so warm, switch "
                                    "the heat off, and no animal moves in.")
                            .arg(words::capitalised(speaker.name_of(species->id)),
                                 request.formatter.value(*harmful->max, Quantity::temperature))});
        }
    }
}

void add_what_to_do(Content& content, const words::Formatter& formatter)
{
    content.blocks.push_back(Heading{QObject::tr("When a reading is out of its target")});
    content.blocks.push_back(Paragraph{
        QObject::tr("Change one thing at a time, wait until it has settled, and begin the seven days anew. Write the "
                    "readings into the plan (chapter “Readings”): the program then says anew what to expect.")});
    const QString step = formatter.value(1.0, Quantity::temperature_difference);
    Table table{{{QObject::tr("Reading"), 1.8, false},
                 {QObject::tr("Too high"), 3.2, false},
                 {QObject::tr("Too low"), 3.2, false}},
                {}};
    table.rows = {
        {.cells = {QObject::tr("Basking spot"), QObject::tr("Lamp higher, dimmed, or of less power."),
                   QObject::tr("Lamp lower, never within its clearance; or of more power, if its holder bears it.")}},
        {.cells = {QObject::tr("Warm side"), QObject::tr("Set-point down by %1. Less cover.").arg(step),
                   QObject::tr("Set-point up by %1; see that the probe lies where it should. More cover, clear of "
                               "lamps.")
                       .arg(step)}},
        {.cells = {QObject::tr("Cool side"),
                   QObject::tr("Heat further to the warm end. Less cover there. A cooler room; shade from the sun."),
                   QObject::tr("A warmer room, or heat on a thermostat nearer to it.")}},
        {.cells = {QObject::tr("At night"), QObject::tr("Heat off or lower at night, unless the target asks for it."),
                   QObject::tr("Heat without light, on a thermostat and always on.")}},
        {.cells = {QObject::tr("Humidity"),
                   QObject::tr("Less misting, less cover, more air. Wet spots out of the bed."),
                   QObject::tr("Damp the lower bed, mist, or cover more of the top, clear of lamps.")}},
        {.cells = {QObject::tr("UV index"), QObject::tr("Lamp higher. No animal until it is in its target."),
                   QObject::tr("Lamp lower within its clearance; a new one if it is worn out.")}}};
    content.blocks.push_back(std::move(table));
    content.blocks.push_back(
        Paragraph{QObject::tr("Heaters that glow, smell, hum or trip the residual-current device: plug out, and ask an "
                              "electrician. What to do is common practice, no source.")});
}

void add_proof(Content& content)
{
    constexpr double line_pt = 240.0;
    content.blocks.push_back(Blank{QObject::tr("All in target for seven days, from – to"), line_pt});
    content.blocks.push_back(Blank{QObject::tr("Proved by: name, date, signature"), line_pt});
}

} // namespace

Content proving_content(const Request& request, const words::Speaker& speaker)
{
    Content content = begun(Sheet::proving, request);
    content.pages = 1 + static_cast<int>(request.plan.enclosures.size());
    add_dangers(content, request, speaker);
    add_how(content);
    add_what_to_do(content, request.formatter);
    add_limits(content, request, speaker);
    add_proof(content);
    add_unknowns(content, Sheet::proving, request, speaker);
    for (std::size_t i = 0; i < request.plan.enclosures.size() && i < request.assessment.enclosures.size(); ++i) {
        content.blocks.push_back(NewPage{});
        add_log(content, request.plan.enclosures[i], request.assessment.enclosures[i], speaker);
    }
    return content;
}

} // namespace loam::sheets
