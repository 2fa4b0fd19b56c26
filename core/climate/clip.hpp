// A straight way through a slab.
#pragma once

#include "core/climate/view_factors.hpp"

namespace loam::climate {

// Shortens `way`, a span of a parameter t, to where `at` + t `by` lies between the bounds. Empty (to < from) where it
// never does. Method: slabs, one axis after the other.
void clip(Span& way, double at, double by, double low, double high);

} // namespace loam::climate
