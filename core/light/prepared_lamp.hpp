// A lamp made ready for many points: what does not depend on the point is worked out once.
#pragma once

#include <optional>
#include <vector>

#include "core/independent.hpp"
#include "core/light/uv.hpp"
#include "core/light/uv_readings.hpp"

namespace loam::light {

class PreparedLamp {
public:
    PreparedLamp(const UvLamp& lamp, const Top& top);

    const UvLamp& lamp() const { return lamp_; }
    const Readings& readings() const { return readings_; }
    // As uvi_from and, for one lamp, uvi_at_most of uv.hpp.
    std::optional<Range> uvi(const Point& point) const;
    std::optional<double> uvi_at_most(const Point& point) const;
    // Straight below it, with top and age: nullopt where uvi() has none.
    std::optional<Range> uvi_below(double distance_m) const;

private:
    // How a point lies to the lamp.
    struct Aim {
        double distance_m = 0.0; // to a point lamp's face, or to a tube's axis
        double cosine = 1.0;     // of the angle off the axis, across a tube
        double seen_share = 0.0; // of what it would get from the whole lamp straight above it at that distance
    };
    std::optional<Aim> aim_at(const Point& point) const;
    std::optional<Range> falloff(double cosine) const;
    std::optional<Range> combined(const Range& read, double seen_share, const Range& in_beam) const;

    UvLamp lamp_;
    Top top_;
    Readings readings_;
    Range passed_;                       // of the top
    std::optional<double> woven_;        // open fraction of the mesh in between, likely
    std::optional<Range> left_;          // after its hours
    std::optional<Range> beam_exponent_; // of the cosine, at the beam's low, likely and high
    ProductOfIndependent fixed_;         // reading, top and age
};

std::vector<PreparedLamp> prepared(const std::vector<UvLamp>& lamps, const Top& top);

// As uvi_at and uvi_at_most of uv.hpp.
std::optional<Range> uvi_at(const std::vector<PreparedLamp>& lamps, const Point& point);
std::optional<double> uvi_at_most(const std::vector<PreparedLamp>& lamps, const Point& point);

} // namespace loam::light
