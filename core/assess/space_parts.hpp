// The steps of assess_space.
#pragma once

#include <vector>

#include "core/assess/context.hpp"
#include "core/space/demand.hpp"
#include "core/space/growth.hpp"
#include "core/space/usable_floor.hpp"

namespace loam::assess {

struct FloorPlan {
    space::FloorSize size;
    std::vector<space::Footprint> blocked;
    double floor_m2 = 0.0;
    double usable_m2 = 0.0;
    space::Offer whole;  // counting the whole floor
    space::Offer usable; // counting what is left of it
};

FloorPlan floor_plan(const Context& context, const Housed& housed, Notes& notes);

// The enclosure's animals of one species, in the rule's measure. `missing` says why there are none: length, measure.
struct RuleBodies {
    std::vector<space::BodyGroup> now;
    std::vector<space::GrowingGroup> growing;
    double longest_m = 0.0;
    std::string missing;
};
// The published rates of growth; empty where there are none.
std::vector<space::GrowthRate> rates_of(const catalog::Species& species);

RuleBodies bodies_for(const Context& context, const Housed& housed, Notes& notes, const catalog::Species& species,
                      space::BodyMeasure measure);

// Every rule that the species' sheet names.
std::vector<RuleResult> judge_rules(const Context& context, const Housed& housed, Notes& notes, const FloorPlan& floor,
                                    const catalog::Species& species);

// The one that decides: the strictest of those that apply here, laboratory figures apart. nullptr: none.
const RuleResult* governing_rule(const std::vector<RuleResult>& rules, const std::string& jurisdiction);
bool applies_here(const RuleResult& rule, const std::string& jurisdiction);

void report_rule(Notes& notes, const Context& context, const Housed& housed, const FloorPlan& floor,
                 const catalog::Species& species, const RuleResult& result);

void judge_furnishing(const Context& context, const Housed& housed, Notes& notes, const FloorPlan& floor);

} // namespace loam::assess
