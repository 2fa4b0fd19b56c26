// What a translator writes down beside its figures: findings, and inputs that had to be assumed.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/assess/assessment.hpp"
#include "core/assess/codes.hpp"
#include "core/explain.hpp"

namespace loam::assess {

struct Notes {
    std::vector<Assumed> assumed;
    std::vector<Finding> findings;
    friend bool operator==(const Notes&, const Notes&) = default;
};

// Where a finding belongs: an id or JSON Pointer, and the enclosure's id (empty for the site).
struct Place {
    std::string where;
    std::string enclosure;
};

Because because(RuleCode rule, std::vector<Input> inputs, std::vector<Label> labels, Source source = {});
Remedy remedy(RemedyCode code, std::vector<Input> amounts = {}, std::vector<Label> labels = {});
// Asks the keeper to fill in what the pointer names.
Remedy state(std::string pointer);

// The returned reference is good until the next report.
Finding& report(Notes& notes, FindingCode code, Judgement judgement, Place place, Because because);

void assume(Notes& notes, Assumed assumed); // the same pointer is listed once

// low, likely, high of a figure, and how far it misses a target, as the code lists name them.
std::vector<Input> inputs_of(const Range& figure, const Target& target, Judgement judgement, std::string unit);
// low, likely, high against a limit above: max and over_by (of the high end), or below: min and short_by.
std::vector<Input> inputs_over(const Range& figure, double max, std::string unit);
std::vector<Input> inputs_under(const Range& figure, double min, std::string unit);

void append(Notes& to, Notes from);

// Most serious first; among equals by enclosure in `enclosure_order`, then code, then place. Cautions and notes last.
void sort(std::vector<Finding>& findings, const std::vector<std::string>& enclosure_order);

// The graver of two, `not_known` between tight and falls short.
Judgement worse(Judgement one, Judgement other);
int gravity(Verdict verdict);

} // namespace loam::assess
