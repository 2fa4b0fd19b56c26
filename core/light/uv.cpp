#include "core/light/uv.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/independent.hpp"
#include "core/light/prepared_lamp.hpp"

namespace loam::light {

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

double mesh_at_slant(double open_fraction, double cosine)
{
    assert(open_fraction > 0.0 && open_fraction <= 1.0 && cosine > 0.0);
    const double wire = 1.0 - std::sqrt(open_fraction);
    return std::max(0.0, 1.0 - wire / cosine) / (1.0 - wire);
}

Range ageing(const Range& burnt_h, const Range& decay_per_1000_h)
{
    return {std::pow(1.0 - decay_per_1000_h.high, burnt_h.high / 1000.0),
            std::pow(1.0 - decay_per_1000_h.likely, burnt_h.likely / 1000.0),
            std::pow(1.0 - decay_per_1000_h.low, burnt_h.low / 1000.0)};
}

std::optional<Range> uvi_from(const UvLamp& lamp, const Top& top, const Point& point)
{
    return PreparedLamp(lamp, top).uvi(point);
}

std::optional<Range> uvi_at(const std::vector<UvLamp>& lamps, const Top& top, const Point& point)
{
    return uvi_at(prepared(lamps, top), point);
}

std::optional<double> uvi_at_most(const std::vector<UvLamp>& lamps, const Top& top, const Point& point)
{
    return uvi_at_most(prepared(lamps, top), point);
}

} // namespace loam::light
