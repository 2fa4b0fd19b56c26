#include "tests/catch.hpp"

#include "core/space/demand.hpp"

using namespace loam::space;

namespace {

Demand asking(double area_m2, std::optional<double> length_m = {}, std::optional<double> width_m = {})
{
    Demand demand;
    demand.area_m2 = area_m2;
    demand.length_m = length_m;
    demand.width_m = width_m;
    return demand;
}

} // namespace

TEST_CASE("A box meets the same demand whichever way it is turned")
{
    const Demand demand = asking(0.72, 1.2, 0.6);
    CHECK(meets({1.2, 0.6, 0.5, 0.72}, demand));
    CHECK(meets({0.6, 1.2, 0.5, 0.72}, demand));
    CHECK_FALSE(meets({0.85, 0.85, 0.5, 0.7225}, demand)); // area enough, long side not
}

TEST_CASE("A rule that names its longer side second asks for the same box")
{
    // Barnard 1996, terrestrial lizards: 2 by 3 total lengths (textbook table, confirmed).
    CHECK(meets({0.75, 0.5, 0.5, 0.375}, asking(0.375, 0.5, 0.75)));
    CHECK_FALSE(meets({0.70, 0.6, 0.5, 0.42}, asking(0.375, 0.5, 0.75)));
    CHECK(*length_needed_m({0.6, 0.5, 0.5, 0.3}, asking(0.375, 0.5, 0.75)) == Approx(0.75));
}

TEST_CASE("Each respect in which a box falls short is named with what it has and needs")
{
    Demand demand = asking(0.72, 1.2, 0.6);
    demand.height_m = 0.6;
    demand.every_side_m = 0.55;
    const std::vector<Shortfall> lacking = shortfalls({1.0, 0.5, 0.4, 0.45}, demand);
    REQUIRE(lacking.size() == 5);
    CHECK(lacking[0] == Shortfall{Lack::area, 0.45, 0.72});
    CHECK(lacking[1] == Shortfall{Lack::long_side, 1.0, 1.2});
    CHECK(lacking[2] == Shortfall{Lack::short_side, 0.5, 0.6});
    CHECK(lacking[3] == Shortfall{Lack::height, 0.4, 0.6});
    CHECK(lacking[4] == Shortfall{Lack::body_side, 0.5, 0.55});
}

TEST_CASE("Rounding in the last digits is no shortfall")
{
    CHECK(meets({1.2, 0.6, 0.5, 1.2 * 0.6}, asking(3.0 * 0.24, 0.4 * 3.0, 0.2 * 3.0)));
    CHECK_FALSE(meets({1.2, 0.6, 0.5, 0.72}, asking(0.7201)));
}

TEST_CASE("The length needed at the present width carries the area that fittings take")
{
    // By hand: (0.9 + 0.09 lost) / 0.6 = 1.65.
    CHECK(*length_needed_m({1.2, 0.6, 0.5, 0.63}, asking(0.9)) == Approx(1.65));
    CHECK(*length_needed_m({1.2, 0.6, 0.5, 0.72}, asking(0.5, 1.5, 0.4)) == Approx(1.5)); // a side rules
    CHECK(*length_needed_m({1.0, 1.6, 0.5, 1.6}, asking(0.5, 1.5, 0.4)) == Approx(0.4));  // the width is the long side
    CHECK_FALSE(length_needed_m({1.2, 0.3, 0.5, 0.36}, asking(0.5, 1.5, 0.4)));           // too narrow at any length
}

TEST_CASE("The smallest box meets the demand, and a hand's breadth less does not")
{
    Demand demand = asking(1.28, 1.6, 0.8);
    demand.height_m = 0.5;
    demand.every_side_m = 0.2;
    for (const Offer& offer : {Offer{1.2, 0.6, 0.4, 0.6}, Offer{0.9, 0.9, 0.6, 0.81}, Offer{2.0, 0.5, 0.4, 0.9}}) {
        const Sides box = smallest_box(offer, demand);
        const double lost_m2 = offer.length_m * offer.width_m - offer.area_m2;
        CHECK(meets({box.length_m, box.width_m, box.height_m, box.length_m * box.width_m - lost_m2}, demand));
        CHECK(box.length_m >= offer.length_m);
        CHECK(box.width_m >= offer.width_m);
        if (box.length_m > offer.length_m) {
            const double shorter_m = box.length_m - 0.01;
            CHECK_FALSE(meets({shorter_m, box.width_m, box.height_m, shorter_m * box.width_m - lost_m2}, demand));
        }
    }
}

TEST_CASE("A box that already meets the demand stays as it is")
{
    CHECK(smallest_box({1.2, 0.6, 0.5, 0.72}, asking(0.5, 1.0, 0.5)) == Sides{1.2, 0.6, 0.5});
}
