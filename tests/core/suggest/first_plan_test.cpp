// A plan from a few answers: it opens again, and an assessment that knows nothing of how it was made finds nothing
// wrong with box, bed and bowl.
#include "core/suggest/first_plan.hpp"

#include <algorithm>

#include "core/plan/file.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

suggest::FirstAnswers answers_for(const std::string& species)
{
    suggest::FirstAnswers answers;
    answers.species = species;
    answers.title = "First plan";
    answers.enclosure_name = "Box";
    return answers;
}

} // namespace

TEST_CASE("every species of the catalog gets a plan that opens, without knowing more than was said")
{
    for (const catalog::Species& species : shipped_catalog().species) {
        INFO(species.id);
        const auto plan = suggest::first_plan(answers_for(species.id), shipped_catalog(), day);
        REQUIRE(plan);
        CHECK(plan::problems_of(*plan).empty());
        CHECK_FALSE(plan->site.room.winter.day_c);
        CHECK_FALSE(plan->site.electricity_price_per_kwh);
        CHECK_FALSE(plan->enclosures.at(0).animals.at(0).length_m);
    }
}

TEST_CASE("the bed of a first plan is deep enough, and its box is where a usual size is large enough")
{
    for (const catalog::Species& species : shipped_catalog().species) {
        INFO(species.id);
        const auto plan = suggest::first_plan(answers_for(species.id), shipped_catalog(), day);
        REQUIRE(plan);
        const assess::Assessment assessment = instant(*plan);
        CHECK(with_code(assessment, "substrate.too-shallow").empty());
        CHECK(with_code(assessment, "substrate.unsuited").empty());
        const auto largest = suggest::box_sizes().back();
        if (plan->enclosures[0].shell.length_m < largest.length_m) {
            CHECK(assessment.enclosures.at(0).space.judgement.verdict != Verdict::falls_short);
        }
    }
}

TEST_CASE("what stands in a first plan stands apart and inside")
{
    for (const catalog::Species& species : shipped_catalog().species) {
        const auto plan = suggest::first_plan(answers_for(species.id), shipped_catalog(), day);
        const plan::Enclosure& box = plan->enclosures.at(0);
        for (const plan::Fitting& one : box.fittings) {
            INFO(species.id << ' ' << one.id);
            CHECK(one.x_m >= 0.0);
            CHECK(one.y_m >= 0.0);
            CHECK(one.x_m + one.length_m <= box.shell.length_m);
            CHECK(one.y_m + one.width_m <= box.shell.width_m);
            for (const plan::Fitting& other : box.fittings) {
                const bool apart = one.x_m + one.length_m <= other.x_m || other.x_m + other.length_m <= one.x_m ||
                                   one.y_m + one.width_m <= other.y_m || other.y_m + other.width_m <= one.y_m;
                CHECK((one.id == other.id || apart));
            }
        }
    }
}

TEST_CASE("what was said stands in the plan, and an unknown species gives none")
{
    suggest::FirstAnswers answers = answers_for("terrapene-ornata");
    answers.count = 2;
    answers.length_m = 0.11;
    answers.box = suggest::BoxSize{1.0, 0.5, 0.45};
    answers.walls = "plywood";
    answers.room.winter.day_c = 19.0;
    const auto plan = suggest::first_plan(answers, shipped_catalog(), day);
    REQUIRE(plan);
    CHECK(plan->enclosures[0].animals[0].count == 2);
    CHECK(plan->enclosures[0].animals[0].length_m == 0.11);
    CHECK(plan->enclosures[0].shell.length_m == 1.0);
    CHECK(plan->enclosures[0].shell.walls == "plywood");
    CHECK(plan->site.room.winter.day_c == 19.0);
    CHECK_FALSE(suggest::first_plan(answers_for("testudo-ignota"), shipped_catalog(), day));
}
