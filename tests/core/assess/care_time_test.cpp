// Hours of care a week and what ten years cost. Sums by hand.
#include "core/assess/care_time.hpp"

#include <algorithm>

#include "core/assess/life_costs.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

const assess::CareTime* find(const std::vector<assess::CareTime>& times, assess::CareKind kind)
{
    const auto found = std::find_if(times.begin(), times.end(), [&](const auto& one) { return one.kind == kind; });
    return found == times.end() ? nullptr : &*found;
}

assess::WaterResult changed(double times_a_day)
{
    assess::WaterResult water;
    water.changes_per_day = exactly(times_a_day);
    return water;
}

} // namespace

TEST_CASE("hours of care are times a week by minutes each, low with low and high with high")
{
    const plan::Plan plan = example("first-setup"); // one land turtle, one bowl, changed daily, nothing misted
    const auto times = assess::care_times(plan.enclosures[0], changed(1.0), shipped_catalog());
    // 7 x 3, 5, 10 minutes of the shipped bracket
    const assess::CareTime* water = find(times, assess::CareKind::water_change);
    REQUIRE(water != nullptr);
    CHECK(water->hours_per_week.low == Approx(7.0 * 3.0 / 60.0));
    CHECK(water->hours_per_week.likely == Approx(7.0 * 5.0 / 60.0));
    CHECK(water->hours_per_week.high == Approx(7.0 * 10.0 / 60.0));
    CHECK(find(times, assess::CareKind::misting) == nullptr);
    Range sum;
    for (const assess::CareTime& one : times) {
        sum = {sum.low + one.hours_per_week.low, sum.likely + one.hours_per_week.likely,
               sum.high + one.hours_per_week.high};
    }
    CHECK(assess::hours_per_week(times)->high == Approx(sum.high));
    CHECK(sum.low < sum.likely);
    CHECK(sum.likely < sum.high);
}

TEST_CASE("a mister spares misting by hand, and an empty box takes no care")
{
    plan::Plan plan = example("first-setup");
    plan::Enclosure& box = plan.enclosures[0];
    box.moisture.misting_l_per_day = 0.2;
    box.moisture.mistings_per_day = 2;
    const auto by_hand = assess::care_times(box, changed(1.0), shipped_catalog());
    REQUIRE(find(by_hand, assess::CareKind::misting) != nullptr);
    CHECK(find(by_hand, assess::CareKind::misting)->times_per_week == exactly(14.0));
    box.equipment.emplace_back().kind = plan::DeviceKind::mister;
    CHECK(find(assess::care_times(box, changed(1.0), shipped_catalog()), assess::CareKind::misting) == nullptr);
    box.animals.clear();
    CHECK(assess::care_times(box, changed(1.0), shipped_catalog()).empty());
    CHECK_FALSE(assess::hours_per_week({}).has_value());
}

TEST_CASE("ten years cost what the budget says of them, else startup and ten times a year")
{
    plan::Plan plan = example("first-setup");
    plan.budget.horizon_years = 5;
    const assess::Costs five = instant(plan).costs;
    const auto beyond = assess::cost_over(five, 10);
    REQUIRE(beyond.has_value());
    CHECK_FALSE(beyond->from_horizon);
    CHECK(beyond->cost.typical.minor_units() ==
          five.startup.typical.minor_units() + 10 * five.running_per_year.typical.minor_units());
    plan.budget.horizon_years = 12;
    const assess::Costs twelve = instant(plan).costs;
    const auto within = assess::cost_over(twelve, 10);
    REQUIRE(within.has_value());
    CHECK(within->from_horizon);
    CHECK(within->cost == twelve.horizon.at(10).cumulative);
    CHECK_FALSE(assess::cost_over(assess::Costs{}, 10).has_value());
}
