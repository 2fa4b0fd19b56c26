// What stands in the way of lamp light.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/climate/geometry.hpp"

namespace loam::climate {

// The first block that the straight way from a lamp to a point meets. A point on a block's upper face is not hidden by
// that block.
std::optional<std::size_t> block_between(const Box& box, const Geometry& geometry, const Point& lamp,
                                         const Point& target);

// Area (m2) of each column under a block, by a grid of points.
std::vector<double> under_block_m2(const Geometry& geometry, const Block& block);

} // namespace loam::climate
