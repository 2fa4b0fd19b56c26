// Parts of one assessment that must not contradict each other: what is ordered, what is counted, what is advised.
#include <algorithm>
#include <cmath>
#include <map>

#include "core/assess/climate_parts.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

plan::Device lamp_of(std::string id, plan::DeviceKind kind, double power_w, const plan::Control& control = {})
{
    plan::Device lamp;
    lamp.id = std::move(id);
    lamp.kind = kind;
    lamp.power_w = power_w;
    lamp.x_m = 0.3;
    lamp.y_m = 0.3;
    lamp.height_above_base_m = 0.62;
    lamp.supply = plan::Supply::timed;
    lamp.control = control;
    return lamp;
}

double amount(const Remedy& remedy, std::string_view name)
{
    for (const Input& one : remedy.amounts) {
        if (one.name == name) {
            return one.value;
        }
    }
    throw std::runtime_error(remedy.code + " carries no amount " + std::string(name));
}

std::string device_of(const Remedy& remedy)
{
    for (const Label& one : remedy.labels) {
        if (one.name == "device") {
            return one.text;
        }
    }
    return {};
}

} // namespace

TEST_CASE("a merged order asks for the same amounts as the plan's own assessment")
{
    for (const char* name : {"first-setup", "upgrade", "club-template"}) {
        INFO(name);
        const plan::Plan plan = example(name);
        const auto alone = whole(plan).shopping;
        const auto merged = assess::merged_order({plan}, shipped_catalog(), day).lines;
        REQUIRE(alone.size() == merged.size());
        for (std::size_t i = 0; i < alone.size(); ++i) {
            INFO(alone[i].need);
            CHECK(alone[i].need == merged[i].need);
            CHECK(alone[i].packs == merged[i].packs);
            CHECK(alone[i].amount_needed == merged[i].amount_needed);
        }
    }
}

TEST_CASE("a bowl is topped up by what its own water loses, not by what the bed does")
{
    const plan::Plan plan = turtle_table();
    const assess::WaterResult before = instant(plan).enclosures[0].water;
    // One change a day of 0.28 x 0.2 x 0.03 m at 0.8, and 2.6 l/(m2 d) over the same area, by hand.
    CHECK_FALSE(before.by_climate);
    CHECK_FALSE(before.bed_l_per_day);
    CHECK(before.daily_l.likely == Approx(0.28 * 0.2 * (0.03 * 0.8 * 1000.0 + 2.6)).epsilon(1e-6));
    const assess::EnclosureResult solved = whole(plan).enclosures[0];
    CHECK(solved.water.by_climate);
    CHECK(solved.water.daily_l.likely ==
          Approx(0.28 * 0.2 * 0.03 * 0.8 * 1000.0 + solved.water.top_up_l_per_day.likely).epsilon(1e-6));
    // Source: ASHRAE HVAC Applications, natatoriums, 0.089 W/(m2 Pa) at activity 0.5: between water at the air's
    // temperature in half-saturated air (2.6 at 25 degC) and water that its own evaporation has cooled near the wet
    // bulb.
    CHECK(solved.water.top_up_l_per_day.likely < 0.28 * 0.2 * 2.6);
    CHECK(solved.water.top_up_l_per_day.likely > 0.28 * 0.2 * 0.5);
    // What is bought does not hang on the climate.
    CHECK(instant(plan).shopping == whole(plan).shopping);
}

TEST_CASE("a bed's balance of water closes over the year: what is poured in, misted and dripped back evaporates")
{
    plan::Plan plan = turtle_table();
    plan.enclosures[0].moisture.misting_l_per_day = 0.05;
    const assess::EnclosureResult result = whole(plan).enclosures[0];
    const double lit = 13.0 / 24.0; // the example's lamps burn from 07:30 to 20:30
    double sum_l = 0.0;
    for (const char* season : {"winter", "summer"}) {
        for (const char* half : {"-day", "-night"}) {
            const climate::CaseResult& one = heat_case(result, std::string(season) + half).detail;
            sum_l +=
                0.5 * (one.id.ends_with("day") ? lit : 1.0 - lit) *
                (one.evaporation_l_per_day.likely - one.bowl_evaporation_l_per_day.likely - one.condensation_l_per_day);
        }
    }
    REQUIRE(result.water.bed_l_per_day);
    CHECK(result.water.bed_l_per_day->likely == Approx(sum_l - 0.05).margin(1e-9));
    plan.enclosures[0].moisture.misting_l_per_day = 2.0;
    CHECK(has(whole(plan), "moisture.bed-gains-water", Verdict::falls_short));
    plan.enclosures[0].moisture.misting_l_per_day = 0.0;
    CHECK(with_code(whole(plan), "moisture.bed-gains-water").empty());
}

TEST_CASE("a thermostat's energy carries the watts' error once")
{
    plan::Plan plan = turtle_table();
    const auto result = whole(plan).enclosures[0];
    for (const assess::DevicePower& device : result.power.devices) {
        const assess::HeatCase& day_case = heat_case(result, "winter-day");
        for (const climate::DeviceState& state : day_case.detail.devices) {
            if (state.id == device.id && state.duty.low < state.duty.high && device.hours_per_day < 24.0) {
                INFO(device.id);
                const double hours = device.hours_per_day / 1000.0 * device.connected_w.likely;
                CHECK(device.daily_kwh_winter.low == Approx(state.duty.low * hours));
                CHECK(device.daily_kwh_winter.high == Approx(state.duty.high * hours));
            }
        }
    }
    CHECK(result.power.connected_w.high > result.power.connected_w.likely); // the plugs still bear the whole range
}

TEST_CASE("what the mesh gives back comes from the guidance")
{
    catalog::Catalog catalog = shipped_catalog();
    for (catalog::Assumption& one : catalog.assumptions) {
        if (one.id == "model.mesh_return") {
            one.spread.low = 0.1;
            one.spread.likely = 0.2;
            one.spread.high = 0.3;
        }
    }
    climate::Box box;
    REQUIRE_FALSE(assess::fill_coefficients(catalog, box));
    CHECK(box.mesh_return == Range{0.1, 0.2, 0.3});
}

TEST_CASE("a strip is told by its own rating where that is the smaller")
{
    plan::Plan plan = turtle_table();
    plan.site.strips[0].rating_a = 1.0;
    const auto found = with_code(instant(plan), "danger.strip");
    REQUIRE(found.size() == 1);
    CHECK(input(found[0], "rating") == Approx(1.0));
    CHECK(input(found[0], "max") == Approx(0.8 * 120.0)); // NFPA 70, 210.20(A): 80 % for what lasts
}

TEST_CASE("a box is as bad as the sun, the stand and the strip that it hangs on")
{
    const auto overall = [](const plan::Plan& plan) { return instant(plan).enclosures[0].overall.verdict; };
    plan::Plan plan = turtle_table();
    CHECK(overall(plan) != Verdict::danger);
    plan.site.room.sun_reaches = plan::SunReaches::yes;
    CHECK(overall(plan) == Verdict::danger);
    plan = turtle_table();
    plan.site.stands[0].rated_load_kg = 5.0;
    CHECK(overall(plan) == Verdict::danger);
    plan = turtle_table();
    plan.site.circuits[0].other_load_w = 1900.0;
    CHECK(overall(plan) == Verdict::danger);
}

TEST_CASE("the share of the floor within the band is a share, and known where a target is")
{
    const assess::Assessment assessed = whole(turtle_table());
    for (const assess::HeatCase& one : assessed.enclosures[0].heat) {
        INFO(one.id);
        REQUIRE(one.floor_share_in_band);
        CHECK(one.floor_share_in_band->low >= 0.0);
        CHECK(one.floor_share_in_band->low <= one.floor_share_in_band->likely);
        CHECK(one.floor_share_in_band->likely <= one.floor_share_in_band->high);
        CHECK(one.floor_share_in_band->high <= 1.0);
    }
}

TEST_CASE("no remedy asks for a room that nobody could live in, and each room is the one of its own case")
{
    plan::Plan plan = turtle_table();
    plan.enclosures[0].equipment = {lamp_of("d1", plan::DeviceKind::flood_lamp, 60.0)};
    std::size_t rooms = 0;
    for (const Finding& finding : whole(plan).findings) {
        if (finding.remedy &&
            (finding.remedy->code == "remedy.warmer-room" || finding.remedy->code == "remedy.cooler-room")) {
            ++rooms;
            INFO(finding.code << " " << label(finding, "case"));
            const bool below = finding.direction == Direction::below;
            CHECK((below ? amount(*finding.remedy, "to") <= 28.0 : amount(*finding.remedy, "to") >= 15.0));
            CHECK(amount(*finding.remedy, "by") == Approx(input(finding, below ? "short_by" : "over_by")));
        }
    }
    CHECK(rooms > 0);
}

TEST_CASE("light is no heater: no remedy makes a strip of LEDs or a UV tube stronger or weaker for warmth")
{
    plan::Plan plan = turtle_table();
    plan.enclosures[0].equipment = {lamp_of("d1", plan::DeviceKind::led_strip, 20.0)};
    plan.enclosures[0].equipment[0].length_m = 0.5;
    for (const Finding& finding : whole(plan).findings) {
        if (finding.remedy) {
            INFO(finding.code << " " << finding.remedy->code);
            CHECK(finding.remedy->code != "remedy.stronger-device");
            CHECK(finding.remedy->code != "remedy.weaker-device");
        }
    }
}

TEST_CASE("the remedies for one device agree on one value, of a power that is sold")
{
    plan::Plan plan = turtle_table();
    plan.enclosures[0].equipment[0].power_w = 160.0;
    plan.enclosures[0].equipment[0].control = {};
    plan.enclosures[0].equipment[1].age_hours = 0.0;
    std::map<std::string, double> told;
    for (const Finding& finding : whole(plan).findings) {
        if (finding.remedy && finding.remedy->code == "remedy.weaker-device") {
            const double to_w = amount(*finding.remedy, "to");
            INFO(finding.code);
            CHECK(std::fmod(to_w, 5.0) == 0.0);
            CHECK(told.emplace(device_of(*finding.remedy), to_w).first->second == to_w);
        }
    }
    CHECK_FALSE(told.empty());
}

TEST_CASE("a rock under a lamp is lowered by just what is missing, a hide's roof is moved")
{
    plan::Plan plan = turtle_table();
    plan::Enclosure& box = plan.enclosures[0];
    const plan::Device& lamp = box.equipment[0];
    box.fittings = {fitting("f9", plan::FittingKind::rock, {lamp.x_m - 0.1, lamp.y_m - 0.1, 0.2, 0.2}, 0.25)};
    const auto rock = with_code(instant(plan), "danger.climbing-reach");
    REQUIRE_FALSE(rock.empty());
    REQUIRE(rock[0].remedy);
    CHECK(rock[0].remedy->code == "remedy.lower-perch");
    box.fittings[0].height_m = 0.25 - amount(*rock[0].remedy, "by") - 1e-6;
    CHECK_FALSE(has(instant(plan), "danger.climbing-reach", Verdict::danger));
    box.fittings[0].kind = plan::FittingKind::hide;
    box.fittings[0].height_m = 0.25;
    CHECK(with_code(instant(plan), "danger.climbing-reach")[0].remedy->code == "remedy.move-perch");
}

TEST_CASE("every danger of heat comes with a way out of it")
{
    plan::Plan plan = turtle_table();
    plan.site.room.heat_wave_c = 40.0;
    plan.site.room.winter.night_c = 2.0;
    plan.enclosures[0].equipment[0].power_w = 150.0;
    plan.enclosures[0].equipment[0].control = {};
    std::size_t dangers = 0;
    for (const Finding& finding : whole(plan).findings) {
        if (finding.verdict == Verdict::danger) {
            ++dangers;
            INFO(finding.code);
            CHECK(finding.remedy);
        }
    }
    CHECK(dangers >= 3);
}
