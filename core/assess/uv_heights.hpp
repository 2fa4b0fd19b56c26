// At which heights a lamp gives its animals what they need, and when it no longer does.
#pragma once

#include <optional>

#include "core/assess/uv_scene.hpp"

namespace loam::assess {

// The lamp as it would shine from another height; through the top where it then hangs over it.
light::UvLamp at_height(const UvScene& scene, std::size_t lamp, double z_m);

// What: heights of one lamp's face that put the strongest UV of the basking place inside the target, and nothing within
//   reach over its upper end. Those that do so with the whole range; where there are none, with the likely value.
// Method: every centimetre from the highest back to a metre over the top, on this side of the top, else on the other;
//   the first stretch without a gap that begins nearest to the lamp's present height.
// Range: nullopt where no height does it, or its readings don't reach so far.
std::optional<UvHeights> heights_for(const UvScene& scene, const plan::Shell& shell, std::size_t lamp,
                                     const Target& target);

// What: the lowest height at or over the present one at which no back within reach gets more than the limit, even at
//   the upper end. Method: as above.
std::optional<double> height_under_limit(const UvScene& scene, const plan::Shell& shell, std::size_t lamp,
                                         double limit_uvi);

// What: hours of burning, all lamps alike, until the UV of a place falls below an index.
// Method: bisection on what ageing leaves; `fresh` counts from new lamps, else from their hours so far.
// Range: up to 50,000 h; absent beyond that, or where not known.
UvHours hours_above(const UvScene& scene, const light::Point& place, double least_uvi, bool fresh);

} // namespace loam::assess
