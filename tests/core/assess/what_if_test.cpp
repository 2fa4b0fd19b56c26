// Trying out how much of the top is covered and how much is misted.
#include "core/assess/what_if.hpp"

#include "core/plan/file.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

// A box of 1.4 m with its lamp at the left and a pane over its right half.
const plan::Plan& first_setup()
{
    static const plan::Plan plan = turtle_table();
    return plan;
}

const std::string& box_id()
{
    return first_setup().enclosures.front().id;
}

plan::Plan tried(const assess::Trial& trial, const plan::Plan& plan = first_setup())
{
    auto changed = assess::with_trial(plan, shipped_catalog(), plan.enclosures.front().id, trial);
    REQUIRE(changed);
    return *std::move(changed);
}

const std::vector<plan::Cover>& covers(const plan::Plan& plan)
{
    return plan.enclosures.front().shell.top.covers;
}

assess::TrialRoom room_of(const plan::Plan& plan)
{
    const auto room = assess::trial_room(plan, shipped_catalog(), plan.enclosures.front().id);
    REQUIRE(room);
    return *room;
}

} // namespace

TEST_CASE("A trial of nothing leaves the plan as it is, and a trial of one thing leaves the other")
{
    CHECK(tried({}) == first_setup());
    const plan::Plan wetter = tried({.covered_share = {}, .misting_l_per_day = 0.35});
    CHECK(covers(wetter) == covers(first_setup()));
    CHECK(wetter.enclosures.front().moisture.misting_l_per_day == 0.35);
    const plan::Plan closer = tried({.covered_share = 0.3, .misting_l_per_day = {}});
    CHECK(closer.enclosures.front().moisture == first_setup().enclosures.front().moisture);
    CHECK(closer.enclosures.front().equipment == first_setup().enclosures.front().equipment);
}

TEST_CASE("So much of the top is covered as was asked for, and the plan can be told so again")
{
    // By hand: the example's pane lies over half of the top.
    CHECK(room_of(first_setup()).covered_share == Approx(0.5));
    for (const double share : {0.0, 0.15, 0.4}) {
        const plan::Plan changed = tried({.covered_share = share, .misting_l_per_day = {}});
        CHECK(room_of(changed).covered_share == Approx(share).margin(1e-12));
        CHECK(plan::problems_of(changed).empty());
    }
    CHECK(covers(tried({.covered_share = 0.0, .misting_l_per_day = {}})).empty());
}

TEST_CASE("However much is asked for, covers keep clear of what is hot and leave a quarter open")
{
    for (const double lamp_x_m : {0.1, 0.3, 0.7, 1.2}) {
        plan::Plan plan = first_setup();
        for (plan::Device& device : plan.enclosures.front().equipment) {
            device.x_m = device.kind == plan::DeviceKind::flood_lamp ? lamp_x_m : device.x_m;
        }
        for (const std::string material : {"glass", "towel"}) {
            plan.enclosures.front().shell.top.covers.front().material = material;
            const plan::Plan most = tried({.covered_share = 1.0, .misting_l_per_day = {}}, plan);
            CAPTURE(lamp_x_m, material);
            CHECK(room_of(most).covered_share <= 0.75 + 1e-12);
            CHECK(room_of(most).covered_share == Approx(room_of(plan).most_covered_share));
            // The check of clearances, which looks at each cover and each lamp by itself, has nothing to say.
            CHECK(with_code(instant(most), "danger.cover-near-lamp").empty());
            CHECK(plan::problems_of(most).empty());
        }
    }
}

TEST_CASE("A cover keeps its name and material; the first one of all is a pane with a name of its own")
{
    plan::Plan plan = first_setup();
    plan.enclosures.front().shell.top.covers.front().material = "towel";
    const plan::Plan kept = tried({.covered_share = 0.2, .misting_l_per_day = {}}, plan);
    REQUIRE(covers(kept).size() == 1);
    CHECK(covers(kept).front().id == covers(plan).front().id);
    CHECK(covers(kept).front().material == "towel");
    plan.enclosures.front().shell.top.covers.clear();
    const plan::Plan first = tried({.covered_share = 0.2, .misting_l_per_day = {}}, plan);
    REQUIRE(covers(first).size() == 1);
    CHECK(covers(first).front().material == "glass");
    CHECK(plan::problems_of(first).empty()); // no two elements of one name
}

TEST_CASE("Only a mesh can be covered, and what is not there can't be tried")
{
    plan::Plan closed = first_setup();
    closed.enclosures.front().shell.top.kind = plan::TopKind::glass;
    closed.enclosures.front().shell.top.covers.clear();
    CHECK_FALSE(room_of(closed).mesh);
    CHECK(room_of(closed).most_covered_share == 0.0);
    CHECK(covers(tried({.covered_share = 0.5, .misting_l_per_day = {}}, closed)).empty());
    assess::Workspace workspace;
    CHECK_FALSE(assess::trial_room(closed, shipped_catalog(), "none"));
    CHECK_FALSE(assess::with_trial(closed, shipped_catalog(), "none", {}));
    CHECK_FALSE(assess::try_out(closed, shipped_catalog(), "none", {}, workspace));
}

// Laws: what closes the top keeps vapour and warm air in; water that is misted can only wet, and what evaporates of it
// can only cool.
TEST_CASE("More cover never dries, more misting never dries and never warms")
{
    assess::Workspace workspace;
    constexpr double noticed = 1e-4; // the solver's own, in humidity; a hundredth of a kelvin in warmth
    std::vector<assess::TriedCase> last;
    for (const double share : {0.0, 0.1, 0.2, 0.35, 0.5}) {
        const auto now = assess::try_out(first_setup(), shipped_catalog(), box_id(), {share, {}}, workspace);
        REQUIRE(now);
        REQUIRE(now->then.size() == 2);
        for (std::size_t i = 0; i < last.size(); ++i) {
            CHECK(now->then[i].relative_humidity.likely >= last[i].relative_humidity.likely - noticed);
        }
        last = now->then;
    }
    last.clear();
    for (const double misting_l : {0.0, 0.1, 0.3, 0.6}) {
        const auto now = assess::try_out(first_setup(), shipped_catalog(), box_id(), {{}, misting_l}, workspace);
        REQUIRE(now);
        for (std::size_t i = 0; i < last.size(); ++i) {
            CHECK(now->then[i].relative_humidity.likely >= last[i].relative_humidity.likely - noticed);
            CHECK(now->then[i].warm_c.likely <= last[i].warm_c.likely + 0.01);
            CHECK(now->then[i].cool_c.likely <= last[i].cool_c.likely + 0.01);
        }
        last = now->then;
    }
}

TEST_CASE("What is tried is what the assessment says once the plan has taken it")
{
    assess::Workspace workspace;
    const assess::Trial trial{0.0, 0.05};
    const auto told = assess::try_out(first_setup(), shipped_catalog(), box_id(), trial, workspace);
    REQUIRE(told);
    const assess::Assessment taken = whole(tried(trial));
    const assess::Assessment before = whole(first_setup());
    for (std::size_t i = 0; i < told->then.size(); ++i) {
        const auto& id = told->then[i].id;
        const climate::CaseResult& then = heat_case(taken.enclosures.front(), id).detail;
        const climate::CaseResult& now = heat_case(before.enclosures.front(), id).detail;
        CAPTURE(id);
        CHECK(told->then[i].relative_humidity.likely == Approx(then.ground_humidity.likely).margin(0.002));
        CHECK(told->then[i].warm_c.likely == Approx(then.warm.ground_c.likely).margin(0.02));
        CHECK(told->then[i].cool_c.likely == Approx(then.cool.ground_c.likely).margin(0.02));
        CHECK(told->now[i].relative_humidity.likely == Approx(now.ground_humidity.likely).margin(0.002));
        CHECK(told->now[i].warm_c.likely == Approx(now.warm.ground_c.likely).margin(0.02));
        // Else the plan's own figures would do.
        CHECK(std::abs(then.ground_humidity.likely - now.ground_humidity.likely) > 0.02);
    }
}

TEST_CASE("A trial that is told to stop says nothing, and the next one is none the worse")
{
    assess::Workspace workspace;
    std::stop_source source;
    source.request_stop();
    CHECK_FALSE(assess::try_out(first_setup(), shipped_catalog(), box_id(), {}, workspace, source.get_token()));
    const auto now = assess::try_out(first_setup(), shipped_catalog(), box_id(), {}, workspace);
    REQUIRE(now);
    for (std::size_t i = 0; i < now->then.size(); ++i) {
        CHECK(now->then[i].relative_humidity.likely ==
              Approx(now->now[i].relative_humidity.likely).margin(1e-4)); // nothing is tried
        CHECK(now->then[i].warm_c.likely == Approx(now->now[i].warm_c.likely).margin(0.01));
    }
}
