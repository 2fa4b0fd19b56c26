// The card that hangs beside the enclosure: what it should read, what is done how often, what to do when something
// fails.
#include <QObject>
#include <algorithm>

#include "app/sheets/care_parts.hpp"
#include "app/words/capitals.hpp"
#include "app/words/courses.hpp"
#include "app/words/tasks.hpp"
#include "app/words/verdicts.hpp"

namespace loam::sheets {

namespace {

using calendar::Frequency;
using calendar::Task;
using words::Quantity;

const assess::HeatCase* heat_case(const assess::EnclosureResult& enclosure, std::string_view id)
{
    for (const assess::HeatCase& one : enclosure.heat) {
        if (one.id == id) {
            return &one;
        }
    }
    return nullptr;
}

void add_heat_rows(Table& table, const assess::EnclosureResult& enclosure, std::string_view id, const Request& request)
{
    const assess::HeatCase* found = heat_case(enclosure, id);
    if (found == nullptr) {
        return;
    }
    for (const assess::ZoneResult& zone : found->zones) {
        const bool night = id.ends_with("night");
        const QString name = words::capitalised(words::zone(zone.zone));
        table.rows.push_back({.cells = {night ? QObject::tr("%1, night").arg(name) : name,
                                        words::capitalised(words::instrument(zone.measure)),
                                        request.formatter.target(zone.target_c, Quantity::temperature),
                                        {}}});
    }
}

void add_targets(Content& content, const assess::EnclosureResult& enclosure, const plan::Enclosure& planned,
                 const Request& request, const words::Speaker& speaker)
{
    Table table{{{QObject::tr("Place"), 1.8, false},
                 {QObject::tr("Read with"), 3.7, false},
                 {QObject::tr("Should be"), 1.4, true},
                 {QObject::tr("My reading"), 1.2, false}},
                {}};
    add_heat_rows(table, enclosure, "winter-day", request);
    add_heat_rows(table, enclosure, "winter-night", request);
    if (!enclosure.humidity.empty()) {
        table.rows.push_back({.cells = {QObject::tr("Humidity, cool side"),
                                        QObject::tr("Hygrometer at ground level"),
                                        request.formatter.target(enclosure.humidity.front().target, Quantity::fraction),
                                        {}}});
    }
    for (const plan::Device& device : planned.equipment) {
        if (device.control.kind == plan::ControlKind::thermostat && device.control.setpoint_c) {
            table.rows.push_back({.cells = {QObject::tr("Thermostat"),
                                            words::capitalised(speaker.name_of(device.id)),
                                            request.formatter.value(*device.control.setpoint_c, Quantity::temperature),
                                            {}}});
        }
    }
    if (planned.photoperiod) {
        const QString times = enclosure.light_with_the_sky ? QObject::tr("see the year")
                                                           : QObject::tr("%1 to %2")
                                                                 .arg(QString::fromStdString(planned.photoperiod->on),
                                                                      QString::fromStdString(planned.photoperiod->off));
        table.rows.push_back({.cells = {QObject::tr("Lamps"), QObject::tr("Timer"), times, {}}});
    }
    content.blocks.push_back(std::move(table));
    if (!planned.photoperiod) {
        content.blocks.push_back(Blank{QObject::tr("Lamps on and off")});
    }
    for (const plan::Device& device : planned.equipment) {
        if (device.control.kind == plan::ControlKind::thermostat && !device.control.setpoint_c) {
            content.blocks.push_back(Blank{QObject::tr("Set-point of %1").arg(speaker.name_of(device.id))});
        }
    }
}

// Under which heading a task stands; nothing for what comes round less than once a month.
enum class Round { daily, weekly, monthly, rarely };

Round round_of(const Task& task)
{
    const calendar::Recurrence& recurrence = task.recurrence;
    switch (recurrence.frequency) {
    case Frequency::daily:
        return recurrence.every == 1 ? Round::daily : Round::weekly;
    case Frequency::weekly:
        return Round::weekly;
    case Frequency::monthly:
        return recurrence.every == 1 ? Round::monthly : Round::rarely;
    case Frequency::once:
    case Frequency::yearly:
        break;
    }
    return Round::rarely;
}

QString round_title(Round round)
{
    switch (round) {
    case Round::daily:
        return QObject::tr("Every day");
    case Round::weekly:
        return QObject::tr("Every week, and at intervals of some days");
    case Round::monthly:
        return QObject::tr("Every month");
    case Round::rarely:
        break;
    }
    return {};
}

Row row_of(const Task& task, const words::Speaker& speaker)
{
    QString title = words::task_title(task, speaker);
    if (!(task.recurrence == calendar::Recurrence{.frequency = Frequency::daily})) {
        title += QStringLiteral("\n") + words::capitalised(words::task_when(task, speaker.formatter()));
    }
    return {.cells = {title, words::task_advice(task, speaker)}, .tick = true};
}

std::vector<const Task*> in_round(const std::vector<Task>& tasks, const std::string& enclosure, Round round)
{
    std::vector<const Task*> found;
    for (const Task& task : tasks) {
        if (task.enclosure == enclosure && round_of(task) == round) {
            found.push_back(&task);
        }
    }
    return found;
}

void add_rounds(Content& content, const std::vector<Task>& tasks, const std::string& enclosure,
                const words::Speaker& speaker)
{
    Table often{{{QObject::tr("What"), 2.0, false}, {QObject::tr("How"), 4.8, false}}, {}};
    for (const Round round : {Round::daily, Round::weekly}) {
        const auto found = in_round(tasks, enclosure, round);
        if (!found.empty()) {
            often.rows.push_back({.cells = {round_title(round)}, .group = true});
        }
        for (const Task* task : found) {
            often.rows.push_back(row_of(*task, speaker));
        }
    }
    // What comes once a month has its sentence in the calendar; the card has to fit beside the enclosure.
    Table monthly{{{round_title(Round::monthly), 4.6, false}, {QObject::tr("Last done on"), 2.2, false}}, {}};
    for (const Task* task : in_round(tasks, enclosure, Round::monthly)) {
        monthly.rows.push_back({.cells = {words::task_title(*task, speaker), {}}, .tick = true});
    }
    for (Table* table : {&often, &monthly}) {
        if (!table->rows.empty()) {
            content.blocks.push_back(std::move(*table));
        }
    }
    for (const Task& task : tasks) {
        if (task.enclosure == enclosure && task.basis == calendar::Basis::not_known) {
            content.blocks.push_back(Blank{words::task_title(task, speaker)});
        }
    }
}

void add_power_cut(Content& content, const Request& request, const words::Speaker& speaker)
{
    content.blocks.push_back(Heading{QObject::tr("When the power fails")});
    content.blocks.push_back(Paragraph{words::course_advice("power-cut")});
    for (const assess::EnclosureResult& enclosure : request.assessment.enclosures) {
        QStringList sentences;
        for (const assess::CourseResult& drill : enclosure.drills) {
            if (drill.id != "power-cut" || drill.course.points.empty()) {
                continue;
            }
            for (const assess::TimeToLimit& limit : drill.limits) {
                if (limit.direction == Direction::below) {
                    sentences << words::limit_sentence(limit, drill.course.points.back().hour, speaker);
                }
            }
        }
        const QString name = speaker.name_of(enclosure.id);
        content.blocks.push_back(
            sentences.isEmpty() ? Block(Blank{QObject::tr("%1: hours until it is too cold, not known").arg(name)})
                                : Block(Paragraph{QObject::tr("%1: %2").arg(name, sentences.join(QLatin1Char(' ')))}));
    }
}

// Signs by common practice and from memory, no source; what they mean is a vet's matter.
void add_vet(Content& content)
{
    Together vet{QObject::tr("When to call a reptile vet"), {}};
    vet.cautions.push_back(
        {QObject::tr("The same day: breathing with an open mouth or with bubbles; a prolapse; a burn; a leg that "
                     "bears no weight; swollen eyes in an animal that hardly moves; a soft jaw or trembling; bleeding; "
                     "a fall on the shell.")});
    vet.cautions.push_back(
        {QObject::tr("Within days: no food for two weeks (a snake outside its shed: four to six); a tenth of the "
                     "weight lost; shed skin left on eyes or toes; watery droppings for two days; a shell that "
                     "softens.")});
    content.blocks.push_back(std::move(vet));
    content.blocks.push_back(Blank{QObject::tr("Reptile vet, telephone")});
    content.blocks.push_back(Blank{QObject::tr("At night and on holidays")});
    content.blocks.push_back(Blank{QObject::tr("Who looks after them when I am away")});
}

} // namespace

Content running_content(const Request& request, const words::Speaker& speaker)
{
    Content content = begun(Sheet::running, request);
    content.pages = 1 + static_cast<int>(request.plan.enclosures.size());
    add_dangers(content, request, speaker);
    const std::vector<Task> tasks = tasks_of(request);
    const std::size_t count = std::min(request.plan.enclosures.size(), request.assessment.enclosures.size());
    for (std::size_t i = 0; i < count; ++i) {
        const plan::Enclosure& planned = request.plan.enclosures[i];
        content.blocks.push_back(Heading{speaker.name_of(planned.id)});
        add_targets(content, request.assessment.enclosures[i], planned, request, speaker);
        add_rounds(content, tasks, planned.id, speaker);
    }
    content.blocks.push_back(Heading{QObject::tr("For the whole room")});
    add_rounds(content, tasks, {}, speaker);
    content.blocks.push_back(Paragraph{words::hands_advice()});
    add_power_cut(content, request, speaker);
    add_vet(content);
    add_unknowns(content, Sheet::running, request, speaker);
    add_cautions(content, Sheet::running);
    return content;
}

} // namespace loam::sheets
