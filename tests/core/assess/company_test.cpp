// Who may live together, and the words about one, two and many.
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

TEST_CASE("one animal of a solitary species is said to be a valid choice")
{
    CHECK(has(instant(turtle_table()), "animals.one-is-valid", Verdict::fits));
}

TEST_CASE("a second animal, rival males and mixed species are findings")
{
    plan::Plan plan = turtle_table();
    auto& animals = plan.enclosures[0].animals;
    animals[0].count = 2;
    animals[0].sex = plan::Sex::male;
    const auto males = instant(plan);
    CHECK(has(males, "animals.second-of-solitary", Verdict::falls_short));
    CHECK(has(males, "animals.rival-males", Verdict::falls_short));
    CHECK_FALSE(has(males, "animals.one-is-valid", Verdict::fits));

    animals[0].sex.reset();
    CHECK(has(instant(plan), "animals.sex-not-known", Verdict::not_known));

    animals[0].count = 1;
    animals.push_back(animal("a2", "testudo-hermanni", 0.15));
    CHECK(has(instant(plan), "animals.mixed-species", Verdict::falls_short));
}

TEST_CASE("an unknown species is not known, never fits")
{
    plan::Plan plan = turtle_table();
    plan.enclosures[0].animals[0].species = "nobody-knows-it";
    const auto assessment = instant(plan);
    CHECK(has(assessment, "animals.species-not-known", Verdict::not_known));
    CHECK(assessment.enclosures[0].space.judgement.verdict == Verdict::not_known);
}
