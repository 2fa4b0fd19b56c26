#include <algorithm>

#include "core/assess/fittings.hpp"
#include "core/assess/record.hpp"
#include "core/assess/space_parts.hpp"
#include "core/plan/measured.hpp"

namespace loam::assess {

namespace {

// From the sheet's measure to the rule's: 1 where they agree, the adults' ratio where the sheet has both.
std::optional<double> measure_ratio(const catalog::Species& species, space::BodyMeasure measure)
{
    if (species.measure == measure) {
        return 1.0;
    }
    if (measure == space::BodyMeasure::total && species.adult_total_length_m && species.adult_total_length_m->max &&
        species.adult_length_m.max) {
        return *species.adult_total_length_m->max / *species.adult_length_m.max;
    }
    return std::nullopt;
}

std::optional<double> scaled(const std::optional<double>& value, double factor)
{
    return value ? std::optional(*value * factor) : std::nullopt;
}

// `tight` where only the floor left among the fittings misses the rule. A laboratory figure is the least an animal
// survives a study on: it can be missed, but meeting it says nothing.
Judgement judge_floor(const FloorPlan& floor, const space::Demand& demand, catalog::RuleKind kind)
{
    if (!space::meets(floor.whole, demand)) {
        return {Verdict::falls_short, Direction::below};
    }
    if (kind == catalog::RuleKind::laboratory) {
        return {Verdict::not_known, Direction::none};
    }
    return space::meets(floor.usable, demand) ? Judgement{Verdict::fits, Direction::none}
                                              : Judgement{Verdict::tight, Direction::below};
}

// How far ahead growth is followed: the life span, else thirty years.
double growth_horizon(const catalog::Species& species)
{
    return species.lifespan_years.max.value_or(species.lifespan_years.min.value_or(30.0));
}

void judge_growth(const catalog::Rule& rule, const catalog::Species& species, const RuleBodies& bodies,
                  const FloorPlan& floor, RuleResult& result)
{
    const auto grown = space::demand_grown(rule.formula, rule.measure, bodies.growing);
    if (grown) {
        result.required_grown_m2 = grown->area_m2;
        result.judgement_grown = judge_floor(floor, *grown, rule.kind);
    }
    const space::Outgrown outgrown =
        space::outgrown(rule.formula, rule.measure, bodies.growing, floor.whole, growth_horizon(species));
    if (outgrown.known) {
        result.broken_in_years_fast = outgrown.earliest_years;
        result.broken_in_years_slow = outgrown.latest_years;
    }
}

} // namespace

std::vector<space::GrowthRate> rates_of(const catalog::Species& species)
{
    std::vector<space::GrowthRate> rates;
    for (const catalog::GrowthSpan& span : species.growth) {
        rates.push_back({span.from_age_years, span.to_age_years, span.slow_per_year, span.fast_per_year});
    }
    return rates;
}

RuleBodies bodies_for(const Context& context, const Housed& housed, Notes& notes, const catalog::Species& species,
                      space::BodyMeasure measure)
{
    RuleBodies bodies;
    const auto ratio = measure_ratio(species, measure);
    if (!ratio) {
        bodies.missing = "measure";
        return bodies;
    }
    for (std::size_t i = 0; i < housed.enclosure.animals.size(); ++i) {
        const plan::Animal& animal = housed.enclosure.animals[i];
        if (animal.species != species.id) {
            continue;
        }
        const auto length = body_length(context, housed, i, notes);
        if (!length) {
            bodies.missing = "length";
            return bodies;
        }
        const int count = static_cast<int>(animal.count);
        bodies.now.push_back({count, length->high * *ratio});
        bodies.longest_m = std::max(bodies.longest_m, length->high * *ratio);
        bodies.growing.push_back({.count = count,
                                  .body_m = scaled(plan::length_now_m(animal), *ratio),
                                  .age_years = animal.age_years,
                                  .rates = rates_of(species),
                                  .adult_min_m = scaled(species.adult_length_m.min, *ratio),
                                  .adult_max_m = scaled(species.adult_length_m.max, *ratio)});
        // Where nothing is published, the keeper's own lengths bound it. They hold for every age.
        if (const auto own = species.growth.empty() ? measured_rate(context, animal) : std::nullopt) {
            bodies.growing.back().rates = {*own};
            bodies.growing.back().age_years = animal.age_years.value_or(0.0);
        }
    }
    return bodies;
}

std::vector<RuleResult> judge_rules(const Context& context, const Housed& housed, Notes& notes, const FloorPlan& floor,
                                    const catalog::Species& species)
{
    std::vector<RuleResult> results;
    for (const std::string& id : species.rules) {
        const catalog::Rule* rule = context.catalog.find_rule(id);
        if (rule == nullptr || (rule->climbing_only && species.habit != catalog::Habit::climbing)) {
            continue;
        }
        RuleResult result;
        result.id = rule->id;
        result.title = rule->title;
        result.species = species.id;
        result.jurisdiction = rule->jurisdiction;
        result.source = rule->source;
        // A figure is called law only where the law itself was read.
        const bool unconfirmed_law =
            rule->kind == catalog::RuleKind::statutory && rule->source.confidence != Confidence::confirmed;
        result.kind = unconfirmed_law ? catalog::RuleKind::welfare : rule->kind;
        const RuleBodies bodies = bodies_for(context, housed, notes, species, rule->measure);
        const auto demand =
            bodies.missing.empty() ? space::demand(rule->formula, rule->measure, bodies.now) : std::nullopt;
        if (demand) {
            result.required_m2 = demand->area_m2;
            result.required_length_m = demand->length_m;
            result.required_width_m = demand->width_m;
            result.required_height_m = demand->height_m;
            result.judgement = judge_floor(floor, *demand, result.kind);
            judge_growth(*rule, species, bodies, floor, result);
        }
        results.push_back(result);
    }
    return results;
}

bool applies_here(const RuleResult& rule, const std::string& jurisdiction)
{
    if (rule.kind == catalog::RuleKind::laboratory || !rule.required_m2) {
        return false;
    }
    return rule.kind != catalog::RuleKind::statutory || rule.jurisdiction == jurisdiction;
}

const RuleResult* governing_rule(const std::vector<RuleResult>& rules, const std::string& jurisdiction)
{
    const RuleResult* strictest = nullptr;
    for (const RuleResult& rule : rules) {
        if (applies_here(rule, jurisdiction) && (strictest == nullptr || *rule.required_m2 > *strictest->required_m2)) {
            strictest = &rule;
        }
    }
    return strictest;
}

} // namespace loam::assess
