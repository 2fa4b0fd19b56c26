#include <cmath>

#include "tests/catch.hpp"

#include "core/climate/chi_square.hpp"
#include "core/climate/estimate.hpp"
#include "core/climate/scale.hpp"

using namespace loam;
using namespace loam::climate;

// Source: ridge regression in closed form, (X'X + k 1)^-1 X'y with k = 1 (Hoerl & Kennard 1970, Technometrics 12; from
// memory), worked by hand: X = [1 0; 1 1], y = (1, 3): X'X + 1 = [3 1; 1 2], X'y = (4, 3), determinant 5, hence (1, 1);
// the covariance is the inverse, [2 -1; -1 3] / 5.
TEST_CASE("the most probable inputs of a linear problem are its ridge regression")
{
    const auto found = estimate_inputs({.inputs = 2, .misfit = {1, 3}, .slopes = {1, 0, 1, 1}, .noise = {1, 0, 0, 1}});
    REQUIRE(found);
    CHECK(found->shift[0] == Approx(1.0));
    CHECK(found->shift[1] == Approx(1.0));
    CHECK(found->covariance[0] == Approx(0.4));
    CHECK(found->covariance[1] == Approx(-0.2));
    CHECK(found->covariance[2] == Approx(-0.2));
    CHECK(found->covariance[3] == Approx(0.6));
    // y' (XX' + 1)^-1 y with XX' + 1 = [2 1; 1 3]: inverse [3 -1; -1 2] / 5, so (3 - 6 + 18) / 5.
    CHECK(found->chi_square == Approx(3.0));
}

// By hand: one reading of the sum of two inputs, noise of variance 4: S = 5 + 4 = 9.
TEST_CASE("a reading of a sum of inputs ties them together")
{
    const auto found = estimate_inputs({.inputs = 2, .misfit = {9}, .slopes = {2, 1}, .noise = {4}});
    REQUIRE(found);
    CHECK(found->shift[0] == Approx(2.0));
    CHECK(found->shift[1] == Approx(1.0));
    CHECK(found->covariance[1] == Approx(-2.0 / 9.0));
    CHECK(found->surprise[0] == Approx(9.0 / 3.0));
}

// By hand: the reading left out is predicted from the other, whose error it shares: with covariance [1 0.5; 0.5 1] and
// no inputs, the first is expected at 0.5 * y2 with variance 0.75.
TEST_CASE("a reading's surprise is its standardised distance from what the others make expected")
{
    const auto found =
        estimate_inputs({.inputs = 1, .misfit = {2, 1}, .slopes = {0, 0}, .noise = {1.0, 0.5, 0.5, 1.0}});
    REQUIRE(found);
    CHECK(found->surprise[0] == Approx((2.0 - 0.5 * 1.0) / std::sqrt(0.75)));
    CHECK(found->surprise[1] == Approx((1.0 - 0.5 * 2.0) / std::sqrt(0.75)).margin(1e-12));
}

TEST_CASE("two readings that allow no error and contradict each other give no estimate")
{
    CHECK_FALSE(estimate_inputs({.inputs = 1, .misfit = {1, 2}, .slopes = {1, 1}, .noise = {0, 0, 0, 0}}));
}

// Source: percentage points of the chi-square distribution, as every table has them (Abramowitz & Stegun 1964, table
// 26.8; from memory).
TEST_CASE("the chance of a larger sum of squares is that of the chi-square table")
{
    CHECK(chance_of_more(3.841, 1) == Approx(0.05).margin(1e-4));
    CHECK(chance_of_more(5.991, 2) == Approx(0.05).margin(1e-4));
    CHECK(chance_of_more(7.815, 3) == Approx(0.05).margin(1e-4));
    CHECK(chance_of_more(23.209, 10) == Approx(0.01).margin(1e-4));
    CHECK(chance_of_more(24.725, 11) == Approx(0.01).margin(1e-4));
    CHECK(chance_of_more(0.0, 4) == Approx(1.0));
}

TEST_CASE("an input's scale meets its range's ends, and never leaves what is physical")
{
    for (const Range& range : {Range{0.5, 1.0, 1.5}, Range{0.3, 1.0, 3.0}, Range{0.58, 0.65, 0.72}, Range{-1, 0, 2}}) {
        CHECK(value_at(range, -1.645) == Approx(range.low));
        CHECK(value_at(range, 0.0) == range.likely);
        CHECK(value_at(range, 1.645) == Approx(range.high));
    }
    CHECK(value_at({0.5, 1.0, 1.5}, -9.0) > 0.0);
    CHECK(value_at({0.90, 0.93, 0.96}, 9.0) < 1.0);
    CHECK(value_at({0.5, 0.8, 1.0}, 1.7) == 1.0);
    CHECK(value_at({0.0, 0.05, 0.15}, -9.0) == 0.0);
}
