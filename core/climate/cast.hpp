// Where the beam of a lamp arrives, per watt of beam.
#pragma once

#include <cstddef>
#include <vector>

#include "core/climate/geometry.hpp"

namespace loam::climate {

// Region 0 is the bare top (or no top at all between lamp and floor), region i + 1 is cover i: what arrives is kept
// apart by the region it came through, so that their transmittances can vary without casting again.
struct Cast {
    std::vector<double> region_share;        // of the beam that strikes each region from above
    std::vector<std::vector<double>> column; // per region: share of the beam that would arrive on each column
    std::vector<std::vector<double>> patch;  // the same on the walls
    std::vector<std::vector<double>> block;  // and on what stands in the way
};

// Method: source points (one, or a row of them for a tube) over midpoints of the receivers; scaled per region so that
// what arrives is what entered, which a polar integral gives. A beam points straight down. Blocks keep what they meet.
Cast cast_beam(const Box& box, const Geometry& geometry, const Lamp& lamp, double exponent);

// Irradiance at a point, 1/m2 per watt of beam, and the region that it comes through.
struct PointCast {
    double per_m2 = 0.0;
    std::size_t region = 0;
};
std::vector<PointCast> cast_to_point(const Box& box, const Geometry& geometry, const Lamp& lamp, double exponent,
                                     const Point& point);

// Irradiance at points of a wall, 1/m2 per watt of beam, per region that it comes through.
std::vector<std::vector<double>> cast_on_plane(const Box& box, const Geometry& geometry, const Lamp& lamp,
                                               double exponent, Plane plane, const std::vector<Point>& points);

// Irradiance from above at points of the top, 1/m2 per watt of beam of a lamp over it.
std::vector<double> irradiance_on_top(const Box& box, const Lamp& lamp, double exponent,
                                      const std::vector<Point>& points);

} // namespace loam::climate
