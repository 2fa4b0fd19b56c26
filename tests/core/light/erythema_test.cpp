#include "tests/catch.hpp"

#include "core/light/erythema.hpp"

using namespace loam::light;

TEST_CASE("Reddening has the weights of the standard")
{
    // ISO 17166:1999 / CIE S 007 (secondary: several public implementations), by an independent script (derived).
    const double rows[][2] = {{280, 1},         {298, 1},         {300, 0.64863},   {305, 0.21979},
                              {310, 0.074473},  {313, 0.038905},  {320, 8.5507e-3}, {325, 2.8973e-3},
                              {328, 1.5136e-3}, {330, 1.4125e-3}, {340, 1.0e-3},    {350, 7.0795e-4},
                              {365, 4.2170e-4}, {380, 2.5119e-4}, {400, 1.2589e-4}, {401, 0}};
    for (const auto& row : rows) {
        CAPTURE(row[0]);
        CHECK(*erythemal_weight(row[0]) == Approx(row[1]).epsilon(5e-5));
    }
    CHECK_FALSE(erythemal_weight(249.0));
}

TEST_CASE("The branches of the weight meet where the standard says")
{
    CHECK(*erythemal_weight(328.0) == Approx(*erythemal_weight(328.0 + 1e-9)).epsilon(1e-4)); // with 139 they don't
}

TEST_CASE("An index is 25 milliwatts of reddening light on a square metre")
{
    // WHO, WMO, UNEP & ICNIRP 2002, Global Solar UV Index (from memory): 40 m2/W.
    CHECK(uv_index_of_effective(0.025) == Approx(1.0));
    CHECK(uv_index_of_effective(0.075) == Approx(3.0));
    CHECK(uv_index_of_effective(0.120) == Approx(4.8));
}

TEST_CASE("What a broadband meter reads may be an index forty times as high as another")
{
    // 0.5 W/m2 (50 uW/cm2): all at 315 nm 40 * 0.5 * 10^(0.094 * -17) = 0.50470, all at 298 nm 20, by hand.
    const UviBounds bounds = uv_index_of_unweighted(0.5);
    CHECK(bounds.least == Approx(0.50470).epsilon(1e-4));
    CHECK(bounds.most == Approx(20.0));
}
