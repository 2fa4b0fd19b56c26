#include <vector>

#include "tests/catch.hpp"

#include "core/climate/psychrometrics.hpp"

using namespace loam::climate;

// Source: ASHRAE Fundamentals (2017) ch. 1 Table 3, as the tests of the psychrolib package have it, 300 ppm.
TEST_CASE("saturation pressure meets the printed table of moist air")
{
    CHECK(*saturation_pressure_pa(-20.0) == Approx(103.24).epsilon(3e-4));
    CHECK(*saturation_pressure_pa(-5.0) == Approx(401.74).epsilon(3e-4));
    CHECK(*saturation_pressure_pa(5.0) == Approx(872.6).epsilon(3e-4));
    CHECK(*saturation_pressure_pa(25.0) == Approx(3169.7).epsilon(3e-4));
    CHECK(*saturation_pressure_pa(50.0) == Approx(12351.3).epsilon(3e-4));
    CHECK(*saturation_pressure_pa(100.0) == Approx(101418.0).epsilon(3e-4));
}

// Source: IAPWS-IF97 by the Debian package python3-iapws 1.5.3; Hyland & Wexler lie within 200 ppm of it.
TEST_CASE("saturation pressure agrees with the steam tables")
{
    CHECK(*saturation_pressure_pa(10.0) == Approx(1228.184).epsilon(2e-4));
    CHECK(*saturation_pressure_pa(30.0) == Approx(4246.688).epsilon(2e-4));
    CHECK(*saturation_pressure_pa(40.0) == Approx(7384.427).epsilon(2e-4));
}

// Source: npm package psychrolib 1.1.1 at 101325 Pa.
TEST_CASE("humidity ratio, dew point and wet bulb agree with psychrolib")
{
    struct State {
        double celsius, relative, ratio, dew_c, bulb_c;
    };
    for (const State& s : {State{20, 0.5, 0.007262, 9.272, 13.783}, State{25, 0.8, 0.015962, 21.309, 22.380},
                           State{26, 0.5, 0.010496, 14.781, 18.711}, State{30, 0.9, 0.024376, 28.177, 28.586}}) {
        const double ratio = *humidity_ratio_at(s.celsius, s.relative);
        CHECK(ratio == Approx(s.ratio).margin(1e-6));
        CHECK(*dew_point_c(ratio) == Approx(s.dew_c).margin(0.002));
        CHECK(*wet_bulb_c(s.celsius, ratio) == Approx(s.bulb_c).margin(0.005));
        CHECK(*relative_humidity(s.celsius, ratio) == Approx(s.relative).epsilon(1e-9));
    }
}

// Source: npm package psychrolib 1.1.1 at 101325 Pa (GetHumRatioFromRelHum, GetVapPresFromHumRatio, GetSatVapPres).
TEST_CASE("air that warms or cools keeps its vapour and changes its humidity as psychrolib says")
{
    struct Air {
        double celsius, relative;
        std::vector<double> at_18_21_24_28_35;
    };
    const std::vector<double> warmed_to_c{18.0, 21.0, 24.0, 28.0, 35.0};
    for (const Air& air : {Air{24, 0.60, {0.867647, 0.719982, 0.600000, 0.473553, 0.318254}},
                           Air{26, 0.35, {0.570218, 0.473173, 0.394320, 0.311219, 0.209157}},
                           Air{20, 0.85, {0.963034, 0.799136, 0.665963, 0.525615, 0.353242}}}) {
        const double ratio = *humidity_ratio_at(air.celsius, air.relative);
        for (std::size_t i = 0; i < warmed_to_c.size(); ++i)
            CHECK(*relative_humidity(warmed_to_c[i], ratio) == Approx(air.at_18_21_24_28_35[i]).margin(2e-6));
    }
}

// Source: psychrolib's own tests.
TEST_CASE("humidity ratio follows the pressure")
{
    CHECK(*humidity_ratio(3169.7, 95461.0) == Approx(0.0213603998).epsilon(1e-6));
}

TEST_CASE("the slope of saturation is the slope of saturation")
{
    for (const double celsius : {-10.0, 5.0, 25.0, 60.0}) {
        const double rise = saturation(celsius + 1e-4)->humidity_ratio - saturation(celsius - 1e-4)->humidity_ratio;
        CHECK(saturation(celsius)->per_kelvin == Approx(rise / 2e-4).epsilon(1e-6));
    }
}

TEST_CASE("what is out of range is not known")
{
    CHECK_FALSE(saturation_pressure_pa(-101.0));
    CHECK_FALSE(saturation_pressure_pa(201.0));
    CHECK_FALSE(saturation(99.0));
    CHECK_FALSE(dew_point_c(0.0));
    CHECK_FALSE(wet_bulb_c(20.0, 0.03)); // more than saturated
    CHECK_FALSE(humidity_ratio(2e5));
}
