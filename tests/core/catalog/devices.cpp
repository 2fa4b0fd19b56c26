#include <algorithm>

#include "core/catalog/names.hpp"
#include "core/plan/names.hpp"
#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam::catalog;

static const DeviceTraits& device(const char* kind)
{
    const DeviceTraits* const found = shipped::catalog().find_device(kind);
    INFO(kind);
    REQUIRE(found != nullptr);
    return *found;
}

TEST_CASE("lamps split their watts as the published balances say")
{
    // US DOE fact sheet 2007, Thermal Management of White LEDs (from memory): incandescent 0.08 visible and 0.73
    // infrared, 0.19 convected; linear fluorescent 0.21 and 0.37, 0.42.
    CHECK(device("flood-lamp").radiant_share->low <= 0.81);
    CHECK(device("flood-lamp").radiant_share->high >= 0.81);
    CHECK(device("flood-lamp").convective_share->likely == Approx(0.19).margin(0.02));
    CHECK(device("uv-tube").radiant_share->likely == Approx(0.58));
    CHECK(device("uv-tube").convective_share->likely == Approx(0.42));
    // Energy balance of a 100 W emitter at film coefficients of 8, 12 and 15 W/(m2 K): 0.65, 0.53, 0.46.
    CHECK(device("ceramic-heater").radiant_share->low == Approx(0.46));
    CHECK(device("ceramic-heater").radiant_share->likely == Approx(0.53));
    CHECK(device("ceramic-heater").radiant_share->high == Approx(0.65));
}

TEST_CASE("the likely shares of a lamp or heater account for all of its watts")
{
    for (const DeviceTraits& each : shipped::catalog().devices) {
        if (each.radiant_share) {
            INFO(each.kind);
            CHECK(each.radiant_share->likely + each.convective_share->likely == Approx(1.0));
        }
    }
}

TEST_CASE("only resistive loads are called dimmable")
{
    // Phase-angle dimmers suit incandescent, halogen, ceramic and mats only (common practice).
    for (const DeviceTraits& each : shipped::catalog().devices) {
        INFO(each.kind);
        CHECK((!each.dimmable || each.load == LoadKind::resistive));
    }
    CHECK_FALSE(device("mercury-vapour-lamp").dimmable);
}

TEST_CASE("a lamp keeps 30 cm from what can burn unless its maker says otherwise")
{
    // Common practice, from memory.
    for (const char* kind : {"flood-lamp", "ceramic-heater", "mercury-vapour-lamp", "metal-halide-lamp"}) {
        CHECK(device(kind).clearance_m.likely == Approx(0.30));
        CHECK(device(kind).burns_at_touch);
    }
}

TEST_CASE("what gives UV loses it and has a life")
{
    for (const DeviceTraits& each : shipped::catalog().devices) {
        if (each.emits_uv) {
            INFO(each.kind);
            CHECK(each.emits_light);
            CHECK(each.uv_decay_per_1000_h.has_value());
            CHECK(each.life_months.has_value());
        }
    }
}

TEST_CASE("every kind of device that a plan may name is described once")
{
    CHECK(std::equal(device_kinds.begin(), device_kinds.end(), loam::plan::device_kind_names.begin(),
                     loam::plan::device_kind_names.end()));
    CHECK(shipped::catalog().devices.size() == device_kinds.size());
}
