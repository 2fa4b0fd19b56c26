
#include "core/assess/load.hpp"

namespace loam::assess {

namespace {

struct Carried {
    Range load_kg;
    bool known = true;
    bool anything = false;
};

Carried carried_by(const Context& context, const std::vector<MassStage>& masses, const std::string& stand)
{
    Carried carried;
    for (std::size_t i = 0; i < context.plan.enclosures.size(); ++i) {
        if (context.plan.enclosures[i].stand == stand) {
            const Range& mass = masses[i].result.total_kg;
            carried.load_kg = {carried.load_kg.low + mass.low, carried.load_kg.likely + mass.likely,
                               carried.load_kg.high + mass.high};
            carried.known = carried.known && masses[i].known;
            carried.anything = true;
        }
    }
    return carried;
}

StandResult judge_stand(Notes& notes, const plan::Stand& stand, std::size_t index, const Carried& carried)
{
    StandResult result{stand.id, carried.load_kg, stand.rated_load_kg, {Verdict::not_known, Direction::none}};
    const Range& load = carried.load_kg;
    if (!stand.rated_load_kg) {
        const std::string pointer = "/site/stands/" + std::to_string(index) + "/rated_load_kg";
        assume(notes, {pointer, "kg", std::nullopt, {}});
        report(notes, "stand.rating-not-known", result.judgement, {stand.id, ""},
               because("rule.rated-load",
                       {{"low", load.low, "kg"}, {"likely", load.likely, "kg"}, {"high", load.high, "kg"}},
                       {{"stand", stand.id}}))
            .remedy = state(pointer);
        return result;
    }
    const double rated_kg = *stand.rated_load_kg;
    if (load.high > rated_kg) { // either end: a stand that gives way harms people and animals
        result.judgement = {Verdict::danger, Direction::above};
        report(notes, "danger.stand", result.judgement, {stand.id, ""},
               because("rule.rated-load", inputs_over(load, rated_kg, "kg"), {{"stand", stand.id}}))
            .remedy = remedy("remedy.stronger-stand", {{"to", load.high, "kg"}, {"by", load.high - rated_kg, "kg"}});
    } else if (carried.known) {
        result.judgement = {Verdict::fits, Direction::none};
    }
    return result;
}

} // namespace

StandStage assess_stands(const Context& context, const std::vector<MassStage>& masses)
{
    StandStage stage;
    const std::vector<plan::Stand>& stands = context.plan.site.stands;
    for (std::size_t i = 0; i < stands.size(); ++i) {
        const Carried carried = carried_by(context, masses, stands[i].id);
        if (carried.anything) {
            stage.results.push_back(judge_stand(stage.notes, stands[i], i, carried));
        } else {
            stage.results.push_back(
                {stands[i].id, exactly(0.0), stands[i].rated_load_kg, {Verdict::fits, Direction::none}});
        }
    }
    for (std::size_t i = 0; i < context.plan.enclosures.size(); ++i) {
        const plan::Enclosure& enclosure = context.plan.enclosures[i];
        if (!enclosure.stand) {
            const Range& mass = masses[i].result.total_kg;
            report(stage.notes, "stand.not-named", {Verdict::not_known, Direction::none}, {enclosure.id, enclosure.id},
                   because("rule.rated-load",
                           {{"low", mass.low, "kg"}, {"likely", mass.likely, "kg"}, {"high", mass.high, "kg"}}, {}))
                .remedy = state("/enclosures/" + std::to_string(i) + "/stand");
        }
    }
    return stage;
}

} // namespace loam::assess
