// The contents of a box that gets another size.
#pragma once

#include "core/plan/plan.hpp"

namespace loam::batch {

// Middles keep their share of length and width, covers also their size in shares; fittings, mats and panels keep their
// own size. What is held by a height above the base keeps it. Readings, taken in another box, go. Lengths in m, above
// 0.
void move_into_box(plan::Enclosure& enclosure, double from_length_m, double from_width_m);

} // namespace loam::batch
