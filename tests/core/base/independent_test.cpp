#include "tests/catch.hpp"

#include "core/independent.hpp"

using namespace loam;

TEST_CASE("Independent errors of a sum join in quadrature")
{
    // JCGM 100:2008, 5.1.2 (from memory): 3 and 4 make 5.
    const Range sum = sum_of_independent({{7.0, 10.0, 13.0}, {16.0, 20.0, 24.0}});
    CHECK(sum.low == Approx(25.0));
    CHECK(sum.likely == Approx(30.0));
    CHECK(sum.high == Approx(35.0));
    CHECK(sum_of_independent({}) == Range{});
}

TEST_CASE("Each side of a skewed range joins with its own")
{
    const Range sum = sum_of_independent({{10.0, 10.0, 13.0}, {16.0, 20.0, 24.0}});
    CHECK(sum.low == Approx(26.0));
    CHECK(sum.high == Approx(35.0));
}

TEST_CASE("Relative errors of a product join in quadrature")
{
    const Range product = product_of_independent({{0.97, 1.0, 1.03}, {96.0, 100.0, 104.0}});
    CHECK(product.low == Approx(95.0));
    CHECK(product.likely == Approx(100.0));
    CHECK(product.high == Approx(105.0));
}

TEST_CASE("A product never leaves what the ends can make, nor loses its order")
{
    const Range product = product_of_independent({{0.1, 1.0, 3.0}, {0.0, 2.0, 9.0}});
    CHECK(product.low >= 0.0);
    CHECK(product.low <= product.likely);
    CHECK(product.likely <= product.high);
    CHECK(product.high <= 27.0);
    CHECK(product_of_independent({{0.0, 0.0, 2.0}, {1.0, 3.0, 4.0}}) == Range{0.0, 0.0, 8.0});
}

TEST_CASE("A remainder, a reciprocal and a negative factor keep the ends in order")
{
    CHECK(remainder_of_one({0.125, 0.25, 0.5}) == Range{0.5, 0.75, 0.875});
    CHECK(reciprocal({0.5, 1.0, 4.0}) == Range{0.25, 1.0, 2.0});
    CHECK(scaled({1.0, 2.0, 4.0}, -2.0) == Range{-8.0, -4.0, -2.0});
}
