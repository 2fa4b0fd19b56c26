#include "core/climate/blocks.hpp"

#include <cmath>
#include <numbers>

#include "core/climate/clip.hpp"

namespace loam::climate {

namespace {

// A point in the block's own axes, its centre at the origin.
struct Local {
    double x = 0.0;
    double y = 0.0;
};

Local local(const Block& block, double x_m, double y_m)
{
    const double dx = x_m - (block.area.x_m + 0.5 * block.area.length_m);
    const double dy = y_m - (block.area.y_m + 0.5 * block.area.width_m);
    if (block.rotation_deg == 0.0) // most, and this is asked for every ray
        return {dx, dy};
    const double angle = -block.rotation_deg * std::numbers::pi / 180.0;
    return {dx * std::cos(angle) - dy * std::sin(angle), dx * std::sin(angle) + dy * std::cos(angle)};
}

bool covers(const Block& block, double x_m, double y_m)
{
    const Local at = local(block, x_m, y_m);
    return std::abs(at.x) <= 0.5 * block.area.length_m && std::abs(at.y) <= 0.5 * block.area.width_m;
}

double foot_m(const Geometry& g, const Block& block)
{
    return g
        .depth_m[g.column_at(block.area.x_m + 0.5 * block.area.length_m, block.area.y_m + 0.5 * block.area.width_m)];
}

// Share of the way at which it is met; beyond 1 where it is not. It reaches down through the bed.
double met_at(const Block& block, double top_m, const Point& from, const Point& to)
{
    const Local a = local(block, from.x_m, from.y_m);
    const Local b = local(block, to.x_m, to.y_m);
    Span way{0.0, 1.0};
    clip(way, a.x, b.x - a.x, -0.5 * block.area.length_m, 0.5 * block.area.length_m);
    clip(way, a.y, b.y - a.y, -0.5 * block.area.width_m, 0.5 * block.area.width_m);
    clip(way, from.z_m, to.z_m - from.z_m, -1.0, top_m);
    return way.to > way.from ? way.from : 2.0;
}

} // namespace

std::optional<std::size_t> block_between(const Box& box, const Geometry& geometry, const Point& lamp,
                                         const Point& target)
{
    constexpr double stands_on_m = 0.03; // heights are told that well
    std::optional<std::size_t> first;
    double first_at = 1.0 - 1e-9;
    for (std::size_t i = 0; i < box.blocks.size(); ++i) {
        const Block& block = box.blocks[i];
        const double below_m = foot_m(geometry, block);
        const double top_m = below_m + block.height_m;
        if (target.z_m >= top_m - stands_on_m && target.z_m > below_m + 0.5 * block.height_m &&
            covers(block, target.x_m, target.y_m))
            continue;
        const double at = met_at(block, top_m, lamp, target);
        if (at < first_at) {
            first_at = at;
            first = i;
        }
    }
    return first;
}

std::vector<double> under_block_m2(const Geometry& geometry, const Block& block)
{
    constexpr int samples = 4;
    const double part_m2 = geometry.dx_m * geometry.dy_m / (samples * samples);
    std::vector<double> area_m2(geometry.columns(), 0.0);
    for (std::size_t c = 0; c < geometry.columns(); ++c) {
        const Rect cell = geometry.cell(c);
        for (int s = 0; s < samples * samples; ++s) {
            const int row = s / samples;
            const double x_m = cell.x_m + (s % samples + 0.5) / samples * geometry.dx_m;
            const double y_m = cell.y_m + (row + 0.5) / samples * geometry.dy_m;
            if (covers(block, x_m, y_m))
                area_m2[c] += part_m2;
        }
    }
    return area_m2;
}

} // namespace loam::climate
