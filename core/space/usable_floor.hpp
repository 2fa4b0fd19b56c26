// The floor that is left to the animals among the fittings.
#pragma once

#include <string>
#include <vector>

namespace loam::space {

struct FloorSize {
    double length_m = 0.0;
    double width_m = 0.0;
    friend bool operator==(const FloorSize&, const FloorSize&) = default;
};

// A rectangle by its front-left corner before it is turned about its own centre, counter-clockwise seen from above.
struct Footprint {
    double x_m = 0.0;
    double y_m = 0.0;
    double length_m = 0.0;
    double width_m = 0.0;
    double rotation_deg = 0.0;
    friend bool operator==(const Footprint&, const Footprint&) = default;
};

// What: floor area (m2) under the union of the footprints; what reaches past the floor's edge does not count, what
//   lies under two fittings counts once.
// Method: exact up to rounding. Each footprint is clipped to the floor; the floor is cut into slabs at every corner
//   and every crossing of two outlines; within a slab no outlines cross, so the covered length is linear in x and
//   the slab's area is its width times the covered length at its middle.
// Range: any number of rectangles with sides >= 0; cost grows with the cube of their number.
// Source: closed form (slab decomposition of a union of convex polygons).
double covered_area_m2(const FloorSize& floor, const std::vector<Footprint>& blocked);

// What: floor area (m2) that is left: the whole less covered_area_m2.
double usable_area_m2(const FloorSize& floor, const std::vector<Footprint>& blocked);

struct ClearCircle {
    double x_m = 0.0;
    double y_m = 0.0;
    double diameter_m = 0.0;
    friend bool operator==(const ClearCircle&, const ClearCircle&) = default;
};

// What: the largest circle (diameter in m) that fits on the floor between walls and fittings: the width in which an
//   animal can turn. Diameter 0 where nothing is free.
// Method: branch and bound over squares of floor; the clearance of a point can't exceed that of a square's centre by
//   more than half its diagonal, so no circle more than 1 mm wider is ever missed. The diameter is that of a circle
//   that was found, never more than the true one.
// Range: as covered_area_m2.
// Source: closed form (the distance to a closed set is 1-Lipschitz).
ClearCircle turning_circle(const FloorSize& floor, const std::vector<Footprint>& blocked);

} // namespace loam::space
