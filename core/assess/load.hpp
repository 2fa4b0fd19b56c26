// What a box weighs, and what all boxes on one stand weigh together.
#pragma once

#include <vector>

#include "core/assess/context.hpp"

namespace loam::assess {

struct MassStage {
    MassResult result;
    bool known = false; // false: a material's density is missing, the mass is only what could be computed
    Notes notes;
    friend bool operator==(const MassStage&, const MassStage&) = default;
};

MassStage assess_mass(const Context& context, const Housed& housed, const std::vector<SubstrateResult>& bed);

struct StandStage {
    std::vector<StandResult> results;
    Notes notes;
};

// `masses` in the order of the plan's enclosures. Loads add over every enclosure that names the stand.
StandStage assess_stands(const Context& context, const std::vector<MassStage>& masses);

} // namespace loam::assess
