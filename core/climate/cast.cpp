#include "core/climate/cast.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/climate/beam.hpp"
#include "core/climate/blocks.hpp"
#include "core/climate/clip.hpp"

namespace loam::climate {

namespace {

// A lamp above the top hangs at least a finger's breadth over it; one inside hangs below it.
double lamp_height_m(const Box& box, const Lamp& lamp)
{
    return lamp.above_top ? std::max(lamp.at.z_m, box.height_m + 0.01) : std::min(lamp.at.z_m, box.height_m);
}

std::vector<Point> source_points(const Box& box, const Lamp& lamp)
{
    const int count = std::clamp(static_cast<int>(std::ceil(lamp.length_m / 0.05)), 1, 12);
    std::vector<Point> points;
    for (int i = 0; i < count; ++i) {
        const double along = (static_cast<double>(i) + 0.5) / static_cast<double>(count) - 0.5;
        points.push_back({lamp.at.x_m + along * lamp.length_m, lamp.at.y_m, lamp_height_m(box, lamp)});
    }
    return points;
}

// Region where the ray to `target` passes the top; nullopt where it would have to pass a wall from outside.
std::optional<std::size_t> region_of(const Box& box, const Lamp& lamp, const Point& source, const Point& target)
{
    if (!lamp.above_top)
        return 0;
    const double part = (source.z_m - box.height_m) / (source.z_m - target.z_m);
    const double x = std::lerp(source.x_m, target.x_m, part);
    const double y = std::lerp(source.y_m, target.y_m, part);
    if (!holds({0.0, 0.0, box.length_m, box.width_m}, x, y))
        return std::nullopt;
    for (std::size_t i = 0; i < box.covers.size(); ++i)
        if (holds(box.covers[i].area, x, y))
            return i + 1;
    return 0;
}

using Hit = std::optional<std::size_t>; // the block that is met on the way

struct Caster {
    const Box& box;
    const Geometry& geometry;
    const Lamp& lamp;
    double exponent;
    std::vector<Point> sources;

    // Adds what would reach a small plane at `target` to the sums of its region, or of the block that is met before.
    template <class Add> void to(const Point& target, const Normal& normal, double area_m2, const Add& add) const
    {
        for (const Point& source : sources) {
            const Offset offset{target.x_m - source.x_m, target.y_m - source.y_m, source.z_m - target.z_m};
            const double per_m2 = beam_irradiance_per_m2(exponent, offset, normal);
            if (per_m2 <= 0.0)
                continue;
            if (const auto region = region_of(box, lamp, source, target))
                add(*region, block_between(box, geometry, source, target),
                    per_m2 * area_m2 / static_cast<double>(sources.size()));
        }
    }
};

Normal inward(Plane plane)
{
    switch (plane) {
    case Plane::left:
        return {1.0, 0.0, 0.0};
    case Plane::right:
        return {-1.0, 0.0, 0.0};
    case Plane::front:
        return {0.0, 1.0, 0.0};
    case Plane::back:
        return {0.0, -1.0, 0.0};
    case Plane::ceiling:
        return {0.0, 0.0, -1.0};
    case Plane::floor:
        break;
    }
    return {0.0, 0.0, 1.0};
}

void cast_on_floor(const Caster& caster, const Geometry& g, Cast& cast)
{
    constexpr int samples = 3;
    const double area_m2 = g.dx_m * g.dy_m / (samples * samples);
    for (std::size_t c = 0; c < g.columns(); ++c) {
        const Rect cell = g.cell(c);
        for (int s = 0; s < samples * samples; ++s) {
            const int row = s / samples;
            const Point target{cell.x_m + (s % samples + 0.5) / samples * g.dx_m,
                               cell.y_m + (row + 0.5) / samples * g.dy_m, g.depth_m[c]};
            caster.to(target, Normal{}, area_m2, [&](std::size_t region, Hit hit, double share) {
                (hit ? cast.block[region][*hit] : cast.column[region][c]) += share;
            });
        }
    }
}

void cast_on_walls(const Caster& caster, const Geometry& g, Cast& cast)
{
    constexpr int samples = 6;
    for (std::size_t p = 0; p < g.patches.size(); ++p) {
        const Patch& patch = g.patches[p];
        if (patch.plane == Plane::floor || patch.plane == Plane::ceiling)
            continue;
        const std::size_t along = patch.plane == Plane::left || patch.plane == Plane::right ? 1 : 0;
        for (int s = 0; s < samples * samples; ++s) {
            const int row = s / samples;
            std::array<double, 3> at{patch.at[0].from, patch.at[1].from, 0.0};
            at[along] = std::lerp(patch.at[along].from, patch.at[along].to, (s % samples + 0.5) / samples);
            at[2] = g.bed_mean_m + std::lerp(patch.at[2].from, patch.at[2].to, (row + 0.5) / samples);
            caster.to({at[0], at[1], at[2]}, inward(patch.plane), patch.area_m2() / (samples * samples),
                      [&](std::size_t region, Hit hit, double share) {
                          (hit ? cast.block[region][*hit] : cast.patch[region][p]) += share;
                      });
        }
    }
}

// Share of the beam between two distances from the axis, `drop_m` below the source.
double ring_share(double exponent, double drop_m, double from_m, double to_m)
{
    const auto within = [&](double r) { return beam_share_within(exponent, drop_m / std::hypot(drop_m, r)); };
    return within(to_m) - within(from_m);
}

// Where a ray from `x, y` in direction `(c, s)` lies inside a rectangle: distances from and to; empty if to <= from.
Span inside_rect(const Rect& rect, double x, double y, double c, double s)
{
    Span span{0.0, 1e9};
    clip(span, x, c, rect.x_m, rect.x_m + rect.length_m);
    clip(span, y, s, rect.y_m, rect.y_m + rect.width_m);
    return span;
}

double share_through(const Caster& caster, const Rect& rect)
{
    constexpr int directions = 128; // a multiple of 4 keeps mirror symmetry
    double share = 0.0;
    for (const Point& source : caster.sources)
        for (int d = 0; d < directions; ++d) {
            const double angle = (d + 0.5) / directions * 2.0 * std::numbers::pi;
            const Span span = inside_rect(rect, source.x_m, source.y_m, std::cos(angle), std::sin(angle));
            if (span.to > span.from)
                share += ring_share(caster.exponent, source.z_m - caster.box.height_m, span.from, span.to);
        }
    return share / (directions * static_cast<double>(caster.sources.size()));
}

std::vector<double> shares_of_regions(const Caster& caster)
{
    const Box& box = caster.box;
    std::vector<double> shares(box.covers.size() + 1, 0.0);
    if (!caster.lamp.above_top) {
        shares[0] = 1.0;
        return shares;
    }
    shares[0] = share_through(caster, {0.0, 0.0, box.length_m, box.width_m});
    for (std::size_t i = 0; i < box.covers.size(); ++i) {
        shares[i + 1] = std::min(shares[0], share_through(caster, box.covers[i].area));
        shares[0] -= shares[i + 1];
    }
    return shares;
}

void scale_to_shares(Cast& cast)
{
    for (std::size_t r = 0; r < cast.region_share.size(); ++r) {
        double arrived = 0.0;
        for (const auto* shares : {&cast.column[r], &cast.patch[r], &cast.block[r]})
            for (const double share : *shares)
                arrived += share;
        if (arrived <= 0.0) {
            cast.region_share[r] = 0.0; // a sliver that no sample saw
            continue;
        }
        const double factor = cast.region_share[r] / arrived;
        for (auto* shares : {&cast.column[r], &cast.patch[r], &cast.block[r]})
            for (double& share : *shares)
                share *= factor;
    }
}

} // namespace

Cast cast_beam(const Box& box, const Geometry& geometry, const Lamp& lamp, double exponent)
{
    const Caster caster{box, geometry, lamp, exponent, source_points(box, lamp)};
    const std::size_t regions = box.covers.size() + 1;
    Cast cast{.region_share = shares_of_regions(caster),
              .column = std::vector(regions, std::vector<double>(geometry.columns(), 0.0)),
              .patch = std::vector(regions, std::vector<double>(geometry.patches.size(), 0.0)),
              .block = std::vector(regions, std::vector<double>(box.blocks.size(), 0.0))};
    cast_on_floor(caster, geometry, cast);
    cast_on_walls(caster, geometry, cast);
    scale_to_shares(cast);
    return cast;
}

std::vector<PointCast> cast_to_point(const Box& box, const Geometry& geometry, const Lamp& lamp, double exponent,
                                     const Point& point)
{
    const Caster caster{box, geometry, lamp, exponent, source_points(box, lamp)};
    std::vector<PointCast> casts;
    caster.to(point, Normal{}, 1.0, [&](std::size_t region, Hit hit, double per_m2) {
        if (!hit)
            casts.push_back({per_m2, region});
    });
    return casts;
}

std::vector<std::vector<double>> cast_on_plane(const Box& box, const Geometry& geometry, const Lamp& lamp,
                                               double exponent, Plane plane, const std::vector<Point>& points)
{
    const Caster caster{box, geometry, lamp, exponent, source_points(box, lamp)};
    std::vector<std::vector<double>> casts(box.covers.size() + 1, std::vector<double>(points.size(), 0.0));
    for (std::size_t i = 0; i < points.size(); ++i)
        caster.to(points[i], inward(plane), 1.0, [&](std::size_t region, Hit hit, double per_m2) {
            if (!hit)
                casts[region][i] += per_m2;
        });
    return casts;
}

std::vector<double> irradiance_on_top(const Box& box, const Lamp& lamp, double exponent,
                                      const std::vector<Point>& points)
{
    const std::vector<Point> sources = source_points(box, lamp);
    std::vector<double> above;
    for (const Point& point : points) {
        double sum = 0.0;
        for (const Point& source : sources)
            sum += beam_irradiance_per_m2(
                exponent, {point.x_m - source.x_m, point.y_m - source.y_m, source.z_m - point.z_m}, Normal{});
        above.push_back(sum / static_cast<double>(sources.size()));
    }
    return above;
}

} // namespace loam::climate
