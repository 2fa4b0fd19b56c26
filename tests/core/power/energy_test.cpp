#include "tests/catch.hpp"

#include "core/power/energy.hpp"

using namespace loam;
using namespace loam::power;

namespace {

Device device(double power_w, double hours, double duty = 1.0)
{
    Device one;
    one.connected_w = exactly(power_w);
    one.hours_per_day = hours;
    one.duty_winter = exactly(duty);
    one.duty_summer = exactly(duty);
    return one;
}

} // namespace

TEST_CASE("Watts and hours make the worked kilowatt-hours of a year")
{
    // Derived: 75 W x 12 h 328.5 kWh, 24 W x 12 h 105.12, 16 W x 24 h 140.16.
    CHECK(energy(device(75.0, 12.0)).kwh_per_year.likely == Approx(328.5));
    CHECK(energy(device(24.0, 12.0)).kwh_per_year.likely == Approx(105.12));
    CHECK(energy(device(16.0, 24.0)).kwh_per_year.likely == Approx(140.16));
}

TEST_CASE("Duty scales a controlled device as in the worked months of 30 days")
{
    // Derived: UV tube 24 W 12 h 8.6 kWh; basking 100 W 12 h at 0.7 25; mat 20 W 24 h at half duty 7.2; ceramic 60 W
    // 12 h at half duty 11.
    CHECK(30.0 * energy(device(24.0, 12.0)).winter_kwh_per_day.likely == Approx(8.6).margin(0.05));
    CHECK(30.0 * energy(device(100.0, 12.0, 0.7)).winter_kwh_per_day.likely == Approx(25.0).margin(0.5));
    CHECK(30.0 * energy(device(20.0, 24.0, 0.5)).winter_kwh_per_day.likely == Approx(7.2).margin(0.05));
    CHECK(30.0 * energy(device(60.0, 12.0, 0.5)).winter_kwh_per_day.likely == Approx(11.0).margin(0.5));
}

TEST_CASE("A year is half winter and half summer")
{
    Device mat = device(20.0, 24.0);
    mat.duty_winter = {0.5, 0.6, 0.7};
    mat.duty_summer = {0.1, 0.2, 0.3};
    const Energy used = energy(mat);
    CHECK(used.winter_kwh_per_day.likely == Approx(0.288));
    CHECK(used.summer_kwh_per_day.likely == Approx(0.096));
    CHECK(used.kwh_per_year.likely == Approx(365.0 * 0.192));
    CHECK(used.kwh_per_year.low == Approx(365.0 * 0.144));
}

TEST_CASE("Devices add, their errors in quadrature, and each takes an outlet")
{
    Device lamp = device(100.0, 12.0);
    lamp.connected_w = {97.0, 100.0, 103.0};
    lamp.timed = true;
    Device mat = device(200.0, 24.0, 0.5);
    mat.connected_w = {196.0, 200.0, 204.0};
    const Together sum = together({lamp, mat});
    CHECK(sum.connected_w.likely == Approx(300.0));
    CHECK(sum.connected_w.low == Approx(295.0));
    CHECK(sum.mean_kwh_per_day.likely == Approx(1.2 + 2.4));
    CHECK(sum.timed_outlets == 1);
    CHECK(sum.always_on_outlets == 1);
    CHECK(together({}).kwh_per_year == Range{});
}
