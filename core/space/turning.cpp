#include <algorithm>
#include <cmath>
#include <numbers>
#include <queue>

#include "core/space/convex.hpp"
#include "core/space/usable_floor.hpp"

namespace loam::space {

namespace {

constexpr double radius_precision_m = 5e-4;

// A square of floor and the most clearance that any point of it can have.
struct Square {
    Corner centre;
    double half_side_m = 0.0;
    double clearance_m = 0.0; // at the centre
    double bound_m() const { return clearance_m + half_side_m * std::numbers::sqrt2; }
    bool operator<(const Square& other) const { return bound_m() < other.bound_m(); }
};

// Distance to the nearest wall or fitting; negative within one.
double clearance_m(const FloorSize& floor, const std::vector<Outline>& fittings, const Corner& point)
{
    double nearest_m = std::min({point.x_m, point.y_m, floor.length_m - point.x_m, floor.width_m - point.y_m});
    for (const Outline& outline : fittings) {
        nearest_m = std::min(nearest_m, distance_from(outline, point));
    }
    return nearest_m;
}

} // namespace

ClearCircle turning_circle(const FloorSize& floor, const std::vector<Footprint>& blocked)
{
    if (!(floor.length_m > 0.0) || !(floor.width_m > 0.0)) {
        return {};
    }
    std::vector<Outline> fittings;
    for (const Footprint& footprint : blocked) {
        if (footprint.length_m > 0.0 && footprint.width_m > 0.0) {
            fittings.push_back(outline_of(footprint));
        }
    }
    const auto square = [&](Corner centre, double half_side_m) {
        return Square{centre, half_side_m, clearance_m(floor, fittings, centre)};
    };
    const Corner middle = {floor.length_m / 2.0, floor.width_m / 2.0};
    Square best = square(middle, std::max(floor.length_m, floor.width_m) / 2.0);
    std::priority_queue<Square> open;
    open.push(best);
    while (!open.empty() && open.top().bound_m() > std::max(best.clearance_m, 0.0) + radius_precision_m) {
        const Square parent = open.top();
        open.pop();
        const double half_m = parent.half_side_m / 2.0;
        for (const double dx_m : {-half_m, half_m}) {
            for (const double dy_m : {-half_m, half_m}) {
                const Square child = square({parent.centre.x_m + dx_m, parent.centre.y_m + dy_m}, half_m);
                if (child.clearance_m > best.clearance_m) {
                    best = child;
                }
                open.push(child);
            }
        }
    }
    if (best.clearance_m <= 0.0) {
        return {};
    }
    return {best.centre.x_m, best.centre.y_m, 2.0 * best.clearance_m};
}

} // namespace loam::space
