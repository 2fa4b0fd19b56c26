// What runs over hours in one enclosure: its days, its drills, its first warming up.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/assess/climate_stage.hpp"

namespace loam::assess {

struct CourseStage {
    std::vector<CourseResult> days;
    std::vector<CourseResult> drills;
    std::optional<CourseResult> warm_up;
    std::vector<DrySpellResult> dry_spells;
    Notes notes;
    friend bool operator==(const CourseStage&, const CourseStage&) = default;
};

// nullopt only where `stop` was requested.
std::optional<CourseStage> assess_courses(const Context& context, const Housed& housed, const ClimateStage& climate,
                                          const climate::Workspace& workspace, std::stop_token stop);

// The steps below work on one another's results.

// One thing to follow, and the solved case it starts from, whose box and ranges it takes.
struct CoursePlan {
    std::string id;
    const SolvedCase* from = nullptr;
    const SolvedCase* also = nullptr;        // of a day: its night
    std::vector<climate::Stretch> stretches; // of a drill
    double lit_h = 0.0;                      // of a day
    double likely_h = 0.0;                   // of a drill: what passes within it counts as sure to come
    Range room_spread_k = exactly(0.0);      // beside the spread of the case
};
std::vector<CoursePlan> plan_days(const Context& context, const Housed& housed, Notes& notes,
                                  const std::vector<SolvedCase>& solved);
std::vector<CoursePlan> plan_drills(const Context& context, Notes& notes, const std::vector<SolvedCase>& solved);

// For every species with known limits.
std::vector<TimeToLimit> times_to_limits(const CourseResult& course,
                                         const std::vector<const catalog::Species*>& species);
// A surface that burns for a while each day, though it does not in the steady case.
void report_day_peak(Notes& notes, const Housed& housed, const CourseResult& day, const CoursePlan& plan);
void report_drill(Notes& notes, const Housed& housed, const CourseResult& drill, const CoursePlan& plan);

} // namespace loam::assess
