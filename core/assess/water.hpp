// Water to carry a day and conditioner for it.
#pragma once

#include "core/assess/context.hpp"

namespace loam::assess {

struct WaterStage {
    WaterResult result;
    Range treated_l;                           // a day
    std::optional<Range> order_conditioner_ml; // a day; absent: none needed or dose not known
    Notes notes;
    friend bool operator==(const WaterStage&, const WaterStage&) = default;
};

// `heat`: what tops up the bowls and the bed by the solved climate; empty before it has run. What is to be bought
// (`treated_l`, `order_conditioner_ml`) does not hang on it, so that an order needs no balance solved.
WaterStage assess_water(const Context& context, const Housed& housed, const std::vector<HeatCase>& heat);

} // namespace loam::assess
