#include "core/space/convex.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace loam::space {

namespace {

// A half-plane a x + b y <= c.
struct HalfPlane {
    double a = 0.0;
    double b = 0.0;
    double c = 0.0;
    double excess(const Corner& corner) const { return a * corner.x_m + b * corner.y_m - c; }
};

// One pass of Sutherland and Hodgman's clipping.
Outline clipped(const Outline& outline, const HalfPlane& half)
{
    Outline kept;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Corner& here = outline[i];
        const Corner& next = outline[(i + 1) % outline.size()];
        const double out_here = half.excess(here);
        const double out_next = half.excess(next);
        if (out_here <= 0.0) {
            kept.push_back(here);
        }
        if ((out_here < 0.0 && out_next > 0.0) || (out_here > 0.0 && out_next < 0.0)) {
            const double share = out_here / (out_here - out_next);
            kept.push_back({here.x_m + share * (next.x_m - here.x_m), here.y_m + share * (next.y_m - here.y_m)});
        }
    }
    return kept;
}

double distance_from_segment(const Corner& from, const Corner& to, const Corner& point)
{
    const double along_x = to.x_m - from.x_m;
    const double along_y = to.y_m - from.y_m;
    const double length_squared = along_x * along_x + along_y * along_y;
    double share = 0.0;
    if (length_squared > 0.0) {
        share = ((point.x_m - from.x_m) * along_x + (point.y_m - from.y_m) * along_y) / length_squared;
        share = std::clamp(share, 0.0, 1.0);
    }
    return std::hypot(point.x_m - from.x_m - share * along_x, point.y_m - from.y_m - share * along_y);
}

} // namespace

Outline outline_of(const Footprint& footprint)
{
    const double turn = footprint.rotation_deg * std::numbers::pi / 180.0;
    const double half_x_m = footprint.length_m / 2.0;
    const double half_y_m = footprint.width_m / 2.0;
    const Corner centre = {footprint.x_m + half_x_m, footprint.y_m + half_y_m};
    const auto turned = [&](double dx_m, double dy_m) {
        return Corner{centre.x_m + dx_m * std::cos(turn) - dy_m * std::sin(turn),
                      centre.y_m + dx_m * std::sin(turn) + dy_m * std::cos(turn)};
    };
    return {turned(-half_x_m, -half_y_m), turned(half_x_m, -half_y_m), turned(half_x_m, half_y_m),
            turned(-half_x_m, half_y_m)};
}

Outline clipped_to(const FloorSize& floor, const Outline& outline)
{
    Outline kept = clipped(outline, {-1.0, 0.0, 0.0});
    kept = clipped(kept, {1.0, 0.0, floor.length_m});
    kept = clipped(kept, {0.0, -1.0, 0.0});
    return clipped(kept, {0.0, 1.0, floor.width_m});
}

double distance_from(const Outline& outline, const Corner& point)
{
    double nearest_m = std::numeric_limits<double>::infinity();
    bool inside = true;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Corner& here = outline[i];
        const Corner& next = outline[(i + 1) % outline.size()];
        nearest_m = std::min(nearest_m, distance_from_segment(here, next, point));
        const double turn =
            (next.x_m - here.x_m) * (point.y_m - here.y_m) - (next.y_m - here.y_m) * (point.x_m - here.x_m);
        inside = inside && turn >= 0.0;
    }
    return inside ? -nearest_m : nearest_m;
}

} // namespace loam::space
