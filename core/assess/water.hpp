// Water to carry a day and conditioner for it.
#pragma once

#include "core/assess/context.hpp"

namespace loam::assess {

struct WaterStage {
    WaterResult result;
    Range treated_l; // a day
    Notes notes;
    friend bool operator==(const WaterStage&, const WaterStage&) = default;
};

// `bowl_evaporation_l_per_day` from the climate; absent before it has run.
WaterStage assess_water(const Context& context, const Housed& housed);

} // namespace loam::assess
