#include <algorithm>
#include <cmath>
#include <utility>

#include "core/calendar/parts.hpp"
#include "core/plan/names.hpp"

namespace loam::calendar {

namespace {

using std::chrono::sys_days;
using std::chrono::year_month_day;

bool same_times(const assess::LightTimes& one, const assess::LightTimes& other)
{
    return one.on == other.on && one.off == other.off; // the hours behind them differ by seconds
}

Task timer_task(const Scope& scope, const Kept& kept, const assess::LightTimes& times, const std::string& when)
{
    Task set = task(scope, "set-timer", Kind::equipment, &kept, kept.enclosure.id);
    set.id += '/' + when;
    set.basis = Basis::computed;
    set.labels = {{"on", times.on}, {"off", times.off}};
    return set;
}

// With lamps that follow the sky the timer is set on the first day, and anew where the times change, every year alike.
void add_timer(std::vector<Task>& tasks, const Scope& scope, const Kept& kept)
{
    std::vector<const assess::LightDay*> days;
    for (const assess::LightDay& day : kept.result.light_year) {
        if (day.by_the_sky) {
            days.push_back(&day);
        }
    }
    if (!kept.result.light_with_the_sky || days.empty()) {
        return;
    }
    const year_month_day start(scope.start);
    const auto in = [](const assess::LightDay& day, std::chrono::year year) {
        return sys_days(year / day.month / day.day);
    };
    const assess::LightDay* now = days.back(); // before the first of January those of December go on
    const assess::LightDay* before = days.back();
    for (const assess::LightDay* day : days) {
        now = in(*day, start.year()) <= scope.start ? day : now;
        if (!same_times(*before->by_the_sky, *day->by_the_sky)) {
            Task set =
                timer_task(scope, kept, *day->by_the_sky, std::to_string(day->month) + '-' + std::to_string(day->day));
            const sys_days this_year = in(*day, start.year());
            set.first = this_year > scope.start ? this_year : in(*day, start.year() + std::chrono::years(1));
            set.recurrence = {.frequency = Frequency::yearly};
            tasks.push_back(set);
        }
        before = day;
    }
    tasks.push_back(timer_task(scope, kept, *now->by_the_sky, "first"));
}

bool anything_plugged_in(const plan::Plan& plan)
{
    return std::any_of(plan.enclosures.begin(), plan.enclosures.end(),
                       [](const plan::Enclosure& one) { return !one.equipment.empty(); });
}

// No test where all strips are stated to have no such device; that is a finding of its own.
bool may_have_residual_current_device(const plan::Plan& plan)
{
    const auto& strips = plan.site.strips;
    return strips.empty() || std::any_of(strips.begin(), strips.end(), [](const plan::Strip& strip) {
               return strip.residual_current_protected.value_or(true);
           });
}

// One filter serves all enclosures.
void add_cartridges(std::vector<Task>& tasks, const Scope& scope)
{
    double a_year = 0.0;
    for (const assess::EnclosureResult& one : scope.assessment.enclosures) {
        a_year += one.water.cartridges_per_year ? one.water.cartridges_per_year->likely : 0.0;
    }
    const plan::Water& water = scope.plan.site.water;
    if (!water.source || *water.source == plan::WaterSource::tap) {
        return;
    }
    Task change = task(scope, "change-cartridge", Kind::replacement, nullptr, {});
    if (water.cartridge_l) {
        change.amounts.push_back({"life", exactly(*water.cartridge_l), "l"});
    }
    constexpr double days_a_year = 365.25;
    constexpr double days_a_month = days_a_year / 12.0;
    const double life_d = a_year > 0.0 ? days_a_year / a_year : 0.0;
    // In whole months where it lasts some, rounded down: never longer than it is good for.
    const double interval_d =
        life_d < days_a_month ? std::max(1.0, std::floor(life_d)) : std::floor(life_d / days_a_month) * days_a_month;
    const auto recurrence = a_year > 0.0 ? every_days(interval_d) : std::nullopt;
    if (recurrence) {
        change.recurrence = *recurrence;
        change.basis = Basis::computed;
        change.interval_d = exactly(life_d);
        begin_after_one(change);
    } else {
        change.basis = Basis::not_known;
    }
    tasks.push_back(change);
}

} // namespace

std::vector<Task> enclosure_equipment_tasks(const Scope& scope, const Kept& kept)
{
    std::vector<Task> tasks;
    for (const plan::Device& device : kept.enclosure.equipment) {
        if (device.control.kind == plan::ControlKind::thermostat) {
            Task test = task(scope, "test-thermostat", Kind::equipment, &kept, device.id);
            if (device.control.setpoint_c) {
                test.amounts.push_back({"setpoint", exactly(*device.control.setpoint_c), "degC"});
            }
            go_by(test, scope, "equipment.test_thermostat_days");
            tasks.push_back(test);
        }
        const catalog::DeviceTraits* traits = scope.catalog.find_device(plan::name_of(device.kind));
        if (traits != nullptr && traits->emits_uv) {
            Task read = task(scope, "read-uv", Kind::equipment, &kept, device.id);
            go_by(read, scope, "light.read_uv_days");
            tasks.push_back(read);
        }
    }
    add_timer(tasks, scope, kept);
    return tasks;
}

std::vector<Task> site_equipment_tasks(const Scope& scope)
{
    std::vector<Task> tasks;
    const auto add = [&](TaskCode code, std::string_view assumption) -> Task& {
        Task one = task(scope, code, Kind::equipment, nullptr, {});
        go_by(one, scope, assumption);
        return tasks.emplace_back(std::move(one));
    };
    if (anything_plugged_in(scope.plan)) {
        if (may_have_residual_current_device(scope.plan)) {
            add("test-residual-current", "equipment.test_residual_current_days");
        }
        add("test-smoke-alarm", "room.test_smoke_alarm_days");
    }
    if (!scope.plan.enclosures.empty()) {
        begin_after_one(add("change-batteries", "equipment.battery_days"));
    }
    add_cartridges(tasks, scope);
    return tasks;
}

} // namespace loam::calendar
