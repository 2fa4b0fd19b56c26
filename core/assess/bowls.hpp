// Bowls against the animals that drink and bathe in them.
#pragma once

#include <vector>

#include "core/assess/context.hpp"
#include "core/water/water.hpp"

namespace loam::assess {

// Size and depth of each bowl with water in it; where there is none and the species here need one, that is reported.
std::vector<BowlResult> judge_bowls(const Context& context, const Housed& housed, const std::vector<water::Bowl>& bowls,
                                    Notes& notes);

} // namespace loam::assess
