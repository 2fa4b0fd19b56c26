#include "core/light/visible.hpp"

#include <algorithm>

#include "core/light/uv_readings.hpp"

namespace loam::light {

namespace {

// What one cover hides of the tube; from_m >= to_m: nothing. `share` is how far up the lines cross the top.
Stretch hidden_by(const Patch& cover, const UvLamp& lamp, const Point& point, double share)
{
    const double crossing_y_m = point.y_m + share * (lamp.at.y_m - point.y_m);
    if (crossing_y_m < cover.y_m || crossing_y_m > cover.y_m + cover.width_m || !(share > 0.0)) {
        return {};
    }
    // A line to the tube at s crosses the top at x = point + share * (lamp + s - point).
    const auto along_m = [&](double x_m) { return point.x_m + (x_m - point.x_m) / share - lamp.at.x_m; };
    return {along_m(cover.x_m), along_m(cover.x_m + cover.length_m)};
}

std::vector<Stretch> without(const std::vector<Stretch>& seen, const Stretch& hidden)
{
    std::vector<Stretch> left;
    for (const Stretch& stretch : seen) {
        if (hidden.to_m < stretch.from_m || hidden.from_m > stretch.to_m) {
            left.push_back(stretch);
            continue;
        }
        if (stretch.from_m < hidden.from_m) {
            left.push_back({stretch.from_m, hidden.from_m});
        }
        if (hidden.to_m < stretch.to_m) {
            left.push_back({hidden.to_m, stretch.to_m});
        }
    }
    return left;
}

} // namespace

std::vector<Stretch> seen_of(const UvLamp& lamp, const Top& top, const Point& point)
{
    std::vector<Stretch> seen = {{-lamp.length_m / 2.0, lamp.length_m / 2.0}};
    if (!lamp.above_top || point.z_m >= top.height_m) {
        return seen;
    }
    const double share = (top.height_m - point.z_m) / (lamp.at.z_m - point.z_m);
    for (const Patch& cover : top.covers) {
        const Stretch hidden = hidden_by(cover, lamp, point, std::min(1.0, share));
        if (hidden.from_m < hidden.to_m) {
            seen = without(seen, hidden);
        }
    }
    return seen;
}

double line_share(double tube_m, std::span<const Stretch> seen, double along_m, double axis_distance_m)
{
    double sum = 0.0;
    for (const Stretch& stretch : seen) {
        sum += line_integral(stretch.to_m - along_m, axis_distance_m) -
               line_integral(stretch.from_m - along_m, axis_distance_m);
    }
    return sum / (2.0 * line_integral(tube_m / 2.0, axis_distance_m));
}

} // namespace loam::light
