// Sums and products of ranges whose errors are independent of each other.
// Method: the likely values combine as they are; the distances from the likely value to the lower and to the upper
// end combine in quadrature, each side apart; a product does so in relative terms. For normal errors a sum's ends are
// exactly its 5th and 95th percentile; for skewed ones this is the first-order approximation.
// Range: products: every end >= 0. A first-order product needs relative spreads well below 1; where its lower end
// would pass the worst case of all ends together, the worst case stands.
// Source: JCGM 100:2008 (GUM), 5.1.2 (from memory).
#pragma once

#include <vector>

#include "core/explain.hpp"

namespace loam {

// One term or factor after the other, for loops that run often.
class SumOfIndependent {
public:
    void take(const Range& term);
    Range range() const;

private:
    double likely_ = 0.0;
    double below_squared_ = 0.0;
    double above_squared_ = 0.0;
};

class ProductOfIndependent {
public:
    void take(const Range& factor);
    Range range() const;

private:
    Range corners_ = exactly(1.0);
    double below_squared_ = 0.0;
    double above_squared_ = 0.0;
};

Range sum_of_independent(const std::vector<Range>& terms);
Range product_of_independent(const std::vector<Range>& factors);

// All three figures times a number that is known exactly; a negative number swaps the ends.
Range scaled(const Range& range, double factor);

// The same distances to both ends, about another likely value.
Range moved_to(const Range& range, double likely);

// The share 1 - x of a range of shares x, with its ends in order.
Range remainder_of_one(const Range& share);

// One over a range of positive numbers, with its ends in order.
Range reciprocal(const Range& positive);

} // namespace loam
