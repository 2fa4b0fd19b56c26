// What the readings of one lamp say straight below it.
#pragma once

#include <optional>
#include <vector>

#include "core/light/uv.hpp"

namespace loam::light {

// Between which distances readings say anything.
struct Reach {
    double nearest_m = 0.0;
    double farthest_m = 0.0;
    friend bool operator==(const Reach&, const Reach&) = default;
};

// What: UV index straight below a lamp, bare of mesh and ageing as its readings are.
// Method: two or more readings: a power law between neighbours. One reading: the fall of a point source, or of a
//   diffuse line as long as the tube, whose light comes from `light_behind_m` behind the face (Range: its ends).
// Range: distances and indices > 0, distances distinct, in any order; readings of zero say nothing and are left out.
//   A table holds between its first and its last distance, one reading from half its distance to twice it.
// Source: Keitz 1971, Light Calculations and Measurements (from memory): inverse square of a point, line source of a
//   tube. The interpolation, the place behind the face and how far one reading reaches are our own.
class Readings {
public:
    explicit Readings(const UvLamp& lamp);

    std::optional<Reach> reach() const; // nullopt: no reading that could be used
    // nullopt: outside the reach.
    std::optional<Range> below(double distance_m) const;
    // An upper bound that also holds beyond the far end: the index there, since light falls. nullopt: nearer than the
    // readings reach, or none.
    std::optional<double> below_at_most(double distance_m) const;

private:
    struct Knot {
        double distance_m = 0.0;
        double uvi = 0.0;
        double log_distance = 0.0;
        double log_uvi = 0.0;
    };
    double fall(double distance_m, double behind_m) const;
    Range by_law(double distance_m) const;

    std::vector<Knot> knots_;
    double tube_m_ = 0.0;
    Range behind_m_;
    Range at_reading_; // fall() at the single reading, for the three places behind the face
};

// What: integral of du / (p^2 + u^2)^2 from 0 to u: what a stretch of a diffuse line sends to a point at a distance
//   p (m) from it. Source: closed form.
double line_integral(double u_m, double p_m);

} // namespace loam::light
