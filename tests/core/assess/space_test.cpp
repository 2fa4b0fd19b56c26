// The floor against the rules of a species sheet.
#include <algorithm>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

const assess::RuleResult& rule(const assess::Assessment& assessment, std::string_view id)
{
    const auto& rules = assessment.enclosures[0].space.rules;
    const auto found = std::find_if(rules.begin(), rules.end(), [&](const auto& one) { return one.id == id; });
    if (found == rules.end()) {
        throw std::runtime_error("no such rule: " + std::string(id));
    }
    return *found;
}

} // namespace

TEST_CASE("8 by 4 shell lengths for a turtle of 0.15 m are 0.72 m2 through the whole path")
{
    // German minimum requirements for reptiles, 1997, 8 x 4 shell lengths; worked 0.72 m2 for 0.15 m (derived).
    plan::Plan plan = turtle_table();
    plan.enclosures[0].animals[0].length_m = 0.15;
    CHECK(*rule(instant(plan), "bmel97-box-turtle-8x4-by-analogy").required_m2 == Approx(0.72));
}

TEST_CASE("a laboratory minimum can be missed but never yields fits")
{
    // Directive 2010/63/EU, Annex III, Table 10.2: 0.25 m2 for a snake longer than 75 cm.
    plan::Plan plan = example("club-template");
    CHECK(*rule(instant(plan), "eu10-laboratory-snake").required_m2 == Approx(0.25));
    CHECK(rule(instant(plan), "eu10-laboratory-snake").judgement.verdict == Verdict::not_known);
    plan.enclosures[0].shell.width_m = 0.15;
    CHECK(rule(instant(plan), "eu10-laboratory-snake").judgement.verdict == Verdict::falls_short);
}

TEST_CASE("an enclosure for which only a laboratory figure is known has a floor that is not known")
{
    plan::Plan plan = example("club-template");
    catalog::Catalog catalog = shipped_catalog();
    for (catalog::Species& species : catalog.species) {
        species.rules = {"eu10-laboratory-snake"};
    }
    const auto assessment = instant(plan, catalog);
    CHECK(has(assessment, "space.laboratory-only", Verdict::not_known));
    CHECK(assessment.enclosures[0].space.judgement.verdict == Verdict::not_known);
}

TEST_CASE("law of another place does not govern, and unconfirmed law is not called law")
{
    plan::Plan plan = example("club-template");
    plan.enclosures[0].animals[0].length_m = 1.4;
    catalog::Catalog catalog = shipped_catalog();
    for (catalog::Species& species : catalog.species) {
        species.rules = {"at04-corn-snake", "nasah-colubrid"};
    }
    // Austria: 0.9 m2 for a snake up to 1.5 m; the keepers' society: 0.75 x 0.3 of 1.4 m.
    CHECK(instant(plan, catalog).enclosures[0].space.governing_rule == "at04-corn-snake");
    plan.jurisdiction = "none";
    CHECK(instant(plan, catalog).enclosures[0].space.governing_rule == "nasah-colubrid");
    for (catalog::Rule& one : catalog.rules) {
        one.source.confidence = Confidence::memory;
    }
    CHECK(rule(instant(plan, catalog), "at04-corn-snake").kind == catalog::RuleKind::welfare);
}

TEST_CASE("where only the floor left among fittings misses a rule it is tight, and the missing length is named")
{
    plan::Plan plan = turtle_table();
    plan::Enclosure& box = plan.enclosures[0];
    box.shell.length_m = 0.9144;
    box.shell.width_m = 0.6096; // just the 36 x 24 in of one rescue's page (0.557 m2)
    box.animals[0].length_m = 0.1;
    box.fittings = {fitting("f1", plan::FittingKind::plant, {0.0, 0.0, 0.2, 0.2})};
    CHECK(has(instant(plan), "space.floor-now", Verdict::tight));

    box.shell.length_m = 0.7;
    const auto short_box = with_code(instant(plan), "space.floor-now");
    REQUIRE_FALSE(short_box.empty());
    CHECK(short_box[0].verdict == Verdict::falls_short);
    CHECK(input(short_box[0], "short_by") == Approx(0.5574 - 0.7 * 0.6096).margin(1e-4));
    REQUIRE(short_box[0].remedy);
    CHECK(short_box[0].remedy->code == "remedy.longer-box");
    CHECK(short_box[0].remedy->amounts[0].value == Approx(0.9144 - 0.7).margin(1e-3));
}

TEST_CASE("one hide fewer than animals and one is missed by count, and both ends want one")
{
    plan::Plan plan = turtle_table();
    plan::Enclosure& box = plan.enclosures[0];
    CHECK(with_code(instant(plan), "space.hides-too-few").empty());
    box.fittings.erase(std::remove_if(box.fittings.begin(), box.fittings.end(),
                                      [](const plan::Fitting& one) { return one.kind == plan::FittingKind::hide; }),
                       box.fittings.end());
    const auto few = with_code(instant(plan), "space.hides-too-few");
    REQUIRE(few.size() == 1);
    CHECK(input(few[0], "short_by") == 1.0);
    CHECK(has(instant(plan), "space.hide-warm-missing", Verdict::falls_short));
}
