// Each danger that shows without the climate: there when provoked, and not otherwise.
#include <algorithm>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

TEST_CASE("the first setup has no danger at once")
{
    CHECK_FALSE(has_danger(instant(example("first-setup"))));
}

TEST_CASE("a combustible cover within a lamp's clearance is danger, a pane there falls short")
{
    plan::Plan plan = turtle_table();
    const plan::Device& lamp = plan.enclosures[0].equipment[0];
    auto& covers = plan.enclosures[0].shell.top.covers;
    covers = {cover("v9", "towel", {lamp.x_m + 0.1, 0.1, 0.2, 0.2})};
    const auto towel = with_code(instant(plan), "danger.cover-near-lamp");
    REQUIRE(towel.size() >= 1);
    CHECK(towel[0].verdict == Verdict::danger);
    CHECK(input(towel[0], "distance") < input(towel[0], "clearance"));
    CHECK(input(towel[0], "short_by") == Approx(input(towel[0], "clearance") - input(towel[0], "distance")));

    covers[0].material = "glass";
    CHECK(has(instant(plan), "danger.cover-near-lamp", Verdict::falls_short));
    CHECK_FALSE(has(instant(plan), "danger.cover-near-lamp", Verdict::danger));

    covers = {cover("v9", "towel", {1.1, 0.1, 0.2, 0.2})};
    CHECK(with_code(instant(plan), "danger.cover-near-lamp").empty());
}

TEST_CASE("sun through glass is danger when stated, not known when unknown or unsaid, and nothing when denied")
{
    plan::Plan plan = turtle_table();
    const std::string code = "danger.sun-through-glass";
    CHECK(with_code(instant(plan), code).empty());
    plan.site.room.sun_reaches = plan::SunReaches::yes;
    CHECK(has(instant(plan), code, Verdict::danger));
    plan.site.room.sun_reaches = plan::SunReaches::unknown;
    CHECK(has(instant(plan), code, Verdict::not_known));
    plan.site.room.sun_reaches.reset();
    CHECK(has(instant(plan), code, Verdict::not_known));
}

TEST_CASE("a hide roof that brings a back within a lamp's clearance is danger")
{
    plan::Plan plan = turtle_table();
    plan::Enclosure& box = plan.enclosures[0];
    const plan::Device& lamp = box.equipment[0];
    box.fittings.push_back(fitting("f9", plan::FittingKind::hide, {lamp.x_m - 0.1, lamp.y_m - 0.1, 0.2, 0.2}, 0.25));
    const auto found = with_code(instant(plan), "danger.climbing-reach");
    REQUIRE_FALSE(found.empty());
    CHECK(found[0].verdict == Verdict::danger);
    CHECK(label(found[0], "standing_on") == "f9");
    // Bed 0.09 m, roof 0.25 m and a back of 0.48 * 0.115 m, by hand.
    CHECK(input(found[0], "reach") == Approx(0.09 + 0.25 + 0.48 * 0.115).margin(1e-6));
}

TEST_CASE("an unguarded hot lamp inside the box that an animal can touch is danger, a guarded one is not")
{
    plan::Plan plan = turtle_table();
    plan::Device& lamp = plan.enclosures[0].equipment[0];
    lamp.height_above_base_m = 0.18;
    lamp.guarded = false;
    CHECK(has(instant(plan), "danger.unguarded-lamp", Verdict::danger));
    lamp.guarded = true;
    CHECK(with_code(instant(plan), "danger.unguarded-lamp").empty());
}

TEST_CASE("the stand's load adds over enclosures and is danger where the upper end passes the rating")
{
    plan::Plan plan = turtle_table();
    const auto alone = instant(plan);
    REQUIRE(alone.stands.size() == 1);
    plan::Enclosure second = plan.enclosures[0];
    second.id = "e2";
    plan.enclosures.push_back(second);
    const auto both = instant(plan);
    CHECK(both.stands[0].load_kg.likely == Approx(2.0 * alone.stands[0].load_kg.likely));
    plan.site.stands[0].rated_load_kg = both.stands[0].load_kg.high - 0.1;
    CHECK(has(instant(plan), "danger.stand", Verdict::danger));
    plan.site.stands[0].rated_load_kg = both.stands[0].load_kg.high + 0.1;
    CHECK(with_code(instant(plan), "danger.stand").empty());
}

TEST_CASE("the circuit's load counts everything on it and is danger beyond 80 % of 15 A at 120 V for what lasts")
{
    // 15 A x 120 V x 80 % = 1440 W: NFPA 70 (NEC) 210.20(A).
    plan::Plan plan = turtle_table();
    const double own_w = instant(plan).circuits[0].load_w.likely - *plan.site.circuits[0].other_load_w;
    plan.site.circuits[0].other_load_w = 1441.0 - own_w;
    const auto over = instant(plan);
    REQUIRE(has(over, "danger.circuit", Verdict::danger));
    CHECK(input(with_code(over, "danger.circuit")[0], "max") == Approx(1440.0));
    plan.site.circuits[0].other_load_w = 1300.0 - own_w;
    CHECK(with_code(instant(plan), "danger.circuit").empty());
}

TEST_CASE("a lamp stronger than its holder, or a load stronger than its control, is danger")
{
    plan::Plan plan = turtle_table();
    plan::Device& lamp = plan.enclosures[0].equipment[0];
    lamp.power_w = 100.0;
    lamp.holder_rating_w = 60.0;
    const auto over = with_code(instant(plan), "danger.lamp-holder");
    REQUIRE(over.size() == 1);
    CHECK(over[0].verdict == Verdict::danger);
    CHECK(input(over[0], "max") == Approx(60.0));
    CHECK(over[0].remedy->amounts[0].value == Approx(100.0));
    lamp.holder_rating_w = 100.0;
    CHECK(with_code(instant(plan), "danger.lamp-holder").empty());
    const auto of_lamp = [&] {
        const auto all = with_code(instant(plan), "electrical.lamp-holder");
        return std::count_if(all.begin(), all.end(), [&](const Finding& one) { return one.where == lamp.id; });
    };
    CHECK(of_lamp() == 0);
    lamp.holder_rating_w.reset(); // not stated: a caution
    CHECK(of_lamp() == 1);

    lamp.control.kind = plan::ControlKind::dimmer;
    lamp.control.level = 0.5;
    lamp.control.rating_w = 60.0;
    CHECK(has(instant(plan), "danger.control-overload", Verdict::danger));
    lamp.control.rating_w = 150.0;
    CHECK(with_code(instant(plan), "danger.control-overload").empty());
}

TEST_CASE("how a thermostat regulates decides whether a lamp may hang on it")
{
    // Common practice, no source; keepers' sheets agree (secondary): pulse and on-off for heat without light, dimming
    // for incandescent lamps, never a mercury-vapour lamp.
    plan::Plan plan = turtle_table();
    plan::Device& lamp = plan.enclosures[0].equipment[0];
    lamp.kind = plan::DeviceKind::flood_lamp;
    lamp.control.kind = plan::ControlKind::thermostat;
    lamp.control.setpoint_c = 33.0;
    lamp.control.probe = plan::Probe{0.2, 0.2, 0.1, {}};
    CHECK(has(instant(plan), "control.on-off-with-lamp", Verdict::tight)); // its kind is not stated
    lamp.control.method = plan::ThermostatMethod::pulse;
    CHECK(has(instant(plan), "control.on-off-with-lamp", Verdict::falls_short));
    lamp.control.method = plan::ThermostatMethod::on_off;
    CHECK(has(instant(plan), "control.on-off-with-lamp", Verdict::falls_short));
    lamp.control.method = plan::ThermostatMethod::dimming;
    CHECK(with_code(instant(plan), "control.on-off-with-lamp").empty());
    lamp.kind = plan::DeviceKind::mercury_vapour_lamp;
    CHECK(has(instant(plan), "control.thermostat-unsuited", Verdict::falls_short));
    lamp.kind = plan::DeviceKind::uv_tube;
    CHECK(has(instant(plan), "control.thermostat-unsuited", Verdict::falls_short));
    lamp.kind = plan::DeviceKind::ceramic_heater;
    for (const auto method :
         {plan::ThermostatMethod::pulse, plan::ThermostatMethod::on_off, plan::ThermostatMethod::dimming}) {
        lamp.control.method = method;
        CHECK(with_code(instant(plan), "control.thermostat-unsuited").empty());
        CHECK(with_code(instant(plan), "control.on-off-with-lamp").empty());
    }
}
