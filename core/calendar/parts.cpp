#include "core/calendar/parts.hpp"

namespace loam::calendar {

Task task(const Scope& scope, TaskCode code, Kind kind, const Kept* kept, std::string_view where)
{
    Task made;
    made.code = std::string(code.text);
    made.id = made.code + (where.empty() ? "" : "/" + std::string(where));
    made.kind = kind;
    made.enclosure = kept != nullptr ? kept->enclosure.id : std::string();
    made.where = std::string(where);
    made.first = scope.start;
    return made;
}

Task animal_task(const Scope& scope, TaskCode code, Kind kind, const Kept& kept, const plan::Animal& animal)
{
    Task made = task(scope, code, kind, &kept, animal.id);
    made.labels.push_back({"species", animal.species});
    return made;
}

void go_by(Task& task, const Scope& scope, std::string_view assumption)
{
    const catalog::Assumption* found = scope.catalog.find_assumption(assumption);
    const auto recurrence = found != nullptr ? every_days(found->spread.likely) : std::nullopt;
    if (!recurrence) {
        task.basis = Basis::not_known;
        return;
    }
    task.recurrence = *recurrence;
    task.basis = Basis::guidance;
    task.source = found->spread.source;
    task.interval_d = found->spread.range();
}

void begin_after_one(Task& task)
{
    task.first = next_after(task.recurrence, task.first).value_or(task.first);
}

const assess::Assumed* assumed_at(const assess::Assessment& assessment, std::string_view pointer)
{
    for (const assess::Assumed& one : assessment.assumed) {
        if (one.where == pointer) {
            return &one;
        }
    }
    return nullptr;
}

const assess::CoolSeasonResult* rest_of(const Kept& kept, std::string_view animal)
{
    for (const assess::CoolSeasonResult& one : kept.result.cool_seasons) {
        if (one.animal == animal && one.rest) {
            return &one;
        }
    }
    return nullptr;
}

std::vector<Task> around_rest(const Task& task, const assess::CoolSeasonResult* rest)
{
    if (rest == nullptr || (task.until && *task.until < rest->rest->begins) ||
        task.recurrence.frequency == Frequency::once) {
        return {task};
    }
    std::vector<Task> parts;
    if (task.first < rest->rest->begins) {
        Task before = task;
        before.until = rest->rest->begins - std::chrono::days(1);
        parts.push_back(before);
    }
    const auto again = season::ends(*rest->rest);
    if (!task.until || *task.until >= again) {
        Task after = task;
        after.id += "/after-rest";
        after.first = std::max(task.first, again);
        parts.push_back(after);
    }
    return parts;
}

} // namespace loam::calendar
