#include "tests/catch.hpp"

#include "core/light/photoperiod.hpp"
#include "core/light/timer_year.hpp"

using namespace loam::light;

TEST_CASE("Hours that follow the sky are the sky's, held within what the sheet asks for")
{
    // Day lengths at 40 N: 15.016 h on day 172 and 9.324 h on day 355 (CBM, see photoperiod_test.cpp).
    CHECK(*hours_with_the_sky(40.0, 172, {9.0, 16.0}) == Approx(15.016).margin(6e-4));
    CHECK(*hours_with_the_sky(40.0, 355, {9.0, 16.0}) == Approx(9.324).margin(6e-4));
    CHECK(*hours_with_the_sky(40.0, 172, {12.0, 14.0}) == 14.0);
    CHECK(*hours_with_the_sky(40.0, 355, {12.0, 14.0}) == 12.0);
    CHECK(*hours_with_the_sky(-40.0, 355, {12.0, 14.0}) == 14.0);
}

TEST_CASE("No box lives through a polar night, and the equator's year stays even")
{
    CHECK(*hours_with_the_sky(78.0, 355, {12.0, 14.0}) == 12.0);
    CHECK(*hours_with_the_sky(78.0, 172, {12.0, 14.0}) == 14.0);
    for (int day = 1; day <= 365; day += 30) {
        CHECK(*hours_with_the_sky(0.0, day, {11.0, 13.0}) == Approx(12.12).margin(0.02));
    }
    CHECK_FALSE(hours_with_the_sky(91.0, 172, {12.0, 14.0}));
    CHECK_FALSE(hours_with_the_sky(40.0, 172, {14.0, 12.0}));
}

TEST_CASE("The lamps keep the middle of their day, in steps of five minutes, over midnight too")
{
    // By hand: 07:00 to 19:00 about 13:00; 14 h are 06:00 to 20:00; 12 h 28 min 06:46 to 19:14, in fives 06:45 to
    // 19:15.
    CHECK(*about_the_same_middle({7 * 60, 19 * 60}, 14.0) == OnOff{6 * 60, 20 * 60});
    CHECK(*about_the_same_middle({7 * 60, 19 * 60}, 12.0 + 28.0 / 60.0) == OnOff{6 * 60 + 45, 19 * 60 + 15});
    CHECK(*about_the_same_middle({20 * 60, 6 * 60}, 12.0) == OnOff{19 * 60, 7 * 60});
    CHECK(*about_the_same_middle({1 * 60, 3 * 60}, 6.0) == OnOff{23 * 60, 5 * 60});
    CHECK_FALSE(about_the_same_middle({7 * 60, 7 * 60}, 12.0));
    CHECK_FALSE(about_the_same_middle({7 * 60, 19 * 60}, 24.0));
    CHECK_FALSE(about_the_same_middle({7 * 60, 19 * 60}, 0.0));
}
