#include <QObject>
#include <algorithm>

#include "app/sheets/contents.hpp"
#include "app/sheets/targets.hpp"
#include "app/words/capitals.hpp"
#include "app/words/courses.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/context.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

// One enclosure of the plan with what was worked out of it.
struct Housed {
    const plan::Enclosure& enclosure;
    const assess::EnclosureResult& result;
};

QString water_task(const assess::WaterResult& water, const words::Formatter& formatter)
{
    const QString often = formatter.span(water.changes_per_day, Quantity::number);
    return water.bowl_l.high > 0.0 ? QObject::tr("Fresh water, bowl scrubbed; times a day: %1, about %2 each")
                                         .arg(often, formatter.about(water.bowl_l.likely, Quantity::volume))
                                   : QObject::tr("Fresh water, bowl scrubbed; times a day: %1").arg(often);
}

QStringList daily_tasks(const Housed& housed, const words::Formatter& formatter)
{
    const std::int64_t animals = assess::animal_count(housed.enclosure);
    QStringList tasks{
        animals == 1
            ? QObject::tr("The animal is there and well. Lamps on and off as below")
            : QObject::tr("All %1 animals are there and well. Lamps on and off as below").arg(formatter.count(animals)),
        QObject::tr("Thermometers read what the table says"), water_task(housed.result.water, formatter)};
    const double misted_l = housed.enclosure.moisture.misting_l_per_day.value_or(0.0);
    if (misted_l > 0.0) {
        tasks << QObject::tr("Mist, or see that the mister did: %1 a day")
                     .arg(formatter.value(misted_l, Quantity::volume));
    }
    return tasks << QObject::tr("Food as portioned; the rest out the same day")
                 << QObject::tr("Droppings out, doors locked, hands washed");
}

void add_tasks(Content& content, const Housed& housed, const words::Formatter& formatter)
{
    Table table{{{QObject::tr("Every day"), 5.4, false}}, {}, true};
    for (const QString& day : {QObject::tr("Mon"), QObject::tr("Tue"), QObject::tr("Wed"), QObject::tr("Thu"),
                               QObject::tr("Fri"), QObject::tr("Sat"), QObject::tr("Sun")}) {
        table.columns.push_back({day, 0.55, false});
    }
    for (const QString& task : daily_tasks(housed, formatter)) {
        table.rows.push_back({.cells = {task}});
    }
    content.blocks.push_back(std::move(table));
    constexpr double line_pt = 290.0;
    add_cells(content, {QObject::tr("Food"), QObject::tr("How much"), QObject::tr("Which days")}, 2);
    content.blocks.push_back(Blank{QObject::tr("Where food and spare lamps lie"), line_pt});
}

void add_targets(Content& content, const Housed& housed, const words::Formatter& formatter)
{
    Table table{{{QObject::tr("Thermometer"), 2.6, false},
                 {QObject::tr("By day"), 1.6, false},
                 {QObject::tr("At night"), 1.6, false}},
                {}};
    for (const assess::Zone zone : zones_of(housed.result)) {
        table.rows.push_back(
            {.cells = {column_head(housed.result, zone), target_of(housed.result, "winter-day", zone, formatter),
                       target_of(housed.result, "winter-night", zone, formatter)}});
    }
    const QString humidity = humidity_target_of(housed.result, "winter-day", formatter);
    if (!humidity.isEmpty()) {
        table.rows.push_back({.cells = {QObject::tr("Humidity, cool side"), humidity,
                                        humidity_target_of(housed.result, "winter-night", formatter)}});
    }
    if (!table.rows.empty()) {
        content.blocks.push_back(std::move(table));
    }
    QStringList settings;
    if (const auto& hours = housed.enclosure.photoperiod) {
        settings << QObject::tr("lamps on %1, off %2")
                        .arg(QString::fromStdString(hours->on), QString::fromStdString(hours->off));
    }
    for (const plan::Device& device : housed.enclosure.equipment) {
        const plan::Control& control = device.control;
        if (control.kind == plan::ControlKind::thermostat) {
            settings << QObject::tr("%1: thermostat at %2")
                            .arg(words::device_kind(device.kind),
                                 control.setpoint_c ? formatter.value(*control.setpoint_c, Quantity::temperature)
                                                    : cell_blank());
        } else if (control.kind == plan::ControlKind::dimmer) {
            settings << QObject::tr("%1: dimmer at %2")
                            .arg(words::device_kind(device.kind),
                                 control.level ? formatter.value(*control.level, Quantity::fraction) : cell_blank());
        }
    }
    if (!settings.isEmpty()) {
        content.blocks.push_back(
            Paragraph{QObject::tr("Set, and not to be turned: %1.").arg(settings.join(QObject::tr("; ")))});
    }
}

const assess::CourseResult* drill(const assess::EnclosureResult& result, std::string_view id)
{
    const auto found =
        std::find_if(result.drills.begin(), result.drills.end(), [&](const auto& one) { return one.id == id; });
    return found == result.drills.end() || !found->course.complete || found->course.points.size() < 2 ? nullptr
                                                                                                      : &*found;
}

// How long it is safe, from the unfavourable end; only the limit on this drill's side.
QStringList safe_times(const assess::CourseResult& course, Direction direction, const words::Speaker& speaker)
{
    QStringList sentences;
    const double whole_h = course.course.points.back().hour;
    for (const assess::TimeToLimit& limit : course.limits) {
        if (limit.direction == direction) {
            sentences << words::limit_sentence(limit, whole_h, speaker);
        }
    }
    return sentences;
}

void add_fault(Content& content, const Housed& housed, const char* id, const QString& what_to_do,
               const words::Speaker& speaker)
{
    const assess::CourseResult* course = drill(housed.result, id);
    QString name = words::capitalised(words::course_name(id));
    if (course != nullptr) {
        name = QObject::tr("%1, room at %2")
                   .arg(name, speaker.formatter().value(course->course.points.back().room_c, Quantity::temperature));
    }
    const QStringList times = course != nullptr ? safe_times(*course, Direction::below, speaker) : QStringList();
    content.blocks.push_back(Caution{QObject::tr("%1. %2").arg(
        name, times.isEmpty() ? what_to_do : times.join(QStringLiteral(" ")) + QStringLiteral(" ") + what_to_do)});
    if (times.isEmpty()) {
        content.blocks.push_back(Blank{QObject::tr("Safe for how many hours: not known, ask the keeper")});
    }
}

void add_faults(Content& content, const Housed& housed, const words::Speaker& speaker)
{
    content.blocks.push_back(Heading{QObject::tr("When something fails")});
    add_fault(
        content, housed, "power-cut",
        QObject::tr("Keep it shut, lamps and heaters off at the plug, blankets round the box; off with them before "
                    "the power comes on. Bottles of warm water in cloth at one side. Never a flame."),
        speaker);
    add_fault(content, housed, "lamp-out",
              QObject::tr("Plug out, let it cool, put in the spare of the same kind and power. No spare: a warm room."),
              speaker);
    content.blocks.push_back(
        Caution{QObject::tr("Too hot, smoke, or something trips: plug out, open up, call the keeper. Don't reach into "
                            "wet wiring.")});
}

void add_help(Content& content)
{
    content.blocks.push_back(Heading{QObject::tr("Whom to call")});
    content.blocks.push_back(Paragraph{
        QObject::tr("A vet at once: gaping or bubbling breath, bleeding, burns, something hanging out behind, "
                    "tremor, limp, a fall. Within a day: swollen eyes, watery droppings for two days, not "
                    "eating or moving as the keeper said. Don't treat it yourself.")});
    add_cells(content, {QObject::tr("Keeper; back on"), QObject::tr("Reptile vet"), QObject::tr("Vet at night"),
                        QObject::tr("Someone else")});
}

} // namespace

// One page for each enclosure: whoever stands in has one box before them.
Content holiday_content(const Request& request, const words::Speaker& speaker)
{
    Content content = begun(Sheet::holiday, request);
    content.pages = static_cast<int>(request.plan.enclosures.size());
    for (std::size_t i = 0; i < request.plan.enclosures.size() && i < request.assessment.enclosures.size(); ++i) {
        const Housed housed{request.plan.enclosures[i], request.assessment.enclosures[i]};
        if (i > 0) {
            content.blocks.push_back(NewPage{});
        }
        if (request.plan.enclosures.size() > 1) {
            content.blocks.push_back(Heading{speaker.name_of(housed.enclosure.id)});
        }
        add_tasks(content, housed, request.formatter);
        add_targets(content, housed, request.formatter);
        add_faults(content, housed, speaker);
        add_help(content);
    }
    return content;
}

} // namespace loam::sheets
