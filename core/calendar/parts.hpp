// Internal to core/calendar: what the makers of tasks share.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/assess/codes.hpp"
#include "core/calendar/care_tasks.hpp"
#include "core/calendar/task_codes.hpp"

namespace loam::calendar {

struct Scope {
    const plan::Plan& plan;
    const assess::Assessment& assessment;
    const catalog::Catalog& catalog;
    std::chrono::sys_days start;
};

// An enclosure with what was concluded of it.
struct Kept {
    const plan::Enclosure& enclosure;
    const assess::EnclosureResult& result;
    std::string pointer; // "/enclosures/0"
};

// A literal that is checked against task_codes when it is compiled.
struct TaskCode {
    std::string_view text;
    consteval TaskCode(const char* literal) : text(literal)
    {
        if (!assess::is_listed(task_codes, text)) {
            throw "this task code is not in task_codes";
        }
    }
};

// A task of an element (of the enclosure itself where `where` is its id), once on the first day.
Task task(const Scope& scope, TaskCode code, Kind kind, const Kept* kept, std::string_view where);

// The same of a group of animals, whose species is told too.
Task animal_task(const Scope& scope, TaskCode code, Kind kind, const Kept& kept, const plan::Animal& animal);

// Sets how often by an assumption of the catalog in days, from the task's first day on, or says that it is not known.
void go_by(Task& task, const Scope& scope, std::string_view assumption);

// Puts off a task that was done on the first day, when all was new, to the next of its days.
void begin_after_one(Task& task);

// The bracket and the source of an input that the plan leaves open; nullptr: it is stated.
const assess::Assumed* assumed_at(const assess::Assessment& assessment, std::string_view pointer);

std::vector<Task> water_tasks(const Scope& scope, const Kept& kept);
std::vector<Task> cleaning_tasks(const Scope& scope, const Kept& kept);
std::vector<Task> animal_tasks(const Scope& scope, const Kept& kept);
std::vector<Task> food_tasks(const Scope& scope, const Kept& kept);
std::vector<Task> rest_tasks(const Scope& scope, const Kept& kept);
std::vector<Task> enclosure_equipment_tasks(const Scope& scope, const Kept& kept);
std::vector<Task> site_equipment_tasks(const Scope& scope);
std::vector<Task> replacement_tasks(const Scope& scope);
std::vector<Task> paper_tasks(const Scope& scope);

// The rest of this group of animals, where one is planned.
const assess::CoolSeasonResult* rest_of(const Kept& kept, std::string_view animal);
// In two parts where a rest lies within it: until it begins, and from its end on.
std::vector<Task> around_rest(const Task& task, const assess::CoolSeasonResult* rest);

} // namespace loam::calendar
