// A hide with moss in it.
#include "core/climate/damp_hide.hpp"

#include <cmath>

#include "core/climate/psychrometrics.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::climate;

namespace {

// 24 x 18 cm, a door of 40 cm2, in air of 24 degC and 50 %.
DampHide usual()
{
    return {.floor_m2 = 0.24 * 0.18,
            .entrance_m2 = {0.002, 0.004, 0.01},
            .film_w_m2k = {1.5, 3.0, 5.0},
            .inside_c = 24.0,
            .humidity_ratio = *humidity_ratio_at(24.0, 0.5)};
}

} // namespace

// By hand. Saturated air of 24 degC holds 18.92 g/kg, half-saturated air 9.31 (ASHRAE Fundamentals 2017, ch. 1, Table
// 2 and its equation). The floor gives 0.0432 x 3 / 1007 = 1.287e-4 kg/s per kg/kg. At 16.5 g/kg inside, moist air is
// lighter by 0.608 x 7.19e-3 = 4.37e-3; the door, 63 mm high, passes 0.61 / 3 x 0.004 x sqrt(9.81 x 0.0632 x 4.37e-3)
// x 1.19 kg/m3 = 5.04e-5 kg/s. Gain 3.11e-7, loss 3.62e-7 kg/s: a little less than that stays.
TEST_CASE("a moist hide settles where its floor gives what its door lets out")
{
    const auto humidity = damp_hide_humidity(usual());
    REQUIRE(humidity);
    const double ratio = *humidity_ratio_at(24.0, humidity->likely);
    const double gain = 0.0432 * 3.0 / 1007.0 * (0.01892 - ratio);
    const double loss =
        1.19 * 0.61 / 3.0 * 0.004 * std::sqrt(9.81 * std::sqrt(0.004) * 0.608 * (ratio - 0.00931)) * (ratio - 0.00931);
    CHECK(gain == Approx(loss).epsilon(0.02));
    CHECK(ratio == Approx(0.0163).margin(0.0003));
}

// Common practice, no source: a humid hide reads some 80 to 95 % while the box around it is dry.
TEST_CASE("a moist hide in half-dry air reads what keepers read")
{
    const auto humidity = damp_hide_humidity(usual());
    REQUIRE(humidity);
    CHECK(humidity->low < humidity->likely);
    CHECK(humidity->likely < humidity->high);
    CHECK(humidity->likely > 0.80);
    CHECK(humidity->high < 0.97);
}

TEST_CASE("a wider door dries a hide, damper air before it does not, and saturated air stays so")
{
    DampHide hide = usual();
    const double before = damp_hide_humidity(hide)->likely;
    hide.entrance_m2 = {0.01, 0.02, 0.03};
    CHECK(damp_hide_humidity(hide)->likely < before);
    hide = usual();
    hide.humidity_ratio = *humidity_ratio_at(24.0, 0.7);
    CHECK(damp_hide_humidity(hide)->likely > before);
    hide.humidity_ratio = *humidity_ratio_at(24.0, 1.0);
    CHECK(damp_hide_humidity(hide)->likely == Approx(1.0).epsilon(1e-6));
    hide.floor_m2 = 0.0;
    CHECK_FALSE(damp_hide_humidity(hide));
}
