// Where the top may be covered to hold moisture.
#pragma once

#include <vector>

#include "core/climate/box.hpp"

namespace loam::assess {

// A quarter of the top stays open for fresh air: cautious, our own.
inline constexpr double most_covered_share = 0.75;

// Strips across the whole width, measured from the two ends, that keep `clearance_m` from every lamp and together
// cover `share` (0..1) of the top, the end that is freer first. Less where the lamps leave less room, and never more
// than `most_covered_share`; empty where nothing may lie there or the top is no mesh.
std::vector<climate::Rect> cover_places(const climate::Box& box, double share, double clearance_m);

// The most of the top, 0..1, that those strips can cover.
double coverable_share(const climate::Box& box, double clearance_m);

// The share of the top, 0..1, that the box's covers lie on; where they overlap it counts once.
double covered_share(const climate::Box& box);

// The box with its covers taken away and others laid on `cover_places`: like the first of them, else panes like the
// walls in 4 mm.
climate::Box with_cover_share(const climate::Box& box, double share, double clearance_m);

} // namespace loam::assess
