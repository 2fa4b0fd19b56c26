#include "tests/catch.hpp"

#include "core/climate/evaporation.hpp"
#include "core/climate/psychrometrics.hpp"

using namespace loam::climate;

// Source: a published look-up of E0, kg/(m2 h), over undisturbed water at 50 % relative humidity.
TEST_CASE("Shah's formula gives the published look-up")
{
    struct Row {
        double water_c, air_c, kg_m2_h;
    };
    for (const Row& row : {Row{28, 28, 0.1360}, Row{28, 29, 0.1171}, Row{28, 30, 0.0968}, Row{29, 28, 0.1651},
                           Row{29, 29, 0.1463}, Row{30, 28, 0.1959}})
        CHECK(*shah_kg_m2_h({row.water_c, row.air_c, 0.5}) == Approx(row.kg_m2_h).epsilon(4e-3));
    CHECK_FALSE(shah_kg_m2_h({70.0, 25.0, 0.5}));
}

// Source: ASHRAE HVAC Applications with V = 0 and an activity factor of 0.5; 0.05 m2 held at 26 degC over air of
// 26 degC and 50 %: 5.52 g/h, by an independent script with the same formula.
TEST_CASE("a bowl held at 26 degrees evaporates what the natatorium formula gives")
{
    const double excess_pa = 3363.1 - 1681.6;
    CHECK(0.05 * still_water_kg_s_m2_pa() * excess_pa * 3.6e6 == Approx(5.52).epsilon(5e-3));
    // Shah 2014 lies close to it, Smith, Lof & Jones 1994 at 7.91 g/h.
    CHECK(0.05 * *shah_kg_m2_h({26.0, 26.0, 0.5}) * 1000.0 == Approx(5.52).epsilon(0.10));
}

// Source: Lewis relation: 0.05 m2 at h = 4 W/(m2 K) in the same air evaporates 7.77 g/h.
TEST_CASE("the Lewis relation ties evaporation to the film")
{
    const double excess = saturation(26.0)->humidity_ratio - *humidity_ratio_at(26.0, 0.5);
    CHECK(0.05 * lewis_kg_s_m2(4.0) * excess * 3.6e6 == Approx(7.77).epsilon(0.02));
}

TEST_CASE("a stretched wetness never passes open water")
{
    CHECK(stretched_wetness(0.3, 1.0) == Approx(0.3));
    CHECK(stretched_wetness(1.0, 1.7) == Approx(1.0));
    CHECK(stretched_wetness(0.9, 3.0) < 1.0);
    CHECK(stretched_wetness(0.01, 1.5) == Approx(0.015).epsilon(0.01));
}
