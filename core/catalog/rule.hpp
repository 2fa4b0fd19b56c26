// A published floor-area rule.
#pragma once

#include <optional>
#include <string>

#include "core/explain.hpp"
#include "core/json/node.hpp"
#include "core/space/area_formula.hpp"

namespace loam::catalog {

enum class RuleKind { statutory, welfare, veterinary, laboratory };

struct Rule {
    std::string id;
    std::string title; // a plain description of our own, for example "Box 8 by 4 shell lengths for two"
    RuleKind kind = RuleKind::welfare;
    std::string jurisdiction = "none"; // where it is law or official guidance
    space::BodyMeasure measure = space::BodyMeasure::carapace;
    space::AreaFormula formula;
    bool climbing_only = false; // applies to climbing habits only
    Source source;
    json::Extras extras;
    friend bool operator==(const Rule&, const Rule&) = default;
};

} // namespace loam::catalog
