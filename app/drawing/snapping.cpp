#include "app/drawing/snapping.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace loam::drawing {

namespace {

// One side of the floor at a time.
struct Span {
    double low = 0.0;
    double high = 0.0;
    double middle() const { return (low + high) / 2.0; }
};

Span along_length(const QRectF& box)
{
    return {box.left(), box.right()};
}

Span along_width(const QRectF& box)
{
    return {box.top(), box.bottom()};
}

struct Meeting {
    double by_m = 0.0; // to get there
    double at_m = 0.0; // the line in common
};

// The nearest of the lines that the span, `by_m` further, can be brought in line with.
std::optional<Meeting> nearest(const Span& span, double by_m, const std::vector<Span>& others, double reach_m)
{
    std::optional<Meeting> best;
    const auto look = [&](double own_m, double line_m) {
        const double to_m = line_m - own_m;
        if (std::abs(to_m - by_m) <= reach_m && (!best || std::abs(to_m - by_m) < std::abs(best->by_m - by_m))) {
            best = Meeting{to_m, line_m};
        }
    };
    for (const Span& other : others) {
        for (const double line_m : {other.low, other.high}) {
            look(span.low, line_m);
            look(span.high, line_m);
        }
        look(span.middle(), other.middle());
    }
    return best;
}

double on_raster(double at_m, double by_m, double step_m)
{
    return std::round((at_m + by_m) / step_m) * step_m - at_m;
}

} // namespace

Snapped snapped(const plan::Enclosure& enclosure, const Placed& what, const QPointF& by_m, double reach_m, bool free)
{
    const QRectF& box = what.footprint_m;
    const QPointF corner = what.by_middle ? box.center() : box.topLeft(); // what the plan says of it
    const double step_m = free ? 0.001 : raster_m;
    Snapped result{{on_raster(corner.x(), by_m.x(), step_m), on_raster(corner.y(), by_m.y(), step_m)}, {}};
    if (free) {
        return result;
    }
    const plan::Shell& shell = enclosure.shell;
    std::vector<Span> lengthwise{{0.0, shell.length_m}};
    std::vector<Span> widthwise{{0.0, shell.width_m}};
    for (const Placed& other : placed_things(enclosure)) {
        if (other.id != what.id && other.freedom == Freedom::both) {
            lengthwise.push_back(along_length(other.footprint_m));
            widthwise.push_back(along_width(other.footprint_m));
        }
    }
    if (const auto x = nearest(along_length(box), by_m.x(), lengthwise, reach_m);
        x && what.freedom != Freedom::along_width) {
        result.by_m.setX(x->by_m);
        result.guides.emplace_back(x->at_m, 0.0, x->at_m, shell.width_m);
    }
    if (const auto y = nearest(along_width(box), by_m.y(), widthwise, reach_m);
        y && what.freedom != Freedom::along_length) {
        result.by_m.setY(y->by_m);
        result.guides.emplace_back(0.0, y->at_m, shell.length_m, y->at_m);
    }
    return result;
}

} // namespace loam::drawing
