#include "core/space/usable_floor.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "core/space/convex.hpp"

namespace loam::space {

namespace {

struct Span {
    double from_m = 0.0;
    double to_m = 0.0;
};

std::vector<Outline> outlines_on(const FloorSize& floor, const std::vector<Footprint>& blocked)
{
    std::vector<Outline> outlines;
    for (const Footprint& footprint : blocked) {
        Outline outline = clipped_to(floor, outline_of(footprint));
        if (outline.size() >= 3) {
            outlines.push_back(std::move(outline));
        }
    }
    return outlines;
}

// x where two edges cross; parallel ones never cut a slab.
std::optional<double> crossing_x_m(const Corner& a, const Corner& b, const Corner& c, const Corner& d)
{
    const double ab_x = b.x_m - a.x_m;
    const double ab_y = b.y_m - a.y_m;
    const double cd_x = d.x_m - c.x_m;
    const double cd_y = d.y_m - c.y_m;
    const double turn = ab_x * cd_y - ab_y * cd_x;
    if (turn == 0.0) {
        return std::nullopt;
    }
    const double along_ab = ((c.x_m - a.x_m) * cd_y - (c.y_m - a.y_m) * cd_x) / turn;
    const double along_cd = ((c.x_m - a.x_m) * ab_y - (c.y_m - a.y_m) * ab_x) / turn;
    if (along_ab < 0.0 || along_ab > 1.0 || along_cd < 0.0 || along_cd > 1.0) {
        return std::nullopt;
    }
    return a.x_m + along_ab * ab_x;
}

void add_crossings(const Outline& one, const Outline& other, std::vector<double>& cuts_m)
{
    for (std::size_t i = 0; i < one.size(); ++i) {
        for (std::size_t j = 0; j < other.size(); ++j) {
            const auto x_m = crossing_x_m(one[i], one[(i + 1) % one.size()], other[j], other[(j + 1) % other.size()]);
            if (x_m) {
                cuts_m.push_back(*x_m);
            }
        }
    }
}

// Where the slabs begin and end, ascending.
std::vector<double> cuts_of(const std::vector<Outline>& outlines)
{
    std::vector<double> cuts_m;
    for (std::size_t i = 0; i < outlines.size(); ++i) {
        for (const Corner& corner : outlines[i]) {
            cuts_m.push_back(corner.x_m);
        }
        for (std::size_t j = i + 1; j < outlines.size(); ++j) {
            add_crossings(outlines[i], outlines[j], cuts_m);
        }
    }
    std::sort(cuts_m.begin(), cuts_m.end());
    return cuts_m;
}

// The part of the line x = const inside a convex outline.
std::optional<Span> span_at(const Outline& outline, double x_m)
{
    std::optional<Span> span;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Corner& here = outline[i];
        const Corner& next = outline[(i + 1) % outline.size()];
        if ((here.x_m <= x_m) == (next.x_m <= x_m)) {
            continue;
        }
        const double y_m = here.y_m + (x_m - here.x_m) / (next.x_m - here.x_m) * (next.y_m - here.y_m);
        span = span ? Span{std::min(span->from_m, y_m), std::max(span->to_m, y_m)} : Span{y_m, y_m};
    }
    return span;
}

double covered_length_m(const std::vector<Outline>& outlines, double x_m)
{
    std::vector<Span> spans;
    for (const Outline& outline : outlines) {
        if (const auto span = span_at(outline, x_m)) {
            spans.push_back(*span);
        }
    }
    std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.from_m < b.from_m; });
    double covered_m = 0.0;
    double reached_m = 0.0; // the floor begins at y = 0
    for (const Span& span : spans) {
        covered_m += std::max(0.0, span.to_m - std::max(span.from_m, reached_m));
        reached_m = std::max(reached_m, span.to_m);
    }
    return covered_m;
}

} // namespace

double covered_area_m2(const FloorSize& floor, const std::vector<Footprint>& blocked)
{
    const std::vector<Outline> outlines = outlines_on(floor, blocked);
    const std::vector<double> cuts_m = cuts_of(outlines);
    double area_m2 = 0.0;
    for (std::size_t i = 1; i < cuts_m.size(); ++i) {
        const double width_m = cuts_m[i] - cuts_m[i - 1];
        if (width_m > 0.0) {
            area_m2 += width_m * covered_length_m(outlines, cuts_m[i - 1] + width_m / 2.0);
        }
    }
    return area_m2;
}

double usable_area_m2(const FloorSize& floor, const std::vector<Footprint>& blocked)
{
    return std::max(0.0, floor.length_m * floor.width_m - covered_area_m2(floor, blocked));
}

} // namespace loam::space
