#include "core/independent.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace loam {

void SumOfIndependent::take(const Range& term)
{
    likely_ += term.likely;
    below_squared_ += (term.likely - term.low) * (term.likely - term.low);
    above_squared_ += (term.high - term.likely) * (term.high - term.likely);
}

Range SumOfIndependent::range() const
{
    return {likely_ - std::sqrt(below_squared_), likely_, likely_ + std::sqrt(above_squared_)};
}

void ProductOfIndependent::take(const Range& factor)
{
    assert(factor.low >= 0.0);
    corners_.low *= factor.low;
    corners_.likely *= factor.likely;
    corners_.high *= factor.high;
    if (factor.likely > 0.0) {
        const double below = 1.0 - factor.low / factor.likely;
        const double above = factor.high / factor.likely - 1.0;
        below_squared_ += below * below;
        above_squared_ += above * above;
    }
}

Range ProductOfIndependent::range() const
{
    if (corners_.likely == 0.0) {
        return corners_; // relative terms mean nothing here
    }
    return {std::max(corners_.low, corners_.likely * (1.0 - std::sqrt(below_squared_))), corners_.likely,
            std::min(corners_.high, corners_.likely * (1.0 + std::sqrt(above_squared_)))};
}

Range sum_of_independent(const std::vector<Range>& terms)
{
    SumOfIndependent sum;
    for (const Range& term : terms) {
        sum.take(term);
    }
    return sum.range();
}

Range product_of_independent(const std::vector<Range>& factors)
{
    ProductOfIndependent product;
    for (const Range& factor : factors) {
        product.take(factor);
    }
    return product.range();
}

Range scaled(const Range& range, double factor)
{
    Range result = {range.low * factor, range.likely * factor, range.high * factor};
    if (factor < 0.0) {
        std::swap(result.low, result.high);
    }
    return result;
}

Range moved_to(const Range& range, double likely)
{
    return {likely + (range.low - range.likely), likely, likely + (range.high - range.likely)};
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
