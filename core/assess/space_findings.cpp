#include <algorithm>

#include "core/assess/space_parts.hpp"

namespace loam::assess {

namespace {

std::string kind_name(catalog::RuleKind kind)
{
    switch (kind) {
    case catalog::RuleKind::statutory:
        return "statutory";
    case catalog::RuleKind::welfare:
        return "welfare";
    case catalog::RuleKind::veterinary:
        return "veterinary";
    case catalog::RuleKind::laboratory:
        return "laboratory";
    }
    return {};
}

std::vector<Label> labels_of(const RuleResult& rule)
{
    return {
        {"rule", rule.id}, {"rule_title", rule.title}, {"rule_kind", kind_name(rule.kind)}, {"species", rule.species}};
}

std::optional<Remedy> larger_floor(const FloorPlan& floor, const space::Demand& demand)
{
    if (const auto length_m = space::length_needed_m(floor.whole, demand)) {
        return remedy("remedy.longer-box", {{"by", *length_m - floor.whole.length_m, "m"}, {"to", *length_m, "m"}});
    }
    const space::Sides box = space::smallest_box(floor.whole, demand);
    const double to_m2 = box.length_m * box.width_m;
    return remedy("remedy.bigger-floor", {{"by", to_m2 - floor.floor_m2, "m2"}, {"to", to_m2, "m2"}});
}

std::vector<Input> floor_inputs(const FloorPlan& floor, double required_m2, const RuleBodies& bodies, bool whole)
{
    std::int64_t animals = 0;
    for (const space::BodyGroup& group : bodies.now) {
        animals += group.count;
    }
    return {{"floor", floor.floor_m2, "m2"},
            {"usable", floor.usable_m2, "m2"},
            {"min", required_m2, "m2"},
            {"short_by", std::max(0.0, required_m2 - (whole ? floor.floor_m2 : floor.usable_m2)), "m2"},
            {"animals", static_cast<double>(animals), "1"},
            {"length", bodies.longest_m, "m"}};
}

void report_sides(Notes& notes, const Housed& housed, const FloorPlan& floor, const RuleResult& rule,
                  const space::Demand& demand)
{
    for (const space::Shortfall& lack : space::shortfalls(floor.whole, demand)) {
        const double short_by_m = lack.needs - lack.has;
        const Judgement below{Verdict::falls_short, Direction::below};
        if (lack.what == space::Lack::height) {
            Finding& finding =
                report(notes, "space.height", below, housed.at(),
                       because("rule.floor-area",
                               {{"height", lack.has, "m"}, {"min", lack.needs, "m"}, {"short_by", short_by_m, "m"}},
                               {{"rule", rule.id}, {"species", rule.species}}, rule.source));
            finding.remedy = remedy("remedy.higher-box", {{"by", short_by_m, "m"}, {"to", lack.needs, "m"}});
        } else if (lack.what == space::Lack::long_side || lack.what == space::Lack::short_side) {
            const bool is_long = lack.what == space::Lack::long_side;
            std::vector<Label> labels = labels_of(rule);
            labels.push_back({"side_name", is_long ? "long" : "short"});
            Finding& finding =
                report(notes, "space.rule-side", below, housed.at(),
                       because("rule.floor-area",
                               {{"side", lack.has, "m"}, {"min", lack.needs, "m"}, {"short_by", short_by_m, "m"}},
                               labels, rule.source));
            const std::vector<Input> amounts{{"by", short_by_m, "m"}, {"to", lack.needs, "m"}};
            finding.remedy = is_long ? remedy("remedy.longer-box", amounts) : remedy("remedy.wider-box", amounts);
        } else if (lack.what == space::Lack::body_side) {
            Finding& finding =
                report(notes, "space.side-short-of-body", below, housed.at(),
                       because("rule.body-length-side",
                               {{"side", lack.has, "m"}, {"body", lack.needs, "m"}, {"short_by", short_by_m, "m"}},
                               {{"side_name", "short"}, {"species", rule.species}}, rule.source));
            finding.remedy = remedy("remedy.wider-box", {{"by", short_by_m, "m"}, {"to", lack.needs, "m"}});
        }
    }
}

void report_growth(Notes& notes, const Housed& housed, const FloorPlan& floor, const RuleResult& rule,
                   const RuleBodies& bodies, const space::Demand& grown)
{
    const bool whole = rule.judgement_grown.verdict == Verdict::falls_short;
    std::vector<Input> inputs = floor_inputs(floor, grown.area_m2, bodies, whole);
    inputs[5].value = grown.largest_body_m;
    if (rule.broken_in_years_fast) {
        inputs.push_back({"years_fast", *rule.broken_in_years_fast, "a"});
    }
    if (rule.broken_in_years_slow) {
        inputs.push_back({"years_slow", *rule.broken_in_years_slow, "a"});
    }
    // Today it fits; the far end of the animal's growth misses.
    Finding& finding = report(notes, "space.floor-grown", {Verdict::tight, Direction::below}, housed.at(),
                              because("rule.growth", inputs, labels_of(rule), rule.source));
    if (whole) {
        finding.remedy = larger_floor(floor, grown);
    }
    if (rule.broken_in_years_fast && *rule.broken_in_years_fast > 0.0) {
        std::vector<Input> years{{"years_fast", *rule.broken_in_years_fast, "a"}};
        if (rule.broken_in_years_slow) {
            years.push_back({"years_slow", *rule.broken_in_years_slow, "a"});
        }
        report(notes, "space.outgrown", {Verdict::tight, Direction::below}, housed.at(),
               because("rule.growth", years, {{"rule", rule.id}, {"rule_title", rule.title}, {"species", rule.species}},
                       rule.source));
    }
}

} // namespace

void report_rule(Notes& notes, const Context& context, const Housed& housed, const FloorPlan& floor,
                 const catalog::Species& species, const RuleResult& result)
{
    const catalog::Rule* rule = context.catalog.find_rule(result.id);
    const RuleBodies bodies = bodies_for(context, housed, notes, species, rule->measure);
    const auto demand = space::demand(rule->formula, rule->measure, bodies.now);
    if (!demand) {
        return;
    }
    const bool whole = result.judgement.verdict == Verdict::falls_short;
    const bool area_is_short = floor.floor_m2 < demand->area_m2 - 1e-9;
    if (area_is_short || result.judgement.verdict == Verdict::tight) {
        Finding& finding = report(notes, "space.floor-now", result.judgement, housed.at(),
                                  because("rule.floor-area", floor_inputs(floor, demand->area_m2, bodies, whole),
                                          labels_of(result), result.source));
        finding.remedy = area_is_short
                             ? larger_floor(floor, *demand)
                             : remedy("remedy.clear-floor", {{"by", demand->area_m2 - floor.usable_m2, "m2"}});
    }
    report_sides(notes, housed, floor, result, *demand);
    const auto grown = space::demand_grown(rule->formula, rule->measure, bodies.growing);
    const bool grown_misses =
        result.judgement_grown.verdict == Verdict::falls_short || result.judgement_grown.verdict == Verdict::tight;
    if (!whole && grown && grown_misses) {
        report_growth(notes, housed, floor, result, bodies, *grown);
    }
}

} // namespace loam::assess
