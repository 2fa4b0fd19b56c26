// A box that takes over from another: both draw their watts while the new one is proved, and nothing else is counted
// twice.
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

// The same box once more under other ids.
plan::Plan with_old_box(bool takes_over)
{
    plan::Plan plan = turtle_table();
    plan::Enclosure old = plan.enclosures[0];
    old.id = "old";
    old.readings.clear();
    for (plan::Device& device : old.equipment) {
        device.id += "-old";
    }
    for (plan::Animal& animal : old.animals) {
        animal.id += "-old";
    }
    for (plan::Fitting& fitting : old.fittings) {
        fitting.id += "-old";
    }
    plan.enclosures.push_back(old);
    if (takes_over) {
        plan.enclosures[0].replaces = "old";
    }
    return plan;
}

double high_w(const assess::Assessment& assessment)
{
    REQUIRE_FALSE(assessment.circuits.empty());
    return assessment.circuits[0].load_w.high;
}

} // namespace

TEST_CASE("The old box is in the loads, and in no order and no running cost")
{
    const auto alone = instant(turtle_table());
    const auto proving = instant(with_old_box(true));
    const auto both = instant(with_old_box(false));
    CHECK(high_w(proving) == Approx(high_w(both)));
    CHECK(high_w(proving) > high_w(alone));
    CHECK(proving.shopping == alone.shopping);
    CHECK(proving.costs.running_per_year == alone.costs.running_per_year);
    CHECK(proving.costs.animals == alone.costs.animals);
    CHECK(both.costs.animals == 2 * alone.costs.animals);
    CHECK(with_code(both, "proving.both-run").empty());
}

TEST_CASE("What running both draws is told in kilowatt-hours, over the shortest and the longest proving")
{
    const auto proving = instant(with_old_box(true));
    const auto found = with_code(proving, "proving.both-run");
    REQUIRE(found.size() == 1);
    const Range& daily = proving.enclosures[1].power.daily_kwh;
    CHECK(label(found[0], "old") == "old");
    CHECK(input(found[0], "energy_min") == Approx(daily.low * input(found[0], "days_min")));
    CHECK(input(found[0], "energy_max") == Approx(daily.high * input(found[0], "days_max")));
    CHECK(input(found[0], "days_min") == 7.0);
}

TEST_CASE("What carries too much only while both run is told apart from what always does")
{
    plan::Plan plan = with_old_box(true);
    REQUIRE_FALSE(plan.site.circuits.empty());
    plan.site.circuits[0].other_load_w = 0.0;
    const double both_w = high_w(instant(plan));
    const double voltage_v = plan.site.circuits[0].voltage_v;
    // Of what 80 % of the rating may carry for long, both ask a fifth more, and one alone little over half.
    plan.site.circuits[0].rating_a = both_w / 1.2 / 0.8 / voltage_v;
    const auto assessment = instant(plan);
    const auto found = with_code(assessment, "proving.overload-meanwhile");
    REQUIRE_FALSE(found.empty());
    CHECK(label(found[0], "carrier") == plan.site.circuits[0].id);
    CHECK(input(found[0], "both") == Approx(both_w));
    CHECK(input(found[0], "afterwards") < both_w);
    CHECK(assessment.circuits[0].judgement.direction == Direction::above);
    plan.site.circuits[0].rating_a = 16.0;
    CHECK(with_code(instant(plan), "proving.overload-meanwhile").empty());
}
