// Convex outlines on the floor, corners counter-clockwise.
#pragma once

#include <vector>

#include "core/space/usable_floor.hpp"

namespace loam::space {

struct Corner {
    double x_m = 0.0;
    double y_m = 0.0;
};

using Outline = std::vector<Corner>;

// The four corners of a footprint after its turn.
Outline outline_of(const Footprint& footprint);

// What is left of a convex outline inside the floor; fewer than three corners: nothing.
Outline clipped_to(const FloorSize& floor, const Outline& outline);

// Distance (m) of a point from a convex outline: positive outside it, negative within.
double distance_from(const Outline& outline, const Corner& point);

} // namespace loam::space
