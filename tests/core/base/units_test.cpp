#include "core/units.hpp"

#include "tests/catch.hpp"

using namespace loam::units;

// All factors are compared with the GNU units program by tests/scripts/units_parity.py; here stand the facts that
// everybody knows (common practice, no source) and the two directions.
TEST_CASE("Celsius and Fahrenheit agree where water freezes and boils, and at -40")
{
    CHECK(fahrenheit_from_celsius(0.0) == 32.0);
    CHECK(fahrenheit_from_celsius(100.0) == 212.0);
    CHECK(celsius_from_fahrenheit(-40.0) == Approx(-40.0).epsilon(1e-15));
    CHECK(celsius_from_kelvin(kelvin_from_celsius(21.5)) == Approx(21.5).epsilon(1e-14));
    for (double celsius = -40.0; celsius <= 60.0; celsius += 0.1) {
        REQUIRE(celsius_from_fahrenheit(fahrenheit_from_celsius(celsius)) == Approx(celsius).margin(1e-12));
    }
}

TEST_CASE("A US dry quart is about a sixth larger than a liquid one, and eight gallons of the first fill a bushel")
{
    CHECK(us_dry_quart_l / us_liquid_quart_l == Approx(1.16365).epsilon(1e-5));
    CHECK(cubic_foot_l == Approx(28.3168).epsilon(1e-5));
    CHECK(square_foot_m2 == Approx(0.092903).epsilon(1e-5));
}
