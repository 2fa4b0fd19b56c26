// How much of a lamp a point can see past the covers on the top.
#pragma once

#include <span>
#include <vector>

#include "core/light/uv.hpp"

namespace loam::light {

// A stretch of a tube, along x from its middle; of a point lamp it has no length.
struct Stretch {
    double from_m = 0.0;
    double to_m = 0.0;
};

// What: the stretches of the lamp's length that the point sees; for a point lamp one of length 0, or none.
// Method: straight lines; each cover hides the stretch whose lines pass through its rectangle.
// Range: the lamp above the point. A lamp below the top is not hidden. Source: closed form.
std::vector<Stretch> seen_of(const UvLamp& lamp, const Top& top, const Point& point);

// What: light that stretches of a diffuse line send to a point at a distance from its axis, relative to the whole
//   tube seen from opposite its middle at the same distance.
// Method: E ~ integral of ds / r^4 in closed form. `along_m` is the point's place along the tube, from its middle.
// Source: Keitz 1971, Light Calculations and Measurements (from memory), derivation repeated.
double line_share(double tube_m, std::span<const Stretch> seen, double along_m, double axis_distance_m);

} // namespace loam::light
