// Lengths and weights over time, against published growth and the greatest weight of the year before.
#include <cmath>

#include "core/plan/measured.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

plan::Measurement measured(const std::string& date, std::optional<double> length_m, std::optional<double> mass_kg)
{
    return {.id = "m" + date, .date = date, .length_m = length_m, .mass_kg = mass_kg, .extras = {}};
}

// setup.hpp's `day` is 25 November 2025. Two years before, the turtle was eight and 100 mm long.
plan::Plan growing(double length_m)
{
    plan::Plan plan = turtle_table();
    plan::Animal one = animal("a1", "terrapene-carolina-triunguis", 0.05); // stated once; measured since
    one.age_years = 10.01;
    one.measurements = {measured("2025-11-24", length_m, {}), measured("2023-11-25", 0.100, {})};
    plan.enclosures[0].animals = {one};
    return plan;
}

plan::Plan weighed(const std::vector<std::pair<std::string, double>>& masses)
{
    plan::Plan plan = growing(0.112);
    plan.enclosures[0].animals[0].measurements.clear();
    for (const auto& [date, mass_kg] : masses) {
        plan.enclosures[0].animals[0].measurements.push_back(measured(date, {}, mass_kg));
    }
    return plan;
}

const assess::RecordResult& record_of(const assess::Assessment& assessment)
{
    REQUIRE(assessment.enclosures[0].records.size() == 1);
    return assessment.enclosures[0].records[0];
}

} // namespace

// Stickel & Bunck 1989, J Herpetol 23:216-223 (abstract): from 8 to 13 years 5.3 to 6.7 % of the carapace length a
// year. 100 mm two years ago: 110.9 to 113.8 mm by hand.
TEST_CASE("Expected length follows the published rates from the first measurement")
{
    const auto assessment = instant(growing(0.112));
    const assess::RecordResult& record = record_of(assessment);
    REQUIRE(record.points.size() == 2);
    const double years = 730.0 / 365.25;
    REQUIRE(record.points[1].expected);
    CHECK(record.points[1].expected->slow_m == Approx(0.1 * std::pow(1.053, years)));
    CHECK(*record.points[1].expected->fast_m == Approx(0.1 * std::pow(1.067, years)));
    CHECK(record.points[1].expected->slow_m == Approx(0.1109).margin(0.0002));
    CHECK(record.growth.verdict == Verdict::fits);
    REQUIRE(record.growth_per_year);
    CHECK(record.growth_per_year->likely == Approx(std::pow(1.12, 1.0 / years) - 1.0));
    CHECK(record.growth_per_year->low < 0.053); // 3 % either way in each length
    CHECK(record.growth_per_year->high > 0.067);
    CHECK(with_code(assessment, "record.growth").empty());
}

TEST_CASE("Growth outside the bounds is told with its direction, an error of measuring allowed for")
{
    const struct {
        double length_m;
        Verdict verdict;
        Direction direction;
    } cases[] = {{0.1050, Verdict::falls_short, Direction::below},
                 {0.1090, Verdict::tight, Direction::below},
                 {0.1150, Verdict::fits, Direction::none},
                 {0.1190, Verdict::tight, Direction::above}};
    for (const auto& each : cases) {
        CAPTURE(each.length_m);
        const auto assessment = instant(growing(each.length_m));
        CHECK(record_of(assessment).growth.verdict == each.verdict);
        CHECK(record_of(assessment).growth.direction == each.direction);
        CHECK(with_code(assessment, "record.growth").size() == (each.verdict == Verdict::fits ? 0U : 1U));
    }
}

TEST_CASE("Without an age or published rates growth is not judged, but an animal does not shrink")
{
    plan::Plan plan = growing(0.112);
    plan.enclosures[0].animals[0].age_years.reset();
    CHECK(record_of(instant(plan)).growth.verdict == Verdict::not_known);
    plan = growing(0.09);
    plan.enclosures[0].animals[0].age_years.reset();
    CHECK(record_of(instant(plan)).growth.verdict == Verdict::falls_short);
}

TEST_CASE("A loss of weight is watched from 5 %, and a matter for a vet from 10 % on")
{
    const struct {
        double newest_kg;
        Verdict verdict;
    } cases[] = {
        {0.405, Verdict::fits}, {0.385, Verdict::fits}, {0.375, Verdict::tight}, {0.355, Verdict::falls_short}};
    for (const auto& each : cases) {
        CAPTURE(each.newest_kg);
        const auto assessment = instant(weighed({{"2025-11-20", each.newest_kg}, {"2025-06-01", 0.400}}));
        CHECK(record_of(assessment).mass.verdict == each.verdict);
        CHECK(has(assessment, "record.weight-loss", Verdict::falls_short) == (each.verdict == Verdict::falls_short));
    }
    const auto assessment = instant(weighed({{"2025-06-01", 0.400}, {"2025-11-20", 0.355}}));
    const Finding found = with_code(assessment, "record.weight-loss").front();
    CHECK(input(found, "lost") == Approx(0.1125));
    CHECK(input(found, "days") == Approx(172.0));
    CHECK(found.remedy->code == "remedy.see-vet");
}

TEST_CASE("A weight of more than a year before is not compared with")
{
    const auto assessment = instant(weighed({{"2024-06-01", 0.500}, {"2025-06-01", 0.400}, {"2025-11-20", 0.398}}));
    CHECK(record_of(assessment).mass.verdict == Verdict::fits);
    CHECK(record_of(assessment).heaviest_kg == Approx(0.400));
    CHECK_FALSE(record_of(instant(weighed({{"2025-11-20", 0.398}}))).lost);
}

TEST_CASE("The newest measurement counts before what the plan states")
{
    plan::Plan measured_plan = growing(0.112);
    plan::Plan stated = measured_plan;
    stated.enclosures[0].animals[0].measurements.clear();
    stated.enclosures[0].animals[0].length_m = 0.112;
    const auto one = instant(measured_plan);
    const auto other = instant(stated);
    CHECK(one.enclosures[0].space.rules == other.enclosures[0].space.rules);
    CHECK(plan::length_now_m(measured_plan.enclosures[0].animals[0]) == 0.112);
    CHECK(plan::length_now_m(stated.enclosures[0].animals[0]) == 0.112);
}

TEST_CASE("The keeper's own lengths bound the growth of a species without published rates")
{
    plan::Plan plan = turtle_table();
    plan::Animal one = animal("a1", "pogona-vitticeps", 0.10);
    plan.enclosures[0].animals = {one};
    REQUIRE(shipped_catalog().find_species("pogona-vitticeps")->growth.empty());
    const auto before = instant(plan);
    plan.enclosures[0].animals[0].measurements = {measured("2025-01-01", 0.080, {}), measured("2025-11-20", 0.100, {})};
    const auto after = instant(plan);
    bool more_known = false;
    REQUIRE(before.enclosures[0].space.rules.size() == after.enclosures[0].space.rules.size());
    for (std::size_t i = 0; i < after.enclosures[0].space.rules.size(); ++i) {
        const assess::RuleResult& rule = after.enclosures[0].space.rules[i];
        more_known =
            more_known || (rule.broken_in_years_fast && !before.enclosures[0].space.rules[i].broken_in_years_fast);
    }
    CHECK(more_known);
}

TEST_CASE("A day that is not one, or is still to come, is told and not used")
{
    const auto assessment = instant(weighed({{"2025-06-31", 0.5}, {"2026-01-01", 0.2}, {"2025-11-01", 0.4}}));
    CHECK(with_code(assessment, "record.not-used").size() == 2);
    CHECK(record_of(assessment).points.size() == 1);
}
