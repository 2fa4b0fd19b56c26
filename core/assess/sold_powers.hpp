// The powers in which each kind of heating is sold: a remedy never names another.
#pragma once

#include <optional>
#include <span>

#include "core/plan/plan.hpp"

namespace loam::assess {

// Ascending, W. Source: common practice, no source; within the powers of the catalog's kinds where those are narrow.
std::span<const double> powers_sold(plan::DeviceKind kind);

// The strongest that is sold and not above this. nullopt: none is so weak.
std::optional<double> sold_at_most(plan::DeviceKind kind, double power_w);

} // namespace loam::assess
