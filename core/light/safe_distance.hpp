// How near an animal may come to a lamp.
#pragma once

#include <optional>

#include "core/light/prepared_lamp.hpp"

namespace loam::light {

// What: the shortest distance (m) straight below the lamp at which even the upper end of its UV index stays at or under
//   the limit, with the top and its age as they are.
// Method: bisection over the readings' reach. Range: an index that falls with distance; where it is under the limit all
//   over the reach, the near end of that, since nearer nothing is known. nullopt: above the limit as far as they reach,
//   or not known.
std::optional<double> safe_distance_m(const PreparedLamp& lamp, double limit_uvi);

} // namespace loam::light
