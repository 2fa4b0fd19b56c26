// Floor, height and hides: from the plan to core/space and back to results and findings.
#pragma once

#include "core/assess/context.hpp"

namespace loam::assess {

struct SpaceStage {
    SpaceResult result;
    Notes notes;
    friend bool operator==(const SpaceStage&, const SpaceStage&) = default;
};

SpaceStage assess_space(const Context& context, const Housed& housed);

} // namespace loam::assess
