#include "tests/catch.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <string>

#include "core/light/photoperiod.hpp"

using namespace loam::light;
using namespace std::chrono_literals;

TEST_CASE("The CBM day length has its worked values")
{
    // An implementation of Forsythe et al. 1995, Ecological Modelling 80:87-95, of our own in another language, equal
    // to ten public codes (derived): latitude, 20 March, 21 June, 22 September, 21 December.
    const struct {
        double latitude_deg, march, june, september, december;
    } rows[] = {{0, 12.111, 12.121, 12.111, 12.121},  {10, 12.102, 12.708, 12.128, 11.539},
                {20, 12.095, 13.342, 12.149, 10.920}, {30, 12.092, 14.078, 12.178, 10.211},
                {40, 12.092, 15.016, 12.217, 9.324},  {50, 12.097, 16.372, 12.275, 8.070},
                {60, 12.112, 18.870, 12.371, 5.867},  {-20, 12.141, 10.919, 12.087, 13.341}};
    for (const auto& row : rows) {
        CAPTURE(row.latitude_deg);
        CHECK(*day_length_h(row.latitude_deg, *day_of_year(2025y / 3 / 20)) == Approx(row.march).margin(6e-4));
        CHECK(*day_length_h(row.latitude_deg, *day_of_year(2025y / 6 / 21)) == Approx(row.june).margin(6e-4));
        CHECK(*day_length_h(row.latitude_deg, *day_of_year(2025y / 9 / 22)) == Approx(row.september).margin(6e-4));
        CHECK(*day_length_h(row.latitude_deg, *day_of_year(2025y / 12 / 21)) == Approx(row.december).margin(6e-4));
    }
}

TEST_CASE("Day length agrees with full astronomical sunrise and sunset within its stated error")
{
    // PyEphem 4.1.4, tests/reference/day_length.py.
    std::ifstream file(std::string(LOAM_SOURCE_DIR) + "/tests/reference/day_length.csv");
    std::string line;
    std::getline(file, line);
    int rows = 0;
    double latitude_deg = 0.0;
    int day = 0;
    double hours = 0.0;
    char comma = 0;
    while (file >> latitude_deg >> comma >> day >> comma >> hours) {
        ++rows;
        CAPTURE(latitude_deg, day);
        CHECK(std::abs(*day_length_h(latitude_deg, day) - hours) < 0.14);
        if (std::abs(latitude_deg) <= 45.0) {
            CHECK(std::abs(*day_length_h(latitude_deg, day) - hours) < 0.08);
        }
    }
    CHECK(rows == 370);
}

TEST_CASE("Near and beyond the polar circles the day length is that of astronomy within two days of the date")
{
    // PyEphem 4.1.4, tests/reference/polar_day_length.py: 70 and 78 degrees, 66 north, polar day and night among them.
    std::ifstream file(std::string(LOAM_SOURCE_DIR) + "/tests/reference/polar_day_length.csv");
    std::string line;
    std::getline(file, line);
    int rows = 0;
    int without_a_sunset = 0;
    int without_a_sunrise = 0;
    double latitude_deg = 0.0;
    int day = 0;
    double hours = 0.0;
    char comma = 0;
    while (file >> latitude_deg >> comma >> day >> comma >> hours) {
        ++rows;
        without_a_sunset += hours == 24.0 ? 1 : 0;
        without_a_sunrise += hours == 0.0 ? 1 : 0;
        double least_h = 24.0;
        double most_h = 0.0;
        for (int near = std::max(1, day - 2); near <= std::min(365, day + 2); ++near) {
            least_h = std::min(least_h, *day_length_h(latitude_deg, near));
            most_h = std::max(most_h, *day_length_h(latitude_deg, near));
        }
        CAPTURE(latitude_deg, day, hours);
        CHECK(hours >= least_h - 1e-9);
        CHECK(hours <= most_h + 1e-9);
    }
    CHECK(rows == 185);
    CHECK(without_a_sunset > 30);
    CHECK(without_a_sunrise > 30);
}

TEST_CASE("Another depth of the sun below the horizon gives another day")
{
    // 40 N, day 172, by the same independent code (derived).
    CHECK(*day_length_h(40.0, 172, 0.0) == Approx(14.846).margin(6e-4));
    CHECK(*day_length_h(40.0, 172, 0.26667) == Approx(14.900).margin(6e-4));
    CHECK(*day_length_h(40.0, 172, 6.0) == Approx(16.112).margin(6e-4));
}

TEST_CASE("Beyond the circles the sun stays up in summer and down in winter")
{
    CHECK(*day_length_h(65.0, 172) == Approx(22.05).margin(6e-3)); // same source
    CHECK(*day_length_h(70.0, 172) == 24.0);
    CHECK(*day_length_h(70.0, 355) == 0.0);
    CHECK(*day_length_h(-90.0, 355) == 24.0);
    CHECK(*day_length_h(90.0, 355) == 0.0);
}

TEST_CASE("Without refraction and limb, two opposite latitudes share the day")
{
    for (int day = 1; day <= 365; day += 7) {
        CHECK(*day_length_h(38.0, day, 0.0) + *day_length_h(-38.0, day, 0.0) == Approx(24.0));
        CHECK(*day_length_h(0.0, day, 0.0) == Approx(12.0));
    }
}

TEST_CASE("The year's longest and shortest day belong to the latitude, not to the hemisphere's June")
{
    const YearOfLight north = *year_of_light(47.0);
    const YearOfLight south = *year_of_light(-47.0);
    CHECK(north.longest_h == Approx(*day_length_h(47.0, 172)).margin(0.01));
    CHECK(south.longest_h == Approx(*day_length_h(-47.0, 355)).margin(0.01));
    CHECK(south.shortest_h == Approx(north.shortest_h).margin(0.01));
}

TEST_CASE("A place or day that does not exist has no day length")
{
    CHECK_FALSE(day_length_h(90.5, 100));
    CHECK_FALSE(day_length_h(std::nan(""), 100));
    CHECK_FALSE(day_length_h(40.0, 0));
    CHECK_FALSE(day_length_h(40.0, 367));
    CHECK_FALSE(day_of_year(2025y / 2 / 30));
    CHECK_FALSE(year_of_light(-91.0));
}

TEST_CASE("Days are numbered from New Year, with the leap day")
{
    CHECK(*day_of_year(2025y / 1 / 1) == 1);
    CHECK(*day_of_year(2025y / 12 / 31) == 365);
    CHECK(*day_of_year(2024y / 12 / 31) == 366);
}

TEST_CASE("Hours run from on to off, over midnight where the lamps do")
{
    CHECK(*hours_between("07:00", "19:00") == Approx(12.0));
    CHECK(*hours_between("07:30", "19:15") == Approx(11.75));
    CHECK(*hours_between("20:00", "06:00") == Approx(10.0));
    CHECK(*hours_between("07:00", "19:00") + *hours_between("19:00", "07:00") == Approx(24.0));
}

TEST_CASE("A malformed or doubtful pair of clock times has no hours")
{
    for (const char* wrong : {"7:00", "24:00", "12:60", "12-30", "", "12:3x", "-1:00", "012:0"}) {
        CAPTURE(wrong);
        CHECK_FALSE(minutes_of_clock(wrong));
        CHECK_FALSE(hours_between(wrong, "19:00"));
        CHECK_FALSE(hours_between("07:00", wrong));
    }
    CHECK_FALSE(hours_between("07:00", "07:00")); // never, or always?
}
