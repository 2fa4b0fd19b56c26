#include "tests/catch.hpp"

#include "core/light/ferguson.hpp"

using namespace loam::light;

TEST_CASE("The four zones have the published bands")
{
    // Baines et al. 2016, J Zoo Aquar Res 4(1):42-63 (secondary: three pages with identical values).
    const double bands[4][4] = {{0.0, 0.7, 0.6, 1.4}, {0.7, 1.0, 1.1, 3.0}, {1.0, 2.6, 2.9, 7.4}, {2.6, 3.5, 4.5, 9.5}};
    for (int number = 1; number <= 4; ++number) {
        const auto zone = ferguson_zone(number);
        REQUIRE(zone);
        CHECK(zone->number == number);
        CHECK(*zone->average_uvi.min == bands[number - 1][0]);
        CHECK(*zone->average_uvi.max == bands[number - 1][1]);
        CHECK(*zone->maximum_uvi.min == bands[number - 1][2]);
        CHECK(*zone->maximum_uvi.max == bands[number - 1][3]);
        CHECK_FALSE(zone->average_uvi.source.citation.empty());
    }
}

TEST_CASE("There is no zone below one or above four")
{
    CHECK_FALSE(ferguson_zone(0));
    CHECK_FALSE(ferguson_zone(5));
}
