// Rest in the cold: only where the keeper asks, only for those who may, and the lamps are off meanwhile.
#include <algorithm>
#include <utility>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

// setup.hpp's `day` is 25 November 2025.
plan::Plan asking(const std::string& species = "terrapene-ornata")
{
    plan::Plan plan = turtle_table();
    plan::Animal one = animal("a1", species, 0.115);
    one.mass_kg = 0.4;
    one.age_years = 6.0;
    one.condition = plan::Condition::well;
    one.cool_season =
        plan::CoolSeason{.begins = "2025-12-01", .cold_weeks = 8, .vet_checked = "2025-11-10", .extras = {}};
    plan.enclosures[0].animals = {one};
    return plan;
}

const assess::CoolSeasonResult& result_of(const assess::Assessment& assessment)
{
    REQUIRE(assessment.enclosures[0].cool_seasons.size() == 1);
    return assessment.enclosures[0].cool_seasons[0];
}

std::string refusal(const plan::Plan& plan)
{
    const auto assessment = instant(plan);
    const auto found = with_code(assessment, "danger.cool-season");
    CHECK_FALSE(result_of(assessment).rest);
    CHECK(result_of(assessment).weigh_ins.empty());
    if (found.empty()) {
        return {};
    }
    CHECK(found[0].verdict == Verdict::danger);
    return label(found[0], "reason");
}

std::string question(const plan::Plan& plan)
{
    const auto assessment = instant(plan);
    const auto found = with_code(assessment, "cool-season.not-known");
    CHECK_FALSE(result_of(assessment).rest);
    return found.empty() ? std::string() : label(found[0], "reason");
}

} // namespace

TEST_CASE("no rest is ever planned by itself")
{
    plan::Plan plan = asking();
    plan.enclosures[0].animals[0].cool_season.reset();
    const auto assessment = instant(plan);
    CHECK_FALSE(result_of(assessment).asked);
    CHECK_FALSE(result_of(assessment).rest);
    CHECK(with_code(assessment, "caution.cool-season-plan").empty());
    for (const assess::LightDay& one : assessment.enclosures[0].light_year) {
        CHECK(one.running_share == 1.0);
    }
}

TEST_CASE("a healthy adult that rests gets weeks, temperatures and weights")
{
    const auto assessment = instant(asking());
    const assess::CoolSeasonResult& rest = result_of(assessment);
    REQUIRE(rest.rest);
    CHECK(rest.weeks.size() == 12); // three without food, eight in the cold, one of warming up
    CHECK(rest.weeks[5].by_its_end_c == season::Span{4.0, 7.0}); // the sheet's, from memory
    REQUIRE(rest.weigh_ins.size() == 9);
    CHECK(rest.weigh_ins[0].stop_below_kg == Approx(0.368)); // 8 % of 400 g, by hand
    CHECK(rest.vet_check_counts);
    CHECK(with_code(assessment, "cool-season.vet-check").empty());
    const auto told = with_code(assessment, "caution.cool-season-plan");
    REQUIRE(told.size() == 1);
    CHECK(label(told[0], "cold_from") == "2025-12-22");
    CHECK(label(told[0], "cold_until") == "2026-02-16");
    CHECK(with_code(assessment, "caution.cool-season-place").size() == 1);
}

TEST_CASE("tropical, ill, underweight and first-winter animals are refused with the reason")
{
    for (const char* species :
         {"chelonoidis-carbonarius", "python-regius", "centrochelys-sulcata", "litoria-caerulea"}) {
        CAPTURE(species);
        CHECK(refusal(asking(species)) == "species-does-not-rest");
    }
    plan::Plan plan = asking();
    plan.enclosures[0].animals[0].condition = plan::Condition::ill;
    CHECK(refusal(plan) == "ill");
    plan = asking();
    plan.enclosures[0].animals[0].condition = plan::Condition::underweight;
    CHECK(refusal(plan) == "underweight");
    plan = asking();
    plan.enclosures[0].animals[0].mass_kg = 0.25; // under the sheet's 300 g at an adult's length
    CHECK(refusal(plan) == "underweight");
    plan = asking();
    plan.enclosures[0].animals[0].age_years = 0.2;
    CHECK(refusal(plan) == "first-winter");
}

TEST_CASE("what is not stated leaves the question open, and the lamps on")
{
    plan::Plan plan = asking();
    plan.enclosures[0].animals[0].mass_kg.reset();
    CHECK(question(plan) == "weight-not-stated");
    CHECK(instant(plan).enclosures[0].power.month_kwh[0].likely > 0.0);
    plan = asking();
    plan.enclosures[0].animals[0].condition.reset();
    CHECK(question(plan) == "health-not-stated");
    plan = asking();
    plan.enclosures[0].animals[0].age_years.reset();
    CHECK(question(plan) == "age-not-stated");
    CHECK(question(asking("pantherophis-guttatus")) == "cold-not-known"); // no figures on its sheet
    plan = asking();
    plan.enclosures[0].animals[0].cool_season->begins = "2025-02-30";
    CHECK(question(plan) == "date-not-a-day");
    plan.enclosures[0].animals[0].cool_season->begins = "2024-12-01";
    CHECK(question(plan) == "over");
}

TEST_CASE("the vet's check belongs in the eight weeks before")
{
    plan::Plan plan = asking();
    auto& checked = plan.enclosures[0].animals[0].cool_season->vet_checked;
    checked = "2025-10-06"; // 56 days before 1 December
    CHECK(with_code(instant(plan), "cool-season.vet-check").empty());
    checked = "2025-10-05";
    CHECK(has(instant(plan), "cool-season.vet-check", Verdict::falls_short));
    checked = "2025-12-02"; // after food was stopped
    CHECK(has(instant(plan), "cool-season.vet-check", Verdict::falls_short));
    checked.reset();
    CHECK(has(instant(plan), "cool-season.vet-check", Verdict::not_known));
    CHECK(result_of(instant(plan)).rest); // the plan stands, with a blank to fill in
}

TEST_CASE("longer than the sheet's weeks falls short, and an unsaid length is the shortest")
{
    plan::Plan plan = asking();
    plan.enclosures[0].animals[0].cool_season->cold_weeks = 17; // the sheet's most is 16
    CHECK(has(instant(plan), "cool-season.too-long", Verdict::falls_short));
    plan.enclosures[0].animals[0].cool_season->cold_weeks.reset();
    const auto unsaid = instant(plan);
    CHECK(result_of(unsaid).rest->cold_weeks == 3);
    CHECK(std::any_of(unsaid.assumed.begin(), unsaid.assumed.end(), [](const assess::Assumed& one) {
        return one.where == "/enclosures/0/animals/0/cool_season/cold_weeks";
    }));
}

TEST_CASE("while all animals rest, nothing draws power, and the year costs less")
{
    plan::Plan awake = asking();
    awake.enclosures[0].animals[0].cool_season.reset();
    const auto on = instant(awake).enclosures[0].power;
    const auto resting = instant(asking());
    const auto& off = resting.enclosures[0].power;
    CHECK(off.month_kwh[0].likely == 0.0); // January lies in the cold, 22 December to 16 February
    CHECK(on.month_kwh[0].likely > 1.0);
    CHECK(off.month_kwh[6].likely == Approx(on.month_kwh[6].likely));
    CHECK(off.year_kwh.likely < on.year_kwh.likely);
    CHECK(resting.costs.electricity_per_year->typical.minor_units() <
          instant(awake).costs.electricity_per_year->typical.minor_units());
    const auto& january = resting.enclosures[0].light_year[0];
    CHECK(january.running_share == 0.0);
    CHECK_FALSE(january.planned);
}

TEST_CASE("one that stays awake keeps the lamps on for all")
{
    plan::Plan plan = asking();
    plan.enclosures[0].animals.push_back(plan.enclosures[0].animals[0]);
    plan.enclosures[0].animals[1].id = "a2";
    plan.enclosures[0].animals[1].cool_season.reset();
    CHECK(instant(plan).enclosures[0].power.month_kwh[0].likely > 1.0);
    std::swap(plan.enclosures[0].animals[0], plan.enclosures[0].animals[1]);
    CHECK(instant(plan).enclosures[0].power.month_kwh[0].likely > 1.0);
}
