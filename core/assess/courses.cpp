#include "core/assess/courses.hpp"

#include "core/assess/dry_spells.hpp"
#include "core/assess/side_by_side.hpp"
#include "core/assess/switching.hpp"

namespace loam::assess {

namespace {

// Low and high against likely, the wider of two cases, with what the room adds: ends apart, since the room's own shift
// carries over whole.
Range spread_of(const Range& one, const Range& other, const Range& room_k)
{
    return {std::min(one.low - one.likely, other.low - other.likely) + room_k.low, 0.0,
            std::max(one.high - one.likely, other.high - other.likely) + room_k.high};
}

void set_spreads(CourseResult& result, const CoursePlan& plan)
{
    const climate::CaseResult& one = plan.from->result;
    const climate::CaseResult& other = plan.also != nullptr ? plan.also->result : one;
    result.basking_spread_k = spread_of(one.basking.surface_c, other.basking.surface_c, plan.room_spread_k);
    result.warm_spread_k = spread_of(one.warm.ground_c, other.warm.ground_c, plan.room_spread_k);
    result.cool_spread_k = spread_of(one.cool.ground_c, other.cool.ground_c, plan.room_spread_k);
    result.humidity_spread = spread_of(one.ground_humidity, other.ground_humidity, exactly(0.0));
}

std::optional<climate::Course> run(const CoursePlan& plan, climate::Workspace& workspace, const std::stop_token& stop)
{
    const climate::Box& box = plan.from->box;
    if (plan.also != nullptr) {
        return climate::periodic_day(box, {.day = plan.from->room, .night = plan.also->room, .lit_h = plan.lit_h},
                                     workspace, stop);
    }
    if (plan.stretches.empty()) {
        constexpr double two_days_h = 48.0;
        return climate::warm_up(box, plan.from->room, two_days_h, workspace, stop);
    }
    return climate::follow(box, {plan.from->room, plan.stretches}, workspace, stop);
}

void report_incomplete(Notes& notes, const Housed& housed, const std::string& id)
{
    report(notes, "heat.course-not-known", {Verdict::not_known, Direction::none}, housed.at(),
           because("rule.heat-balance", {}, {{"course", id}}));
}

} // namespace

std::optional<CourseStage> assess_courses(const Context& context, const Housed& housed, const ClimateStage& climate,
                                          const climate::Workspace& workspace, std::stop_token stop)
{
    CourseStage stage;
    std::vector<CoursePlan> plans = plan_days(context, housed, stage.notes, climate.solved);
    const std::size_t days = plans.size();
    for (CoursePlan& drill : plan_drills(context, stage.notes, climate.solved)) {
        plans.push_back(std::move(drill));
    }
    const std::size_t drills = plans.size();
    for (const SolvedCase& one : climate.solved) {
        if (one.room.id == "winter-day" && one.result.converged) {
            plans.emplace_back();
            plans.back().id = "warm-up";
            plans.back().from = &one;
        }
    }
    std::vector<std::optional<climate::Course>> courses(plans.size());
    std::vector<SwitchingPlan> switching = plan_switching(context, housed, stage.notes, climate.solved);
    std::vector<char> cycles(switching.size(), 0);
    side_by_side(plans.size() + switching.size(), [&](std::size_t i) {
        climate::Workspace own = workspace;
        if (i < plans.size()) {
            courses[i] = run(plans[i], own, stop);
        } else {
            cycles[i - plans.size()] = follow(switching[i - plans.size()], own, stop) ? 1 : 0;
        }
    });
    auto spells = dry_spells(context, housed, climate.solved, workspace, stop);
    if (stop.stop_requested() || !spells) {
        return std::nullopt;
    }
    stage.dry_spells = *std::move(spells);
    const auto species = species_in(housed.enclosure, context.catalog);
    for (std::size_t i = 0; i < plans.size(); ++i) {
        if (!courses[i] || !courses[i]->complete) {
            report_incomplete(stage.notes, housed, plans[i].id);
            continue;
        }
        CourseResult result;
        result.id = plans[i].id;
        result.course = *std::move(courses[i]);
        set_spreads(result, plans[i]);
        if (i >= days && i < drills) {
            result.limits = times_to_limits(result, species);
            report_drill(stage.notes, housed, result, plans[i]);
        }
        if (i < days) {
            report_day_peak(stage.notes, housed, result, plans[i]);
            for (std::size_t s = 0; s < switching.size(); ++s) {
                if (cycles[s] != 0 && switching[s].season == result.id) {
                    result.switching.push_back(switching[s].result);
                }
            }
            stage.days.push_back(std::move(result));
        } else if (i < drills) {
            stage.drills.push_back(std::move(result));
        } else {
            stage.warm_up = std::move(result);
        }
    }
    return stage;
}

} // namespace loam::assess
