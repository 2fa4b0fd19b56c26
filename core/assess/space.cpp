#include "core/assess/space.hpp"

#include <algorithm>

#include "core/assess/space_parts.hpp"

namespace loam::assess {

namespace {

// Several species share one floor: what each needs adds up (the reading of Swiss Animal Protection Ordinance
// SR 455.1, Annex 2, remark A).
void add_requirement(SpaceResult& result, const RuleResult& rule, const FloorPlan& floor)
{
    result.required_floor_m2 = result.required_floor_m2.value_or(0.0) + rule.required_m2.value_or(0.0);
    result.governing_rule = rule.id;
    result.judgement = result.rules.empty() ? rule.judgement : worse(result.judgement, rule.judgement);
    if (floor.floor_m2 < *result.required_floor_m2) {
        result.judgement = {Verdict::falls_short, Direction::below};
    }
    if (rule.broken_in_years_fast) {
        result.outgrown_in_years =
            std::min(result.outgrown_in_years.value_or(*rule.broken_in_years_fast), *rule.broken_in_years_fast);
    }
}

void report_ungoverned(Notes& notes, const Context& context, const Housed& housed, const FloorPlan& floor,
                       const catalog::Species& species, const std::vector<RuleResult>& rules)
{
    for (const RuleResult& rule : rules) {
        if (rule.kind == catalog::RuleKind::laboratory && rule.required_m2) {
            report(notes, "space.laboratory-only", {Verdict::not_known, Direction::none}, housed.at(),
                   because("rule.floor-area", {{"floor", floor.floor_m2, "m2"}, {"min", *rule.required_m2, "m2"}},
                           {{"rule", rule.id}, {"rule_title", rule.title}, {"species", species.id}}, rule.source));
            return;
        }
    }
    if (!rules.empty()) { // there are rules, but not for what is known of these animals
        const catalog::Rule* rule = context.catalog.find_rule(rules.front().id);
        const RuleBodies bodies = bodies_for(context, housed, notes, species, rule->measure);
        report(notes, "space.floor-not-known", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.floor-area", {{"floor", floor.floor_m2, "m2"}},
                       {{"rule", rule->id},
                        {"rule_title", rule->title},
                        {"species", species.id},
                        {"missing", bodies.missing.empty() ? "number" : bodies.missing}},
                       rule->source));
        return;
    }
    report(notes, "space.no-rule", {Verdict::not_known, Direction::none}, housed.at(),
           because("rule.floor-area", {{"floor", floor.floor_m2, "m2"}}, {{"species", species.id}}));
}

} // namespace

SpaceStage assess_space(const Context& context, const Housed& housed)
{
    SpaceStage stage;
    const FloorPlan floor = floor_plan(context, housed, stage.notes);
    stage.result.floor_m2 = floor.floor_m2;
    stage.result.usable_floor_m2 = floor.usable_m2;
    for (const catalog::Species* species : species_in(housed.enclosure, context.catalog)) {
        std::vector<RuleResult> rules = judge_rules(context, housed, stage.notes, floor, *species);
        const RuleResult* governing = governing_rule(rules, context.plan.jurisdiction);
        if (governing != nullptr) {
            add_requirement(stage.result, *governing, floor);
            report_rule(stage.notes, context, housed, floor, *species, *governing);
        } else {
            report_ungoverned(stage.notes, context, housed, floor, *species, rules);
        }
        for (const RuleResult& rule : rules) { // the law of the place is told even where another asks for more
            if (&rule != governing && rule.kind == catalog::RuleKind::statutory &&
                rule.jurisdiction == context.plan.jurisdiction) {
                report_rule(stage.notes, context, housed, floor, *species, rule);
            }
        }
        stage.result.rules.insert(stage.result.rules.end(), rules.begin(), rules.end());
    }
    judge_furnishing(context, housed, stage.notes, floor);
    return stage;
}

} // namespace loam::assess
