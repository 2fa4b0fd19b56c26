#include "core/climate/clip.hpp"

#include <algorithm>
#include <cmath>

namespace loam::climate {

void clip(Span& way, double at, double by, double low, double high)
{
    if (std::abs(by) < 1e-12) {
        if (at < low || at > high)
            way.to = -1.0;
        return;
    }
    const double a = (low - at) / by;
    const double b = (high - at) / by;
    way.from = std::max(way.from, std::min(a, b));
    way.to = std::min(way.to, std::max(a, b));
}

} // namespace loam::climate
