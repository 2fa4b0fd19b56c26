// More distance between a lamp and a perch that burns.
#pragma once

#include <optional>
#include <vector>

#include "core/assess/heat_search.hpp"

namespace loam::assess {

// Of less power for one device, one heating lamp raised, and a lower rock or log the one that changes least: power as a
// share of the present one, height as a share of the present distance. nullopt: none does it alone.
std::optional<Remedy> least_for_perch(const Search& search, const std::vector<Remedy>& by_power);

} // namespace loam::assess
