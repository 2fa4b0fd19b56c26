#include "core/assess/notes.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

namespace loam::assess {

Because because(RuleCode rule, std::vector<Input> inputs, std::vector<Label> labels, Source source)
{
    return {std::string(rule.text), std::move(inputs), std::move(labels), std::move(source)};
}

Remedy remedy(RemedyCode code, std::vector<Input> amounts, std::vector<Label> labels)
{
    return {std::string(code.text), std::move(amounts), std::move(labels)};
}

Remedy state(std::string pointer)
{
    return remedy("remedy.state", {}, {{"where", std::move(pointer)}});
}

Finding& report(Notes& notes, FindingCode code, Judgement judgement, Place place, Because because)
{
    notes.findings.push_back({.code = std::string(code.text),
                              .verdict = judgement.verdict,
                              .direction = judgement.direction,
                              .where = std::move(place.where),
                              .enclosure = std::move(place.enclosure),
                              .because = std::move(because),
                              .remedy = std::nullopt});
    return notes.findings.back();
}

void assume(Notes& notes, Assumed assumed)
{
    for (const Assumed& known : notes.assumed) {
        if (known.where == assumed.where) {
            return;
        }
    }
    notes.assumed.push_back(std::move(assumed));
}

std::vector<Input> inputs_of(const Range& figure, const Target& target, Judgement judgement, std::string unit)
{
    std::vector<Input> inputs{{"low", figure.low, unit}, {"likely", figure.likely, unit}, {"high", figure.high, unit}};
    if (target.min) {
        inputs.push_back({"min", *target.min, unit});
    }
    if (target.max) {
        inputs.push_back({"max", *target.max, unit});
    }
    // A difference of temperatures is told in kelvin, so that it is not converted like a reading.
    const std::string difference_unit = unit == "degC" ? "K" : unit;
    const bool end = judgement.verdict != Verdict::falls_short;
    if (judgement.direction == Direction::below && target.min) {
        inputs.push_back({"short_by", *target.min - (end ? figure.low : figure.likely), difference_unit});
    }
    if (judgement.direction == Direction::above && target.max) {
        inputs.push_back({"over_by", (end ? figure.high : figure.likely) - *target.max, difference_unit});
    }
    return inputs;
}

std::vector<Input> inputs_over(const Range& figure, double max, std::string unit)
{
    Target target;
    target.max = max;
    return inputs_of(figure, target, {Verdict::danger, Direction::above}, std::move(unit));
}

std::vector<Input> inputs_under(const Range& figure, double min, std::string unit)
{
    Target target;
    target.min = min;
    return inputs_of(figure, target, {Verdict::danger, Direction::below}, std::move(unit));
}

void append(Notes& to, Notes from)
{
    for (Assumed& assumed : from.assumed) {
        assume(to, std::move(assumed));
    }
    std::move(from.findings.begin(), from.findings.end(), std::back_inserter(to.findings));
}

int gravity(Verdict verdict)
{
    switch (verdict) {
    case Verdict::danger:
        return 4;
    case Verdict::falls_short:
        return 3;
    case Verdict::not_known:
        return 2;
    case Verdict::tight:
        return 1;
    case Verdict::fits:
        return 0;
    }
    return 0;
}

Judgement worse(Judgement one, Judgement other)
{
    return gravity(other.verdict) > gravity(one.verdict) ? other : one;
}

void sort(std::vector<Finding>& findings, const std::vector<std::string>& enclosure_order)
{
    const auto position = [&](const Finding& finding) {
        return std::find(enclosure_order.begin(), enclosure_order.end(), finding.enclosure) - enclosure_order.begin();
    };
    const auto is_caution = [](const Finding& finding) { return finding.code.rfind("caution.", 0) == 0; };
    std::stable_sort(findings.begin(), findings.end(), [&](const Finding& left, const Finding& right) {
        const auto key = [&](const Finding& finding) {
            return std::tuple(-gravity(finding.verdict), is_caution(finding), position(finding));
        };
        if (key(left) != key(right)) {
            return key(left) < key(right);
        }
        return std::tie(left.code, left.where) < std::tie(right.code, right.where);
    });
}

} // namespace loam::assess
