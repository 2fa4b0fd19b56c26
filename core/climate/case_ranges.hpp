// The ranges of one case, worked out on wide cells.
#pragma once

#include <optional>
#include <stop_token>
#include <variant>
#include <vector>

#include "core/climate/geometry.hpp"
#include "core/climate/ranges.hpp"
#include "core/climate/workspace.hpp"

namespace loam::climate {

// Why there is no balance.
enum class Lack { stopped_or_not_physical, out_of_range, not_converged };

// The figures of the case in the order of `make_quantities`. `box` is as in the case.
std::variant<std::vector<QuantityRange>, Lack> case_ranges(const Box& box, const Case& now, const Cells& cells,
                                                           Workspace::Level& level, const std::stop_token& stop);

// What each input does to the readings at the spots.
std::variant<Effects, Lack> spot_effects(const Box& box, const Case& now, const std::vector<Spot>& spots,
                                         const Cells& cells, Workspace::Level& level, const std::stop_token& stop);

} // namespace loam::climate
