#include "tests/catch.hpp"

#include "core/water/bowl.hpp"
#include "core/water/supply.hpp"

using namespace loam;
using namespace loam::water;

TEST_CASE("A coiled snake covers as much as its length times its thickness")
{
    // By hand: 1.2 m and 0.6 kg are 0.6 l, 5 cm2 across, 2.523 cm thick; 1.2 x 0.02523 m is 0.03028 m2, a round of
    // 19.6 cm.
    CHECK(*coil_diameter_m(1.2, 0.6) == Approx(0.1963).margin(5e-4));
    CHECK(*coil_diameter_m(1.2, 1.2) > *coil_diameter_m(1.2, 0.6));
    CHECK_FALSE(coil_diameter_m(0.0, 0.6));
    CHECK_FALSE(coil_diameter_m(1.2, 0.0));
}

TEST_CASE("A bowl may stand either way round")
{
    const Sides least{0.20, 0.15};
    CHECK(missing({0.15, 0.20}, least) == Sides{0.0, 0.0});
    CHECK(missing({0.18, 0.15}, least).long_m == Approx(0.02));
    CHECK(missing({0.30, 0.10}, least).short_m == Approx(0.05));
    CHECK(missing({0.30, 0.10}, least).long_m == 0.0);
}

TEST_CASE("Reverse osmosis draws what it makes and what it sends away")
{
    // By hand: 2 l a day at five to one (EPA WaterSense: a typical system sends five gallons or more to the drain for
    // each gallon made, secondary) draw 12 l.
    CHECK(drawn_l(exactly(2.0), exactly(5.0)).likely == Approx(12.0));
    CHECK(drawn_l(exactly(2.0), exactly(0.0)) == exactly(2.0));
    CHECK(drawn_l(exactly(2.0), {1.0, 5.0, 10.0}).low == Approx(4.0));
    CHECK(drawn_l(exactly(2.0), {1.0, 5.0, 10.0}).high == Approx(22.0));
}

TEST_CASE("Cartridges go by the litres that pass them")
{
    // By hand: 2 l a day are 730 l a year, two of 365 l.
    CHECK(cartridges_per_year(exactly(2.0), 365.0)->likely == Approx(2.0));
    CHECK_FALSE(cartridges_per_year(exactly(2.0), 0.0));
}
