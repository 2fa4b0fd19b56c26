// An animal as it was measured last.
#pragma once

#include "core/plan/contents.hpp"

namespace loam::plan {

// The newest length or mass among its measurements; without one, what the plan states. nullopt: neither.
std::optional<double> length_now_m(const Animal& animal);
std::optional<double> mass_now_kg(const Animal& animal);

} // namespace loam::plan
