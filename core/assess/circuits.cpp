#include "core/power/circuits.hpp"
#include "core/assess/power.hpp"

namespace loam::assess {

namespace {

Source limit_source(double voltage_v)
{
    return power::limit_basis(voltage_v) == power::LimitBasis::nec_continuous
               ? Source{"NFPA 70 (NEC) 210.20(A): 125 % of continuous load", Confidence::confirmed}
               : Source{"Common practice, no source: 80 % of the rating for lasting loads", Confidence::practice};
}

std::vector<power::Circuit> circuits_of(const Context& context, Notes& notes)
{
    std::vector<power::Circuit> circuits;
    for (std::size_t i = 0; i < context.plan.site.circuits.size(); ++i) {
        const plan::Circuit& given = context.plan.site.circuits[i];
        circuits.push_back(
            {given.id, given.voltage_v, given.rating_a,
             given_or_assumed(notes, context.catalog, given.other_load_w,
                              "/site/circuits/" + std::to_string(i) + "/other_load_w", "circuit.other_load_w")});
    }
    return circuits;
}

std::optional<int> small(const std::optional<std::int64_t>& count)
{
    return count ? std::optional(static_cast<int>(*count)) : std::nullopt;
}

std::vector<power::Strip> strips_of(const Context& context)
{
    std::vector<power::Strip> strips;
    for (const plan::Strip& given : context.plan.site.strips) {
        strips.push_back({given.id, given.circuit, given.rating_a, small(given.timed_outlets),
                          small(given.always_on_outlets), given.fed_from});
    }
    return strips;
}

// The bare rating is what a fuse or breaker stands for: past it is danger at either end. Between the continuous limit
// and the rating the likely load falls short of what may last.
Judgement judge_load(const Range& load_w, double continuous_w)
{
    const double rated_w = continuous_w / power::continuous_share;
    if (load_w.high > rated_w || load_w.likely > continuous_w) {
        return {Verdict::danger, Direction::above};
    }
    return {load_w.high > continuous_w ? Verdict::tight : Verdict::fits,
            load_w.high > continuous_w ? Direction::above : Direction::none};
}

// The rating in amperes is the one that the limit was taken from: the strip's own where that is the smaller.
std::vector<Input> load_inputs(const Range& load_w, double continuous_w, const plan::Circuit& circuit)
{
    std::vector<Input> inputs = inputs_over(load_w, continuous_w, "W");
    inputs.push_back({"rating", continuous_w / power::continuous_share / circuit.voltage_v, "A"});
    inputs.push_back({"voltage", circuit.voltage_v, "V"});
    return inputs;
}

void judge_circuit(Notes& notes, const plan::Circuit& given, std::size_t index, const power::CircuitLoad& load,
                   std::vector<CircuitResult>& results)
{
    CircuitResult result{given.id, load.load_w, load.load_fraction, judge_load(load.load_w, load.continuous_limit_w)};
    if (!given.other_load_w) {
        const std::string pointer = "/site/circuits/" + std::to_string(index) + "/other_load_w";
        report(notes, "circuit.load-not-known", {Verdict::not_known, Direction::none}, {given.id, ""},
               because("rule.continuous-load", {{"likely", load.load_w.likely, "W"}}, {{"circuit", given.id}}))
            .remedy = state(pointer);
        if (result.judgement.verdict == Verdict::fits) {
            result.judgement.verdict = load.other_load_known ? Verdict::fits : Verdict::not_known;
        }
    }
    const std::vector<Input> inputs = load_inputs(load.load_w, load.continuous_limit_w, given);
    const auto why = because("rule.continuous-load", inputs, {{"circuit", given.id}}, limit_source(given.voltage_v));
    const Remedy less = remedy("remedy.other-circuit", {{"by", load.load_w.high - load.continuous_limit_w, "W"}});
    if (result.judgement.verdict == Verdict::danger) {
        report(notes, "danger.circuit", result.judgement, {given.id, ""}, why).remedy = less;
    } else if (result.judgement.verdict == Verdict::tight) {
        report(notes, "circuit.near-limit", result.judgement, {given.id, ""}, why).remedy = less;
    }
    results.push_back(result);
}

void judge_outlets(Notes& notes, const plan::Strip& strip, std::size_t index, std::string supply, int used,
                   const std::optional<std::int64_t>& outlets)
{
    const std::vector<Label> labels{{"strip", strip.id}, {"supply", supply}};
    if (!outlets) {
        const std::string key = supply == "timed" ? "/timed_outlets" : "/always_on_outlets";
        const std::string pointer = "/site/strips/" + std::to_string(index) + key;
        assume(notes, {pointer, "1", std::nullopt, {}});
        if (used > 0) {
            report(notes, "strip.outlets-not-known", {Verdict::not_known, Direction::none}, {strip.id, ""},
                   because("rule.outlet-count", {{"used", static_cast<double>(used), "1"}}, labels))
                .remedy = state(pointer);
        }
        return;
    }
    const auto has = static_cast<double>(*outlets);
    const double missing = static_cast<double>(used) - has;
    if (missing > 0.0) {
        report(notes, "strip.outlets-short", {Verdict::falls_short, Direction::below}, {strip.id, ""},
               because("rule.outlet-count",
                       {{"used", static_cast<double>(used), "1"}, {"outlets", has, "1"}, {"short_by", missing, "1"}},
                       labels))
            .remedy = remedy("remedy.more-outlets", {{"count", missing, "1"}}, {{"supply", supply}});
    }
}

void judge_protection(Notes& notes, const plan::Strip& strip, std::size_t index)
{
    const Source source{"IEC 60364-4-41: 30 mA residual current protection for socket outlets", Confidence::memory};
    if (!strip.residual_current_protected) {
        const std::string pointer = "/site/strips/" + std::to_string(index) + "/residual_current_protected";
        report(notes, "strip.residual-current-protection-not-stated", {Verdict::not_known, Direction::none},
               {strip.id, ""}, because("rule.residual-current", {}, {{"strip", strip.id}}, source))
            .remedy = state(pointer);
    } else if (!*strip.residual_current_protected) {
        report(notes, "strip.no-residual-current-protection", {Verdict::falls_short, Direction::none}, {strip.id, ""},
               because("rule.residual-current", {}, {{"strip", strip.id}}, source))
            .remedy = remedy("remedy.add-residual-current-protection", {}, {{"strip", strip.id}});
    }
}

const plan::Circuit* feeding(const Context& context, const std::string& id)
{
    for (const plan::Circuit& circuit : context.plan.site.circuits) {
        if (circuit.id == id) {
            return &circuit;
        }
    }
    return nullptr;
}

void judge_strip(Notes& notes, const Context& context, std::size_t index, const power::StripLoad& load,
                 std::vector<StripResult>& results)
{
    const plan::Strip& given = context.plan.site.strips[index];
    StripResult result{
        given.id, load.load_w, load.timed_used, load.always_on_used, {Verdict::not_known, Direction::none}};
    const plan::Circuit* circuit = feeding(context, given.circuit);
    if (load.feed_is_broken || circuit == nullptr) {
        report(notes, "strip.circuit-not-known", {Verdict::not_known, Direction::none}, {given.id, ""},
               because("rule.stated-by-keeper", {}, {{"strip", given.id}, {"circuit", given.circuit}}))
            .remedy = state("/site/strips/" + std::to_string(index) + "/circuit");
    }
    if (!given.rating_a) {
        const std::string pointer = "/site/strips/" + std::to_string(index) + "/rating_a";
        assume(notes, {pointer, "A", std::nullopt, {}});
        report(notes, "strip.rating-not-known", {Verdict::not_known, Direction::none}, {given.id, ""},
               because("rule.continuous-load", {{"likely", load.load_w.likely, "W"}}, {{"strip", given.id}}))
            .remedy = state(pointer);
    }
    if (load.continuous_limit_w && circuit != nullptr) {
        const Judgement judgement = judge_load(load.load_w, *load.continuous_limit_w);
        const auto why = because("rule.continuous-load", load_inputs(load.load_w, *load.continuous_limit_w, *circuit),
                                 {{"strip", given.id}}, limit_source(circuit->voltage_v));
        const Remedy less = remedy("remedy.less-load", {{"by", load.load_w.high - *load.continuous_limit_w, "W"}});
        if (judgement.verdict == Verdict::danger) {
            report(notes, "danger.strip", judgement, {given.id, ""}, why).remedy = less;
        } else if (judgement.verdict == Verdict::tight) {
            report(notes, "strip.near-limit", judgement, {given.id, ""}, why).remedy = less;
        }
        const bool unsure = judgement.verdict == Verdict::fits && !given.rating_a;
        result.judgement = unsure ? Judgement{Verdict::not_known, Direction::none} : judgement;
    }
    if (load.daisy_chained) {
        report(notes, "strip.daisy-chain", {Verdict::falls_short, Direction::none}, {given.id, ""},
               because("rule.no-daisy-chain", {}, {{"strip", given.id}, {"fed_from", given.fed_from.value_or("")}},
                       {"UL 1363 on relocatable power taps, and common practice", Confidence::memory}))
            .remedy = remedy("remedy.plug-into-wall", {}, {{"strip", given.id}});
    }
    judge_outlets(notes, given, index, "timed", load.timed_used, given.timed_outlets);
    judge_outlets(notes, given, index, "always-on", load.always_on_used, given.always_on_outlets);
    judge_protection(notes, given, index);
    results.push_back(result);
}

} // namespace

CircuitStage assess_circuits(const Context& context, const std::vector<power::Device>& devices)
{
    CircuitStage stage;
    const power::Loads loads = power::loads(devices, strips_of(context), circuits_of(context, stage.notes));
    for (std::size_t i = 0; i < loads.circuits.size(); ++i) {
        judge_circuit(stage.notes, context.plan.site.circuits[i], i, loads.circuits[i], stage.circuits);
    }
    for (std::size_t i = 0; i < loads.strips.size(); ++i) {
        judge_strip(stage.notes, context, i, loads.strips[i], stage.strips);
    }
    return stage;
}

} // namespace loam::assess
