#include "core/light/uv.hpp"

#include <cassert>
#include <cmath>
#include <numbers>

#include "core/independent.hpp"
#include "core/light/visible.hpp"

namespace loam::light {

namespace {

constexpr double degree = std::numbers::pi / 180.0;
constexpr double straight_below_deg = 10.0;
constexpr Range unknown_mesh = {0.5, 0.6, 0.7};

// How a point lies to a lamp.
struct Aim {
    double distance_m = 0.0; // to a point lamp's face, or to a tube's axis
    double off_axis_deg = 0.0;
    double seen_share = 0.0; // of what it would get from the whole lamp straight above it at that distance
};

std::optional<Aim> aim_of(const UvLamp& lamp, const Top& top, const Point& point)
{
    const double height_m = lamp.at.z_m - point.z_m;
    if (!(height_m > 0.0)) {
        return std::nullopt;
    }
    const double along_m = point.x_m - lamp.at.x_m;
    const double across_m = point.y_m - lamp.at.y_m;
    const std::vector<Stretch> seen = seen_of(lamp, top, point);
    if (lamp.length_m > 0.0) {
        const double axis_m = std::hypot(across_m, height_m);
        return Aim{axis_m, std::atan2(std::abs(across_m), height_m) / degree,
                   line_share(lamp.length_m, seen, along_m, axis_m)};
    }
    const double aside_m = std::hypot(along_m, across_m);
    return Aim{std::hypot(aside_m, height_m), std::atan2(aside_m, height_m) / degree, seen.empty() ? 0.0 : 1.0};
}

double beam_falloff(double beam_deg, double off_axis_deg)
{
    const double exponent = -std::numbers::ln2 / std::log(std::cos(beam_deg / 2.0 * degree));
    return std::pow(std::cos(off_axis_deg * degree), exponent);
}

// nullopt: the beam is not known and the point is not straight below.
std::optional<Range> falloff(const std::optional<Range>& beam_deg, double off_axis_deg)
{
    if (!beam_deg) {
        return off_axis_deg <= straight_below_deg ? std::optional(exactly(1.0)) : std::nullopt;
    }
    if (!(beam_deg->low > 0.0) || !(beam_deg->high < 180.0)) {
        return std::nullopt;
    }
    return Range{beam_falloff(beam_deg->low, off_axis_deg), beam_falloff(beam_deg->likely, off_axis_deg),
                 beam_falloff(beam_deg->high, off_axis_deg)};
}

Range transmission_to(const UvLamp& lamp, const Top& top)
{
    return top_transmission(lamp.above_top ? top : Top{}, lamp.reference_open_fraction);
}

std::optional<Range> left_of(const UvLamp& lamp)
{
    if (lamp.decay_per_1000_h) {
        return ageing(lamp.burnt_h, *lamp.decay_per_1000_h);
    }
    return lamp.burnt_h.high <= 0.0 ? std::optional(exactly(1.0)) : std::nullopt;
}

std::optional<double> uvi_from_at_most(const UvLamp& lamp, const Top& top, const Point& point)
{
    const std::optional<Aim> aim = aim_of(lamp, top, point);
    if (!aim) {
        return std::nullopt;
    }
    const double transmitted = transmission_to(lamp, top).high;
    if (transmitted == 0.0 || aim->seen_share == 0.0) {
        return 0.0;
    }
    const std::optional<double> read = uvi_below_at_most(lamp.table, aim->distance_m);
    if (!read) {
        return std::nullopt;
    }
    const double in_beam = falloff(lamp.beam_deg, aim->off_axis_deg).value_or(exactly(1.0)).high;
    const double left = left_of(lamp).value_or(exactly(1.0)).high;
    return *read * aim->seen_share * in_beam * transmitted * left * lamp.reading_factor.high;
}

} // namespace

Range top_transmission(const Top& top, std::optional<double> reference_open_fraction)
{
    Range passed = exactly(1.0);
    if (top.kind == TopKind::pane) {
        passed = exactly(0.0);
    } else if (top.kind == TopKind::mesh) {
        passed = top.open_fraction.value_or(unknown_mesh);
    }
    assert(!reference_open_fraction || *reference_open_fraction > 0.0);
    return scaled(passed, 1.0 / reference_open_fraction.value_or(1.0));
}

Range ageing(const Range& burnt_h, const Range& decay_per_1000_h)
{
    return {std::pow(1.0 - decay_per_1000_h.high, burnt_h.high / 1000.0),
            std::pow(1.0 - decay_per_1000_h.likely, burnt_h.likely / 1000.0),
            std::pow(1.0 - decay_per_1000_h.low, burnt_h.low / 1000.0)};
}

std::optional<Range> uvi_from(const UvLamp& lamp, const Top& top, const Point& point)
{
    const std::optional<Aim> aim = aim_of(lamp, top, point);
    if (!aim) {
        return std::nullopt;
    }
    const Range transmitted = transmission_to(lamp, top);
    if (transmitted.high == 0.0 || aim->seen_share == 0.0) {
        return exactly(0.0);
    }
    const std::optional<double> read = uvi_below(lamp.table, aim->distance_m);
    const std::optional<Range> in_beam = falloff(lamp.beam_deg, aim->off_axis_deg);
    const std::optional<Range> left = left_of(lamp);
    if (!read || !in_beam || !left) {
        return std::nullopt;
    }
    return product_of_independent(
        {exactly(*read * aim->seen_share), lamp.reading_factor, *in_beam, transmitted, *left});
}

std::optional<Range> uvi_at(const std::vector<UvLamp>& lamps, const Top& top, const Point& point)
{
    std::vector<Range> parts;
    for (const UvLamp& lamp : lamps) {
        const std::optional<Range> part = uvi_from(lamp, top, point);
        if (!part) {
            return std::nullopt;
        }
        parts.push_back(*part);
    }
    return sum_of_independent(parts);
}

std::optional<double> uvi_at_most(const std::vector<UvLamp>& lamps, const Top& top, const Point& point)
{
    double sum = 0.0;
    for (const UvLamp& lamp : lamps) {
        const std::optional<double> part = uvi_from_at_most(lamp, top, point);
        if (!part) {
            return std::nullopt;
        }
        sum += *part;
    }
    return sum;
}

} // namespace loam::light
