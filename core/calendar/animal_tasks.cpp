#include "core/calendar/parts.hpp"

namespace loam::calendar {

namespace {

using std::chrono::days;

TaskCode body_check(catalog::Group group)
{
    switch (group) {
    case catalog::Group::lizard:
        return "check-lizard";
    case catalog::Group::snake:
        return "check-snake";
    case catalog::Group::frog:
        return "check-frog";
    case catalog::Group::land_turtle:
    case catalog::Group::tortoise:
        break;
    }
    return "check-shell";
}

std::optional<Range> bracket(const Scope& scope, std::string_view assumption)
{
    const catalog::Assumption* found = scope.catalog.find_assumption(assumption);
    return found != nullptr ? std::optional(found->spread.range()) : std::nullopt;
}

// Once, so many days after the first by the likely value of an assumption, which is told as the task's figure "days".
std::optional<Task> after(Task one, const Scope& scope, std::string_view assumption)
{
    const catalog::Assumption* found = scope.catalog.find_assumption(assumption);
    if (found == nullptr) {
        return std::nullopt;
    }
    one.first = scope.start + days(static_cast<int>(found->spread.likely));
    one.amounts.push_back({"days", found->spread.range(), "d"});
    one.source = found->spread.source;
    return one;
}

// Often while the animal is new, then at the usual interval.
void add_weighing(std::vector<Task>& tasks, const Scope& scope, const Kept& kept, const plan::Animal& animal)
{
    const auto settling = bracket(scope, "care.settling_days");
    Task often = animal_task(scope, "weigh-first", Kind::animal, kept, animal);
    Task usual = animal_task(scope, "weigh", Kind::animal, kept, animal);
    often.wash_hands = usual.wash_hands = true;
    go_by(usual, scope, "care.weigh_days");
    if (settling) {
        go_by(often, scope, "care.first_weigh_days");
        usual.first = scope.start + days(static_cast<int>(settling->likely));
        often.until = usual.first - days(1);
        tasks.push_back(often);
    }
    for (const Task& part : around_rest(usual, rest_of(kept, animal.id))) {
        tasks.push_back(part);
    }
}

void add_vet(std::vector<Task>& tasks, const Scope& scope, const Kept& kept, const plan::Animal& animal)
{
    if (auto first =
            after(animal_task(scope, "vet-first", Kind::health, kept, animal), scope, "health.first_vet_check_days")) {
        tasks.push_back(*first);
    }
    Task yearly = animal_task(scope, "vet-yearly", Kind::health, kept, animal);
    const catalog::Assumption* visits = scope.catalog.find_assumption("health.vet_visits_per_year");
    constexpr double days_a_year = 365.25;
    const auto recurrence = visits != nullptr && visits->spread.likely > 0.0
                                ? every_days(days_a_year / visits->spread.likely)
                                : std::nullopt;
    if (recurrence) {
        yearly.recurrence = *recurrence;
        yearly.amounts.push_back({"visits", visits->spread.range(), "1"});
        yearly.source = visits->spread.source;
        begin_after_one(yearly); // the check after arrival comes first
    } else {
        yearly.basis = Basis::not_known;
        yearly.amounts.push_back({"visits", exactly(1.0), "1"});
    }
    tasks.push_back(yearly);
}

} // namespace

std::vector<Task> animal_tasks(const Scope& scope, const Kept& kept)
{
    std::vector<Task> tasks;
    if (kept.enclosure.animals.empty()) {
        return tasks;
    }
    Task look = task(scope, "look-over", Kind::animal, &kept, kept.enclosure.id);
    go_by(look, scope, "care.look_over_days");
    tasks.push_back(look);
    for (const plan::Animal& animal : kept.enclosure.animals) {
        const catalog::Species* species = scope.catalog.find_species(animal.species);
        if (species == nullptr) {
            continue; // nothing is known of it; the assessment says so
        }
        if (species->group == catalog::Group::tortoise) {
            Task soak = animal_task(scope, "soak", Kind::animal, kept, animal);
            soak.wash_hands = true;
            go_by(soak, scope, "care.soak_days");
            for (const Task& part : around_rest(soak, rest_of(kept, animal.id))) {
                tasks.push_back(part);
            }
        }
        add_weighing(tasks, scope, kept, animal);
        Task check = animal_task(scope, body_check(species->group), Kind::animal, kept, animal);
        check.wash_hands = true;
        go_by(check, scope, "care.body_check_days");
        tasks.push_back(check);
        add_vet(tasks, scope, kept, animal);
    }
    if (auto end = after(task(scope, "quarantine-end", Kind::health, &kept, kept.enclosure.id), scope,
                         "health.quarantine_days")) {
        tasks.push_back(*end);
    }
    return tasks;
}

} // namespace loam::calendar
