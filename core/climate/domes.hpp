// Lamps' domes that lie on the mesh: nothing flows through the mesh below them, and their shiny inside sends long-wave
// radiation back.
#pragma once

#include "core/climate/box.hpp"

namespace loam::climate {

// Area (m2) of the top within `part` that domes cover. Method: each as a square of its circle's area; where two lie
// over each other both count, up to the whole part. Range: any.
double under_domes_m2(const Box& box, const Rect& part);

} // namespace loam::climate
