// A look at one case shows what the assessment of the same plan will show.
#include "core/assess/look.hpp"

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

// The lamp over the first box, a centimetre and a half further along for each step.
plan::Plan with_lamp_moved(plan::Plan plan, int steps)
{
    for (plan::Device& device : plan.enclosures.front().equipment) {
        if (device.kind == plan::DeviceKind::flood_lamp) {
            device.x_m += 0.015 * steps;
            return plan;
        }
    }
    FAIL("the example has no flood lamp");
    return plan;
}

assess::LookAt winter_day(const plan::Plan& plan)
{
    return {plan.enclosures.front().id, "winter-day"};
}

// What both say of the plan after a drag of ten steps.
void check_look(const plan::Plan& plan, double within_k)
{
    assess::Workspace workspace;
    const auto before = assess::assess(plan, shipped_catalog(), day, workspace);
    REQUIRE(before);
    std::optional<assess::HeatCase> seen;
    for (int step = 1; step <= 10; ++step) {
        seen = assess::look(with_lamp_moved(plan, step), shipped_catalog(), winter_day(plan), workspace);
        REQUIRE(seen);
    }
    const auto expected = heat_case(whole(with_lamp_moved(plan, 10)).enclosures.front(), "winter-day");
    const auto was = heat_case(before->enclosures.front(), "winter-day");
    REQUIRE(seen->detail.floor.ground_c.size() == expected.detail.floor.ground_c.size());
    double most_k = 0.0;
    double moved_k = 0.0;
    for (std::size_t c = 0; c < expected.detail.floor.ground_c.size(); ++c) {
        const double here_c = expected.detail.floor.ground_c[c];
        most_k = std::max(most_k, std::abs(seen->detail.floor.ground_c[c] - here_c));
        moved_k = std::max(moved_k, std::abs(was.detail.floor.ground_c[c] - here_c));
    }
    CHECK(most_k < within_k);
    CHECK(moved_k > 20.0 * within_k); // else an old field would do
    CHECK(seen->detail.section.nx == expected.detail.section.nx);
    CHECK(seen->detail.section.temperature_c.size() == expected.detail.section.temperature_c.size());
    REQUIRE(seen->zones.size() == expected.zones.size());
    for (std::size_t z = 0; z < seen->zones.size(); ++z) {
        const Range& here = seen->zones[z].temperature_c;
        CAPTURE(z);
        CHECK(here.likely == Approx(expected.zones[z].temperature_c.likely).margin(within_k));
        // The width is the last one's; what a drag changes of it is little beside it.
        const double width_k = expected.zones[z].temperature_c.high - expected.zones[z].temperature_c.low;
        CHECK(here.high - here.low == Approx(width_k).epsilon(0.3));
    }
}

} // namespace

TEST_CASE("a look at a plan whose lamp was dragged has the field that its assessment will have")
{
    check_look(turtle_table(), 0.02);
}

TEST_CASE("a look keeps to what the readings told")
{
    plan::Plan plan = example("upgrade");
    REQUIRE_FALSE(plan.enclosures.front().readings.empty());
    check_look(plan, 0.15); // the readings tell a little less or more of inputs once the lamp hangs elsewhere
}

TEST_CASE("there is nothing to look at before the first assessment, after one of the same plan, or in another box")
{
    const plan::Plan plan = turtle_table();
    assess::Workspace workspace;
    CHECK_FALSE(assess::look(plan, shipped_catalog(), winter_day(plan), workspace));
    REQUIRE(assess::assess(plan, shipped_catalog(), day, workspace));
    CHECK_FALSE(assess::look(plan, shipped_catalog(), winter_day(plan), workspace));
    const plan::Plan moved = with_lamp_moved(plan, 1);
    CHECK(assess::look(moved, shipped_catalog(), winter_day(plan), workspace));
    CHECK_FALSE(assess::look(moved, shipped_catalog(), {"nowhere", "winter-day"}, workspace));
    CHECK_FALSE(assess::look(moved, shipped_catalog(), {plan.enclosures.front().id, "no-case"}, workspace));
}

TEST_CASE("a look leaves the workspace as good as it was: the next assessment is that of an empty one")
{
    const plan::Plan plan = turtle_table();
    assess::Workspace workspace;
    REQUIRE(assess::assess(plan, shipped_catalog(), day, workspace));
    for (int step = 1; step <= 5; ++step) {
        assess::look(with_lamp_moved(plan, step), shipped_catalog(), winter_day(plan), workspace);
    }
    const auto after = assess::assess(with_lamp_moved(plan, 5), shipped_catalog(), day, workspace);
    const auto expected = whole(with_lamp_moved(plan, 5));
    REQUIRE(after);
    CHECK(after->findings.size() == expected.findings.size());
    const auto& here = heat_case(after->enclosures.front(), "winter-day");
    const auto& there = heat_case(expected.enclosures.front(), "winter-day");
    CHECK(here.detail.warm.ground_c.likely == Approx(there.detail.warm.ground_c.likely).margin(1e-3));
    CHECK(here.detail.warm.ground_c.high == Approx(there.detail.warm.ground_c.high).margin(1e-2));
}
