// The bed: litres, kilograms, and whether it suits the animals.
#pragma once

#include "core/assess/context.hpp"

namespace loam::assess {

struct SubstrateStage {
    std::vector<SubstrateResult> results;
    Notes notes;
    friend bool operator==(const SubstrateStage&, const SubstrateStage&) = default;
};

SubstrateStage assess_substrate(const Context& context, const Housed& housed);

// Height of the settled bed over the base pane at x.
double bed_surface_m(const plan::Enclosure& enclosure, double x_m);

} // namespace loam::assess
