// What skin bears of a hot surface.
#pragma once

#include "core/explain.hpp"

namespace loam::assess {

// Burn thresholds of skin on smooth hot surfaces: 43 degC for contact of 8 h and longer, 48 degC for 10 min.
// Source: ISO 13732-1 (from memory). Reptile skin bears no more; an animal may not move off.
inline constexpr double long_contact_c = 43.0;
inline constexpr double ten_minutes_c = 48.0;
inline const Source burn_source{"ISO 13732-1, burn thresholds of skin", Confidence::memory};

} // namespace loam::assess
