// Which end of a box is meant to be the warm one.
#pragma once

#include <optional>

#include "core/plan/plan.hpp"

namespace loam::assess {

// x of the middle of all heat, weighted by watts (unknown watts count alike). nullopt: nothing in the plan heats.
std::optional<double> warm_centre_m(const plan::Enclosure& enclosure);

} // namespace loam::assess
