// The same input gives the same result, an edit solves no more than it must, and a stop is heeded.
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

TEST_CASE("the same plan with an empty workspace gives the same assessment, to the last bit")
{
    const plan::Plan plan = turtle_table();
    CHECK(whole(plan) == whole(plan));
}

TEST_CASE("an edit to the title solves nothing anew and is delivered once, complete")
{
    plan::Plan plan = turtle_table();
    assess::Workspace workspace;
    const auto before = assess::assess(plan, shipped_catalog(), day, workspace);
    plan.title = "Another title";
    int deliveries = 0;
    const auto after =
        assess::assess(plan, shipped_catalog(), day, workspace, {}, [&](const assess::Assessment& stage) {
            ++deliveries;
            CHECK(stage.complete);
        });
    CHECK(deliveries == 1);
    REQUIRE(after);
    CHECK(after->plan_title == "Another title");
    CHECK(after->enclosures == before->enclosures);
}

TEST_CASE("stages are delivered in order: at once, with its climate, with its courses, whole")
{
    std::vector<assess::Assessment> stages;
    assess::Workspace workspace;
    assess::assess(turtle_table(), shipped_catalog(), day, workspace, {},
                   [&](const assess::Assessment& stage) { stages.push_back(stage); });
    REQUIRE(stages.size() == 4);
    CHECK(stages[0].enclosures[0].heat.empty());
    CHECK_FALSE(stages[0].complete);
    CHECK_FALSE(stages[1].enclosures[0].heat.empty());
    CHECK(stages[1].enclosures[0].days.empty());
    CHECK_FALSE(stages[1].complete);
    CHECK(stages[2].enclosures[0].days.size() == 2);
    CHECK_FALSE(stages[2].complete);
    CHECK(stages[3].complete);
    CHECK_FALSE(stages[0].shopping.empty());
}

TEST_CASE("a requested stop yields nothing, and the workspace serves the next call as if new")
{
    assess::Workspace workspace;
    std::stop_source stop;
    stop.request_stop();
    const plan::Plan plan = turtle_table();
    CHECK_FALSE(assess::assess(plan, shipped_catalog(), day, workspace, stop.get_token()));

    std::stop_source midway;
    int deliveries = 0;
    CHECK_FALSE(
        assess::assess(plan, shipped_catalog(), day, workspace, midway.get_token(), [&](const assess::Assessment&) {
            if (++deliveries == 2) {
                midway.request_stop();
            }
        }));
    const auto after = assess::assess(plan, shipped_catalog(), day, workspace);
    REQUIRE(after);
    CHECK(after->complete);
}

TEST_CASE("a second enclosure leaves the first one's own results as they are")
{
    plan::Plan plan = turtle_table();
    const auto alone = whole(plan);
    plan::Enclosure second = plan.enclosures[0];
    second.id = "e2";
    second.equipment.clear();
    plan.enclosures.push_back(second);
    const auto both = whole(plan);
    CHECK(both.enclosures[0].space == alone.enclosures[0].space);
    CHECK(both.enclosures[0].heat == alone.enclosures[0].heat);
    CHECK(both.enclosures[0].humidity == alone.enclosures[0].humidity);
    CHECK(both.enclosures[0].power == alone.enclosures[0].power);
    CHECK(both.stands[0].load_kg.likely > alone.stands[0].load_kg.likely);
}

TEST_CASE("a warm workspace gives the same climate as an empty one within what the solver asks of itself")
{
    plan::Plan plan = turtle_table();
    assess::Workspace workspace;
    plan.site.room.winter.day_c = 19.0;
    assess::assess(plan, shipped_catalog(), day, workspace);
    plan.site.room.winter.day_c = 21.0;
    const auto warm = assess::assess(plan, shipped_catalog(), day, workspace).value();
    const auto cold = whole(plan);
    for (std::size_t i = 0; i < cold.enclosures[0].heat.size(); ++i) {
        CHECK(warm.enclosures[0].heat[i].detail.warm.ground_c.likely ==
              Approx(cold.enclosures[0].heat[i].detail.warm.ground_c.likely).margin(0.05));
    }
}

TEST_CASE("a box's kept climate follows what the other boxes give off into a room whose loss is stated")
{
    plan::Plan plan = turtle_table();
    plan.site.room.loss_w_k = 20.0;
    plan::Enclosure second = plan.enclosures[0];
    second.id = "e2";
    plan.enclosures.push_back(second);
    assess::Workspace workspace;
    const auto before = assess::assess(plan, shipped_catalog(), day, workspace).value();
    plan.enclosures[1].equipment.clear();
    const auto after = assess::assess(plan, shipped_catalog(), day, workspace).value();
    const auto warm_c = [](const assess::Assessment& assessment) {
        return heat_case(assessment.enclosures[0], "summer-day").detail.warm.ground_c.likely;
    };
    CHECK(warm_c(after) < warm_c(before) - 0.5);
    CHECK(warm_c(after) == Approx(warm_c(whole(plan))).margin(0.05));
}
