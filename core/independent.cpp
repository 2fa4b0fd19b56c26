#include "core/independent.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace loam {

Range sum_of_independent(const std::vector<Range>& terms)
{
    double likely = 0.0;
    double below_squared = 0.0;
    double above_squared = 0.0;
    for (const Range& term : terms) {
        likely += term.likely;
        below_squared += (term.likely - term.low) * (term.likely - term.low);
        above_squared += (term.high - term.likely) * (term.high - term.likely);
    }
    return {likely - std::sqrt(below_squared), likely, likely + std::sqrt(above_squared)};
}

Range product_of_independent(const std::vector<Range>& factors)
{
    Range corners = exactly(1.0);
    double below_squared = 0.0;
    double above_squared = 0.0;
    for (const Range& factor : factors) {
        assert(factor.low >= 0.0);
        corners.low *= factor.low;
        corners.likely *= factor.likely;
        corners.high *= factor.high;
        if (factor.likely > 0.0) {
            const double below = 1.0 - factor.low / factor.likely;
            const double above = factor.high / factor.likely - 1.0;
            below_squared += below * below;
            above_squared += above * above;
        }
    }
    if (corners.likely == 0.0) {
        return corners; // relative terms mean nothing here
    }
    return {std::max(corners.low, corners.likely * (1.0 - std::sqrt(below_squared))), corners.likely,
            std::min(corners.high, corners.likely * (1.0 + std::sqrt(above_squared)))};
}

Range scaled(const Range& range, double factor)
{
    Range result = {range.low * factor, range.likely * factor, range.high * factor};
    if (factor < 0.0) {
        std::swap(result.low, result.high);
    }
    return result;
}

Range remainder_of_one(const Range& share)
{
    return {1.0 - share.high, 1.0 - share.likely, 1.0 - share.low};
}

Range reciprocal(const Range& positive)
{
    assert(positive.low > 0.0);
    return {1.0 / positive.high, 1.0 / positive.likely, 1.0 / positive.low};
}

} // namespace loam
