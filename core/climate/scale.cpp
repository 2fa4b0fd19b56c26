#include "core/climate/scale.hpp"

#include <algorithm>
#include <cmath>

namespace loam::climate {

namespace {

double along(double low, double likely, double high, double deviations)
{
    const double share = deviations / deviations_at_ends;
    return likely + share * (share < 0.0 ? likely - low : high - likely);
}

double odds(double share)
{
    return std::log(share / (1.0 - share));
}

} // namespace

double value_at(const Range& prior, double deviations)
{
    if (deviations == 0.0)
        return prior.likely; // to the bit
    if (prior.low > 0.0 && prior.high < 1.0)
        return 1.0 / (1.0 + std::exp(-along(odds(prior.low), odds(prior.likely), odds(prior.high), deviations)));
    if (prior.low > 0.0) {
        const double value =
            std::exp(along(std::log(prior.low), std::log(prior.likely), std::log(prior.high), deviations));
        return prior.high == 1.0 ? std::min(1.0, value) : value;
    }
    const double value = along(prior.low, prior.likely, prior.high, deviations);
    return prior.low == 0.0 ? std::max(0.0, value) : value;
}

} // namespace loam::climate
