// What one device can do about a miss of heat.
#pragma once

#include "core/assess/heat_search.hpp"

namespace loam::assess {

// The smallest change of a device that cures the miss and pushes no other zone out: of the strongest heater first its
// thermostat or dimmer, then its power; where it is too cold last a heater more. nullopt: none does.
std::optional<Remedy> cure_by_device(const Search& search);

} // namespace loam::assess
