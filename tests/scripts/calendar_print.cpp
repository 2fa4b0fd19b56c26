// Tasks made by hand, at the edges of the calendar and with hostile texts: "ics" prints them as an iCalendar file,
// "days" each task's own days from 2027 to 2033 as "<uid> <YYYY-MM-DD>", one a line.
#include <QTextStream>
#include <cstdio>
#include <cstring>

#include "app/report/calendar_ics.hpp"
#include "core/assess/iso_day.hpp"

namespace {

using namespace loam;
using namespace loam::calendar;
using namespace std::chrono_literals;

// A name that would begin an event of its own, were it written as it stands.
const char* const hostile = "Box\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nSUMMARY:injected;x,y\\z \x01 "
                            "Grüße 🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢🐢";

Task made(int number, std::chrono::sys_days first, const Recurrence& recurrence,
          std::optional<std::chrono::sys_days> until = std::nullopt)
{
    Task task;
    task.code = "spot-clean";
    task.id = "spot-clean/" + std::to_string(number);
    task.enclosure = "e1";
    task.first = first;
    task.recurrence = recurrence;
    task.until = until;
    task.wash_hands = true;
    return task;
}

std::vector<Task> edge_cases()
{
    using enum Frequency;
    std::vector<Task> tasks;
    const auto add = [&](std::chrono::sys_days first, const Recurrence& recurrence,
                         std::optional<std::chrono::sys_days> until = std::nullopt) {
        tasks.push_back(made(static_cast<int>(tasks.size()) + 1, first, recurrence, until));
    };
    for (const int every : {1, 2, 3, 9}) {
        for (const auto day : {1, 28, 29, 30, 31}) {
            add(2027y / 1 / day, {.frequency = monthly, .every = every});
            add(2028y / 1 / day, {.frequency = monthly, .every = every});
        }
    }
    add(2028y / 2 / 29, {.frequency = monthly});
    add(2028y / 2 / 29, {.frequency = yearly});
    add(2028y / 2 / 29, {.frequency = yearly, .every = 3});
    add(2027y / 2 / 28, {.frequency = yearly});
    add(2027y / 12 / 31, {.frequency = yearly});
    add(2027y / 3 / 27, {.frequency = daily}); // clocks change on 28 March 2027 in Europe, on 14 March in America
    add(2027y / 10 / 30, {.frequency = daily, .every = 10});
    add(2027y / 3 / 14, {.frequency = weekly, .every = 2});
    for (int day = 1; day <= 7; ++day) {
        for (const double rate : {2.0 / 7.0, 3.0 / 7.0, 5.0 / 7.0, 6.0 / 7.0}) {
            const std::chrono::sys_days first = 2027y / 2 / day;
            add(first, *times_per_day(rate, first));
        }
    }
    add(2027y / 1 / 31, {.frequency = monthly}, 2027y / 4 / 30);
    add(2027y / 1 / 31, {.frequency = daily}, 2027y / 2 / 1);
    add(2027y / 6 / 1, {});
    return tasks;
}

} // namespace

int main(int count, char** words)
{
    plan::Plan plan;
    plan.title = hostile;
    plan.enclosures.resize(1);
    plan.enclosures[0].id = "e1";
    plan.enclosures[0].name = hostile;
    const catalog::Catalog catalog;
    const words::Speaker speaker(words::Formatter(), plan, catalog);
    const std::vector<Task> tasks = edge_cases();
    if (count > 1 && std::strcmp(words[1], "ics") == 0) {
        const QByteArray text = report::calendar_ics(tasks, {plan.title, 2026y / 11 / 25}, speaker);
        std::fwrite(text.constData(), 1, static_cast<std::size_t>(text.size()), stdout);
        return 0;
    }
    for (const Task& task : tasks) {
        for (const auto day : days_of(task, 2027y / 1 / 1, 2033y / 12 / 31)) {
            std::printf("%s %s\n", report::uid_of(task, plan.title).toUtf8().constData(), assess::iso_of(day).c_str());
        }
    }
    return 0;
}
