// The shipped example plans: read without a problem, said to be invented, and worth showing.
#include "core/plan/file.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

TEST_CASE("each example says in its title that it is invented, and is written as the program would write it")
{
    for (const char* name : {"first-setup", "upgrade", "club-template"}) {
        INFO(name);
        const plan::Plan plan = example(name);
        CHECK(plan.title.find("invented example") != std::string::npos);
        CHECK(plan::write(plan) == example_text(name));
        CHECK(plan::problems_of(plan).empty());
    }
}

TEST_CASE("every case of every example converges, and the heat that goes in comes out")
{
    for (const char* name : {"first-setup", "upgrade", "club-template"}) {
        for (const assess::EnclosureResult& enclosure : whole(example(name)).enclosures) {
            CHECK(enclosure.heat.size() >= 5);
            for (const assess::HeatCase& one : enclosure.heat) {
                INFO(name << " " << enclosure.id << " " << one.id);
                CHECK(one.known);
                CHECK(one.detail.loss_w == Approx(one.detail.input_w).margin(1e-3));
            }
        }
    }
}

TEST_CASE("the template leaves the room open and its adopter fills it in")
{
    const auto assessment = instant(example("club-template"));
    CHECK(has(assessment, "money.no-tariff", Verdict::not_known));
    CHECK(has(assessment, "danger.sun-through-glass", Verdict::not_known));
    CHECK(assessment.assumed.size() > 15);
}
