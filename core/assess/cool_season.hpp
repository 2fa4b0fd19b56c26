// Who may rest in the cold, and how the rest goes that the keeper has asked for.
#pragma once

#include <vector>

#include "core/assess/context.hpp"

namespace loam::assess {

struct CoolSeasonStage {
    std::vector<CoolSeasonResult> results;
    Notes notes;
    friend bool operator==(const CoolSeasonStage&, const CoolSeasonStage&) = default;
};

// Depends on today: an animal grows older until its rest begins, and a rest may be over.
CoolSeasonStage assess_cool_seasons(const Context& context, const Housed& housed);

} // namespace loam::assess
