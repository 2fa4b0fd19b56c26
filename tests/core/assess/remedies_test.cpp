// Remedies are followed, and the finding is gone; a little less, and it is not.
#include <algorithm>
#include <string>
#include <vector>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

double amount(const Remedy& remedy, std::string_view name)
{
    for (const Input& one : remedy.amounts) {
        if (one.name == name) {
            return one.value;
        }
    }
    FAIL("the remedy has no " << name);
    return 0.0;
}

plan::Plan with_lamp(plan::DeviceKind kind, double power_w, plan::ControlKind control)
{
    plan::Plan plan = turtle_table();
    plan::Device& lamp = plan.enclosures[0].equipment[0];
    lamp.kind = kind;
    lamp.power_w = power_w;
    lamp.control = {};
    lamp.control.kind = control;
    if (control == plan::ControlKind::dimmer) {
        lamp.control.level = 0.9;
    }
    return plan;
}

} // namespace

// Common practice, no source: mercury-vapour and metal-halide lamps are never dimmed (controls that suit: core/power);
// sold in 80 to 160 W and 35 to 70 W by the catalog's usual sizes.
TEST_CASE("no remedy dims a discharge lamp, puts it on a thermostat, or names a power it does not come in")
{
    const auto check = [](const plan::Plan& plan, const std::vector<double>& sold) {
        std::size_t powers = 0;
        const std::string lamp = plan.enclosures[0].equipment[0].id;
        for (const Finding& finding : whole(plan).findings) {
            const auto is_lamp = [&](const Label& one) { return one.name == "device" && one.text == lamp; };
            const auto& remedy = finding.remedy;
            if (!remedy || std::none_of(remedy->labels.begin(), remedy->labels.end(), is_lamp)) {
                continue;
            }
            INFO(finding.code << " " << remedy->code);
            CHECK(remedy->code != "remedy.dim-device");
            CHECK(remedy->code != "remedy.set-thermostat");
            CHECK(remedy->code != "remedy.add-thermostat");
            CHECK(remedy->code != "remedy.dimming-thermostat");
            if (remedy->code == "remedy.weaker-device" || remedy->code == "remedy.stronger-device") {
                ++powers;
                CHECK(std::find(sold.begin(), sold.end(), amount(*remedy, "to")) != sold.end());
            }
        }
        return powers;
    };
    using enum plan::DeviceKind;
    using enum plan::ControlKind;
    std::size_t powers = 0;
    for (const auto control : {none, dimmer, thermostat}) {
        for (const double power_w : {80.0, 160.0}) {
            powers += check(with_lamp(mercury_vapour_lamp, power_w, control), {80.0, 100.0, 125.0, 160.0});
        }
        for (const double power_w : {35.0, 70.0, 150.0}) {
            powers += check(with_lamp(metal_halide_lamp, power_w, control), {35.0, 50.0, 70.0});
        }
    }
    CHECK(powers > 0);
}

TEST_CASE("less misting names the most that may be misted, not none")
{
    plan::Plan plan = example("upgrade");
    plan.site.room.summer.relative_humidity = 0.4; // so dry that the bed alone does not make it too damp
    const auto misted = [&](double misting_l) {
        for (plan::Enclosure& box : plan.enclosures) {
            box.moisture.misting_l_per_day = misting_l;
        }
        auto found = with_code(whole(plan), "humidity.level");
        std::erase_if(found, [](const Finding& one) {
            return one.direction != Direction::above || one.verdict != Verdict::falls_short ||
                   label(one, "case") != "summer-day";
        });
        return found;
    };
    const auto found = misted(1.5);
    REQUIRE(found.size() == 1);
    REQUIRE(found[0].remedy);
    REQUIRE(found[0].remedy->code == "remedy.less-misting");
    const double to_l = amount(*found[0].remedy, "to");
    CHECK(to_l > 0.0);
    CHECK(amount(*found[0].remedy, "by") == Approx(1.5 - to_l));
    CHECK(misted(to_l).empty());
    CHECK(misted(to_l + 0.04).size() == 1); // it is told to a fiftieth of the 1.5 l
}

TEST_CASE("a perch that burns is lowered or its lamp raised by just enough, where that changes less than the power")
{
    plan::Plan plan = turtle_table();
    plan::Enclosure& box = plan.enclosures[0];
    plan::Device& lamp = box.equipment[0];
    lamp.control = {};
    const double lamp_m = *lamp.height_above_base_m;
    const auto burning = [&](plan::FittingKind kind, double height_m, double raised_m) {
        lamp.height_above_base_m = lamp_m + raised_m;
        box.fittings = {fitting("f9", kind, {lamp.x_m - 0.1, lamp.y_m - 0.1, 0.2, 0.2}, height_m)};
        auto found = with_code(whole(plan), "danger.lamp-dried-surface");
        std::erase_if(found, [](const Finding& one) { return one.verdict != Verdict::danger; });
        return found;
    };
    const auto rock = burning(plan::FittingKind::rock, 0.1, 0.0);
    REQUIRE(rock.size() == 1);
    CHECK(label(rock[0], "on") == "f9");
    REQUIRE(rock[0].remedy);
    REQUIRE(rock[0].remedy->code == "remedy.lower-perch");
    const double lower_m = amount(*rock[0].remedy, "by");
    CHECK(burning(plan::FittingKind::rock, 0.1 - lower_m, 0.0).empty());
    CHECK(burning(plan::FittingKind::rock, 0.1 - lower_m + 0.01, 0.0).size() == 1);

    const auto roof = burning(plan::FittingKind::hide, 0.1, 0.0); // not to be made lower
    REQUIRE(roof.size() == 1);
    REQUIRE(roof[0].remedy);
    REQUIRE(roof[0].remedy->code == "remedy.raise-lamp");
    const double higher_m = amount(*roof[0].remedy, "by");
    CHECK(amount(*roof[0].remedy, "to") == Approx(lamp_m + higher_m));
    CHECK(burning(plan::FittingKind::hide, 0.1, higher_m).empty());
    CHECK(burning(plan::FittingKind::hide, 0.1, higher_m - 0.01).size() == 1);
}
