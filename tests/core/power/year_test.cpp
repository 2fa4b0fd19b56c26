#include "tests/catch.hpp"

#include "core/power/year.hpp"

using namespace loam;
using namespace loam::power;

namespace {

DailyShare all(double value)
{
    DailyShare shares;
    shares.fill(value);
    return shares;
}

YearCourse even_year(double light_h = 12.0)
{
    return {{all(0.5)}, all(light_h), all(1.0)};
}

Device lamp(double power_w)
{
    Device one;
    one.id = "d1";
    one.connected_w = exactly(power_w);
    one.timed = true;
    one.hours_per_day = 12.0;
    return one;
}

} // namespace

TEST_CASE("A lamp's months have the worked kilowatt-hours")
{
    // By hand: 75 W x 12 h are 0.9 kWh a day: 27.9 kWh in January, 25.2 in February, 27.0 in April, 328.5 in the year.
    const DeviceYear year = year_of(lamp(75.0), even_year());
    CHECK(year.month_kwh[0].likely == Approx(27.9));
    CHECK(year.month_kwh[1].likely == Approx(25.2));
    CHECK(year.month_kwh[3].likely == Approx(27.0));
    CHECK(year.year_kwh.likely == Approx(328.5));
}

TEST_CASE("Months belong to the calendar")
{
    CHECK(month_of(0) == 0);
    CHECK(month_of(30) == 0);
    CHECK(month_of(31) == 1);
    CHECK(month_of(58) == 1);
    CHECK(month_of(59) == 2);
    CHECK(month_of(364) == 11);
}

TEST_CASE("Half winter and half summer make the year of the plain sum, and the months make the year")
{
    Device mat = lamp(20.0);
    mat.timed = false;
    mat.hours_per_day = 24.0;
    mat.duty_winter = {0.5, 0.6, 0.7};
    mat.duty_summer = {0.1, 0.2, 0.3};
    const DeviceYear year = year_of(mat, even_year());
    // 20 W x 24 h at 0.4 on the mean: 0.192 kWh a day (as in energy_test.cpp).
    CHECK(year.year_kwh.likely == Approx(365.0 * 0.192));
    CHECK(year.year_kwh.low == Approx(energy(mat).kwh_per_year.low));
    CHECK(year.year_kwh.high == Approx(energy(mat).kwh_per_year.high));
    double sum = 0.0;
    for (const Range& month : year.month_kwh) {
        sum += month.likely;
    }
    CHECK(sum == Approx(year.year_kwh.likely));
}

TEST_CASE("A winter month takes the winter duty, a summer month the summer's, between them by weight")
{
    Device mat = lamp(100.0);
    mat.timed = false;
    mat.duty_winter = exactly(1.0);
    mat.duty_summer = exactly(0.0);
    YearCourse course = even_year();
    course.winter_share = {all(0.0)};
    for (int day = 0; day < 31; ++day) {
        course.winter_share[0][static_cast<std::size_t>(day)] = 1.0;
    }
    for (int day = 31; day < 59; ++day) {
        course.winter_share[0][static_cast<std::size_t>(day)] = 0.25;
    }
    const DeviceYear year = year_of(mat, course);
    CHECK(year.month_kwh[0].likely == Approx(74.4)); // 100 W x 24 h x 31 d
    CHECK(year.month_kwh[1].likely == Approx(16.8)); // a quarter of 100 W x 24 h x 28 d
    CHECK(year.month_kwh[6].likely == 0.0);
    mat.duty_winter = exactly(0.0);
    mat.duty_summer = exactly(1.0);
    const DeviceYear fan = year_of(mat, course); // the other way round: three quarters of February, all of July
    CHECK(fan.month_kwh[0].likely == 0.0);
    CHECK(fan.month_kwh[1].likely == Approx(50.4));
    CHECK(fan.month_kwh[6].likely == Approx(74.4));
}

TEST_CASE("Other ways the year may go widen the ends and leave the likely value")
{
    Device mat = lamp(100.0);
    mat.timed = false;
    mat.duty_summer = exactly(0.0);
    YearCourse course = even_year();
    course.winter_share.push_back(all(0.25));
    course.winter_share.push_back(all(1.0));
    const DeviceYear year = year_of(mat, course);
    CHECK(year.month_kwh[0].low == Approx(0.25 * 74.4));
    CHECK(year.month_kwh[0].likely == Approx(0.5 * 74.4));
    CHECK(year.month_kwh[0].high == Approx(74.4));
}

TEST_CASE("While the animals rest, nothing runs, timed or not")
{
    YearCourse course = even_year();
    for (int day = 334; day < 365; ++day) {
        course.running_share[static_cast<std::size_t>(day)] = 0.0;
    }
    Device mat = lamp(20.0);
    mat.timed = false;
    CHECK(year_of(lamp(75.0), course).month_kwh[11].likely == 0.0);
    CHECK(year_of(mat, course).month_kwh[11].likely == 0.0);
    CHECK(year_of(lamp(75.0), course).year_kwh.likely == Approx(328.5 - 27.9));
}

TEST_CASE("A timed lamp burns as long as the day says, a heater all day")
{
    YearCourse course = even_year(14.0);
    CHECK(year_of(lamp(100.0), course).month_kwh[0].likely == Approx(43.4)); // 100 W x 14 h x 31 d
    Device mat = lamp(100.0);
    mat.timed = false;
    CHECK(year_of(mat, course).month_kwh[0].likely == Approx(74.4));
}

TEST_CASE("Devices add by month, and without a course there is nothing to add")
{
    const Year both = year_together({year_of(lamp(75.0), even_year()), year_of(lamp(24.0), even_year())});
    CHECK(both.month_kwh[0].likely == Approx(31 * (0.9 + 0.288)));
    CHECK(both.year_kwh.likely == Approx(328.5 + 105.12));
    CHECK(year_of(lamp(75.0), {}).year_kwh == Range{});
}
