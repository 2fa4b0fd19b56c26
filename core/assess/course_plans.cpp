#include <algorithm>
#include <cmath>

#include "core/assess/courses.hpp"
#include "core/assess/photoperiod.hpp"

namespace loam::assess {

namespace {

constexpr double a_day_h = 24.0;
// A heat wave's room grows hot through a morning and stays so through the afternoon. Common practice, no source.
constexpr double morning_h = 6.0;
constexpr double afternoon_h = 6.0;

climate::Case under(const SolvedCase& from, climate::Fault fault)
{
    climate::Case now = from.room;
    now.fault = fault;
    return now;
}

// A fault in a room that stays as it is, for a day: so long it may go unseen.
CoursePlan fault_for_a_day(std::string id, const SolvedCase& from, climate::Fault fault)
{
    CoursePlan plan;
    plan.id = std::move(id);
    plan.from = &from;
    plan.stretches = {{under(from, fault), a_day_h, from.room.room.temperature_c.likely}};
    plan.likely_h = a_day_h;
    return plan;
}

// At the end of a winter night, when the box is coldest.
std::optional<CoursePlan> power_cut(const Context& context, Notes& notes, const SolvedCase& night)
{
    const auto& given = context.plan.site.room.power_cut;
    const auto hours = given_or_assumed(notes, context.catalog, given ? given->hours : std::nullopt,
                                        "/site/room/power_cut/hours", "room.power_cut.hours");
    const auto room_c = given_or_assumed(notes, context.catalog, given ? given->room_c : std::nullopt,
                                         "/site/room/power_cut/room_c", "room.power_cut.room_c");
    if (!hours || !room_c || !(hours->high > 0.0)) {
        return std::nullopt;
    }
    const climate::Case now = under(night, climate::Fault::power_cut);
    const double likely_c = std::min(room_c->likely, night.room.room.temperature_c.likely);
    CoursePlan plan;
    plan.id = "power-cut";
    plan.from = &night;
    if (hours->likely > 0.0) {
        plan.stretches.push_back({now, hours->likely, likely_c});
    }
    if (hours->high > hours->likely) {
        plan.stretches.push_back({now, hours->high - hours->likely, likely_c});
    }
    plan.likely_h = hours->likely;
    plan.room_spread_k = {room_c->low - room_c->likely, 0.0, room_c->high - room_c->likely};
    return plan;
}

CoursePlan heat_wave(const SolvedCase& summer, const SolvedCase& wave)
{
    const climate::Case now = under(summer, climate::Fault::none);
    const double hot_c = wave.room.room.temperature_c.likely;
    CoursePlan plan;
    plan.id = "heat-wave";
    plan.from = &summer;
    plan.stretches = {{now, morning_h, hot_c}, {now, afternoon_h, hot_c}};
    plan.likely_h = morning_h + afternoon_h;
    const Range& room = wave.room.room.temperature_c;
    const Range& usual = summer.room.room.temperature_c; // its spread is in that of the case
    plan.room_spread_k = {std::min(0.0, room.low - room.likely - (usual.low - usual.likely)), 0.0,
                          std::max(0.0, room.high - room.likely - (usual.high - usual.likely))};
    return plan;
}

} // namespace

std::vector<CoursePlan> plan_days(const Context& context, const Housed& housed, Notes& notes,
                                  const std::vector<SolvedCase>& solved)
{
    std::vector<CoursePlan> plans;
    const auto lit_h = timed_hours(context, housed, notes);
    if (!lit_h) {
        return plans;
    }
    for (const std::string season : {"winter", "summer"}) {
        CoursePlan plan;
        plan.id = season;
        plan.from = solved_as(solved, season + "-day");
        plan.also = solved_as(solved, season + "-night");
        plan.lit_h = std::clamp(lit_h->likely, 0.0, a_day_h);
        if (plan.from != nullptr && plan.also != nullptr) {
            plans.push_back(std::move(plan));
        }
    }
    return plans;
}

std::vector<CoursePlan> plan_drills(const Context& context, Notes& notes, const std::vector<SolvedCase>& solved)
{
    std::vector<CoursePlan> plans;
    const SolvedCase* winter = solved_as(solved, "winter-day");
    const SolvedCase* night = solved_as(solved, "winter-night");
    const SolvedCase* summer = solved_as(solved, "summer-day");
    const SolvedCase* wave = solved_as(solved, "heat-wave");
    if (night != nullptr) {
        if (auto plan = power_cut(context, notes, *night)) {
            plans.push_back(*std::move(plan));
        }
    }
    if (winter != nullptr && !winter->box.lamps.empty()) {
        plans.push_back(fault_for_a_day("lamp-out", *winter, climate::Fault::lamps_out));
    }
    if (summer != nullptr && !summer->box.mats.empty()) {
        plans.push_back(fault_for_a_day("mat-stuck-on", *summer, climate::Fault::mats_stuck_on));
    }
    if (summer != nullptr && wave != nullptr) {
        plans.push_back(heat_wave(*summer, *wave));
    }
    if (winter != nullptr && !winter->box.covers.empty()) {
        plans.push_back(fault_for_a_day("covers-off", *winter, climate::Fault::covers_off));
    }
    return plans;
}

} // namespace loam::assess
