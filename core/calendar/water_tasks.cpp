#include <algorithm>
#include <cmath>

#include "core/calendar/parts.hpp"

namespace loam::calendar {

namespace {

using std::chrono::sys_days;

constexpr double least_l = 0.005; // a teaspoon: less is not poured

Range at_least_nothing(const Range& range)
{
    return {std::max(0.0, range.low), std::max(0.0, range.likely), std::max(0.0, range.high)};
}

// Whether the plan states it, or whose bracket was taken.
void set_basis(Task& task, const Scope& scope, const std::string& pointer)
{
    if (const assess::Assumed* assumed = assumed_at(scope.assessment, pointer)) {
        task.basis = Basis::guidance;
        task.source = assumed->source;
    } else {
        task.basis = Basis::stated;
    }
}

void add_changes(std::vector<Task>& tasks, const Scope& scope, const Kept& kept)
{
    const assess::WaterResult& water = kept.result.water;
    if (!(water.bowl_l.high > 0.0)) {
        return;
    }
    Task change = task(scope, "change-water", Kind::water, &kept, kept.enclosure.id);
    change.amounts.push_back({"water", water.bowl_l, "l"});
    if (water.conditioner_ml_per_fill && water.conditioner_ml_per_fill->high > 0.0) {
        change.amounts.push_back({"conditioner", *water.conditioner_ml_per_fill, "ml"});
    }
    change.wash_hands = true;
    const auto recurrence = times_per_day(water.changes_per_day.likely, scope.start);
    if (recurrence) {
        change.recurrence = *recurrence;
        set_basis(change, scope, kept.pointer + "/moisture/water_changes_per_day");
    } else {
        change.basis = Basis::not_known;
    }
    tasks.push_back(change);
    if (recurrence && recurrence->frequency != Frequency::daily) { // else the change tops up too
        Task top_up = task(scope, "top-up-bowls", Kind::water, &kept, kept.enclosure.id);
        top_up.amounts.push_back({"water", water.top_up_l_per_day, "l"});
        top_up.recurrence = {.frequency = Frequency::daily};
        top_up.basis = Basis::computed;
        top_up.wash_hands = true;
        tasks.push_back(top_up);
    }
}

void add_misting(std::vector<Task>& tasks, const Scope& scope, const Kept& kept)
{
    const Range& misted = kept.result.water.misted_l_per_day;
    const auto& equipment = kept.enclosure.equipment;
    const bool by_device = std::any_of(equipment.begin(), equipment.end(), [](const plan::Device& device) {
        return device.kind == plan::DeviceKind::mister;
    });
    for (const plan::Device& device : equipment) {
        if (device.kind == plan::DeviceKind::mister) {
            Task clean = task(scope, "clean-mister", Kind::cleaning, &kept, device.id);
            clean.amounts.push_back({"water", misted, "l"});
            clean.wash_hands = true;
            go_by(clean, scope, "equipment.clean_mister_days");
            tasks.push_back(clean);
        }
    }
    if (by_device || !(misted.high > least_l)) {
        return;
    }
    Task mist = task(scope, "mist", Kind::water, &kept, kept.enclosure.id);
    mist.amounts.push_back({"water", misted, "l"});
    mist.recurrence = {.frequency = Frequency::daily};
    if (const auto times = kept.enclosure.moisture.mistings_per_day; times && *times > 0) {
        mist.recurrence.times_a_day = static_cast<int>(*times);
        mist.amounts.push_back({"times", exactly(static_cast<double>(*times)), "1"});
    }
    set_basis(mist, scope, kept.pointer + "/moisture/misting_l_per_day");
    tasks.push_back(mist);
}

// As rarely as once a week, but never later than the bed holds its humidity in the worse season.
int days_between_waterings(const Kept& kept)
{
    std::optional<double> holds_d;
    for (const assess::DrySpellResult& spell : kept.result.dry_spells) {
        if (spell.days) {
            holds_d = std::min(holds_d.value_or(spell.days->low), spell.days->low);
        }
    }
    constexpr int longest = 7;
    if (!holds_d) {
        return 1; // not known: look every day
    }
    return std::clamp(static_cast<int>(std::floor(*holds_d)), 1, longest);
}

void add_bed(std::vector<Task>& tasks, const Scope& scope, const Kept& kept)
{
    const auto& bed = kept.result.water.bed_l_per_day;
    if (!bed || !(bed->likely > least_l)) {
        return;
    }
    const int days = days_between_waterings(kept);
    Task water = task(scope, "water-bed", Kind::water, &kept, kept.enclosure.id);
    const Range daily = at_least_nothing(*bed);
    water.amounts.push_back({"water", {daily.low * days, daily.likely * days, daily.high * days}, "l"});
    water.recurrence = *every_days(days);
    water.basis = Basis::computed;
    water.wash_hands = true;
    tasks.push_back(water);
}

} // namespace

std::vector<Task> water_tasks(const Scope& scope, const Kept& kept)
{
    std::vector<Task> tasks;
    add_changes(tasks, scope, kept);
    add_misting(tasks, scope, kept);
    add_bed(tasks, scope, kept);
    return tasks;
}

} // namespace loam::calendar
