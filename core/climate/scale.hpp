// An uncertain input on the scale of its own standard deviations, on which all inputs are alike.
#pragma once

#include "core/explain.hpp"

namespace loam::climate {

// The value of the input so many standard deviations above (below, if negative) its likely value; at +-1.645 the ends
// of its range exactly. Method: normal with a half of its own on either side; for a share between 0 and 1 on its
// logarithm of odds, for what is above 0 on its logarithm, so that no estimate leaves what is physical; what may be
// nought, or whole (1), ends there.
double value_at(const Range& prior, double deviations);

inline constexpr double deviations_at_ends = 1.645; // 5th and 95th percentile of a normal distribution

} // namespace loam::climate
