#include "core/calendar/care_tasks.hpp"

#include <cmath>
#include <iterator>

#include "core/calendar/parts.hpp"

namespace loam::calendar {

namespace {

void append(std::vector<Task>& all, std::vector<Task> some)
{
    all.insert(all.end(), std::make_move_iterator(some.begin()), std::make_move_iterator(some.end()));
}

// The earliest that the governing rule is broken by growth, from the assessment's day.
void add_outgrown(std::vector<Task>& tasks, const Scope& scope, const Kept& kept)
{
    const auto& years = kept.result.space.outgrown_in_years;
    constexpr double days_a_year = 365.25;
    constexpr double furthest = 60.0;
    if (!years || !(*years > 0.0) || *years > furthest) {
        return;
    }
    Task grown = task(scope, "outgrown", Kind::animal, &kept, kept.enclosure.id);
    grown.first = std::max(scope.start, std::chrono::sys_days(scope.assessment.date) +
                                            std::chrono::days(static_cast<int>(*years * days_a_year)));
    grown.basis = Basis::computed;
    tasks.push_back(grown);
}

} // namespace

std::vector<std::chrono::sys_days> days_of(const Task& task, std::chrono::sys_days from, std::chrono::sys_days until)
{
    return days_of(task.recurrence, task.first, from, task.until ? std::min(until, *task.until) : until);
}

std::vector<Task> care_tasks(const plan::Plan& plan, const assess::Assessment& assessment,
                             const catalog::Catalog& catalog, std::chrono::sys_days start)
{
    const Scope scope{plan, assessment, catalog, start};
    std::vector<Task> tasks;
    for (std::size_t i = 0; i < plan.enclosures.size() && i < assessment.enclosures.size(); ++i) {
        const Kept kept{plan.enclosures[i], assessment.enclosures[i], "/enclosures/" + std::to_string(i)};
        append(tasks, animal_tasks(scope, kept));
        append(tasks, water_tasks(scope, kept));
        append(tasks, food_tasks(scope, kept));
        append(tasks, cleaning_tasks(scope, kept));
        append(tasks, enclosure_equipment_tasks(scope, kept));
        append(tasks, rest_tasks(scope, kept));
        add_outgrown(tasks, scope, kept);
    }
    append(tasks, site_equipment_tasks(scope));
    append(tasks, replacement_tasks(scope));
    append(tasks, paper_tasks(scope));
    return tasks;
}

} // namespace loam::calendar
