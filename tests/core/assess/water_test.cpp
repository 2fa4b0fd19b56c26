// Bowls, litres, filters and where the water comes from.
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

plan::Fitting& bowl_of(plan::Plan& plan)
{
    for (plan::Fitting& fitting : plan.enclosures[0].fittings) {
        if (fitting.kind == plan::FittingKind::water_bowl) {
            return fitting;
        }
    }
    FAIL("no bowl");
    return plan.enclosures[0].fittings[0];
}

plan::Plan with_bowl(double length_m, double width_m, std::optional<double> depth_m)
{
    plan::Plan plan = turtle_table();
    plan.enclosures[0].animals[0].length_m = 0.115;
    plan::Fitting& bowl = bowl_of(plan);
    bowl.length_m = length_m;
    bowl.width_m = width_m;
    bowl.water_depth_m = depth_m;
    return plan;
}

plan::Plan snake_with_bowl(double side_m)
{
    plan::Plan plan = with_bowl(side_m, side_m, 0.05);
    plan.enclosures[0].animals = {animal("a1", "pantherophis-guttatus", 1.2)};
    plan.enclosures[0].animals[0].mass_kg = 0.6;
    return plan;
}

} // namespace

TEST_CASE("a turtle's bowl is one and a half shells long and one wide, or too small")
{
    // Common practice, no source: one and a half shell lengths; it turns round in its own length. 115 mm by hand: 172.5
    // by 115 mm.
    CHECK(with_code(instant(with_bowl(0.18, 0.12, 0.03)), "water.bowl-small").empty());
    const auto narrow = with_code(instant(with_bowl(0.18, 0.10, 0.03)), "water.bowl-small");
    REQUIRE(narrow.size() == 1);
    CHECK(narrow[0].verdict == Verdict::falls_short);
    CHECK(label(narrow[0], "side_name") == "short");
    CHECK(input(narrow[0], "short_by") == Approx(0.015));
    const auto brief = with_code(instant(with_bowl(0.15, 0.14, 0.03)), "water.bowl-small");
    REQUIRE(brief.size() == 1);
    CHECK(input(brief[0], "min") == Approx(0.1725));
    CHECK(input(brief[0], "side") == Approx(0.15));
    CHECK(instant(with_bowl(0.15, 0.14, 0.03)).enclosures[0].water.bowls[0].judgement.verdict == Verdict::falls_short);
}

TEST_CASE("an animal of unknown length needs the bowl of a grown one, by its range")
{
    // Terrapene ornata: adults of 100 to 125 mm by the sheet, 150 to 187.5 mm of bowl.
    plan::Plan plan = with_bowl(0.18, 0.13, 0.03);
    plan.enclosures[0].animals[0].length_m.reset();
    CHECK(has(instant(plan), "water.bowl-small", Verdict::tight));
    bowl_of(plan).length_m = 0.19;
    CHECK(with_code(instant(plan), "water.bowl-small").empty());
}

TEST_CASE("one bowl that fits is enough")
{
    plan::Plan plan = with_bowl(0.10, 0.10, 0.03);
    CHECK(has(instant(plan), "water.bowl-small", Verdict::falls_short));
    plan.enclosures[0].fittings.push_back(fitting("f9", plan::FittingKind::water_bowl, {0.6, 0.1, 0.2, 0.15}, 0.05));
    plan.enclosures[0].fittings.back().water_depth_m = 0.03;
    CHECK(with_code(instant(plan), "water.bowl-small").empty());
}

TEST_CASE("water deeper than the animal is high is danger, and not known where the depth is not stated")
{
    // Back height 0.48 of 115 mm: 55.2 mm, by hand.
    const auto deep = with_code(instant(with_bowl(0.3, 0.2, 0.06)), "danger.drowning");
    REQUIRE(deep.size() == 1);
    CHECK(deep[0].verdict == Verdict::danger);
    CHECK(input(deep[0], "max") == Approx(0.0552));
    CHECK(input(deep[0], "over_by") == Approx(0.0048));
    CHECK(with_code(instant(with_bowl(0.3, 0.2, 0.05)), "danger.drowning").empty());
    CHECK(has(instant(with_bowl(0.3, 0.2, std::nullopt)), "danger.drowning", Verdict::not_known));
    CHECK_FALSE(has_danger(instant(with_bowl(0.3, 0.2, std::nullopt))));
}

TEST_CASE("the sheet's depth is a quarter to a third of the shell")
{
    // 115 mm: 28.75 to 37.95 mm, by hand.
    const auto deep = with_code(instant(with_bowl(0.3, 0.2, 0.045)), "water.bowl-deep");
    REQUIRE(deep.size() == 1);
    CHECK(input(deep[0], "max") == Approx(0.03795));
    const auto shallow = with_code(instant(with_bowl(0.3, 0.2, 0.02)), "water.bowl-shallow");
    REQUIRE(shallow.size() == 1);
    CHECK(input(shallow[0], "short_by") == Approx(0.00875));
    const auto right = instant(with_bowl(0.3, 0.2, 0.033));
    CHECK(with_code(right, "water.bowl-deep").empty());
    CHECK(with_code(right, "water.bowl-shallow").empty());
    CHECK(right.enclosures[0].water.bowls[0].judgement.verdict == Verdict::fits);
}

TEST_CASE("a snake's bowl holds its coil, and where its weight is not known its length alone says nothing")
{
    // 1.2 m and 0.6 kg: 19.6 cm (tests/core/water/bowl_test.cpp).
    CHECK(has(instant(snake_with_bowl(0.19)), "water.bowl-small", Verdict::falls_short));
    CHECK(with_code(instant(snake_with_bowl(0.20)), "water.bowl-small").empty());
    plan::Plan plan = snake_with_bowl(0.10);
    plan.enclosures[0].animals[0].mass_kg.reset();
    const auto unknown = instant(plan);
    CHECK(with_code(unknown, "water.bowl-small").empty());
    CHECK(unknown.enclosures[0].water.bowls[0].judgement.verdict == Verdict::not_known);
}

TEST_CASE("a turtle without a bowl is told of, a dart frog is not")
{
    plan::Plan plan = turtle_table();
    std::erase_if(plan.enclosures[0].fittings,
                  [](const plan::Fitting& one) { return one.kind == plan::FittingKind::water_bowl; });
    CHECK(has(instant(plan), "water.no-bowl", Verdict::falls_short));
    plan.enclosures[0].animals = {animal("a1", "dendrobates-tinctorius", 0.045)};
    CHECK(with_code(instant(plan), "water.no-bowl").empty());
}

TEST_CASE("what is drawn is what is used from the tap, several times it by reverse osmosis, and not known unsaid")
{
    plan::Plan plan = turtle_table();
    const auto unsaid = instant(plan);
    CHECK_FALSE(unsaid.enclosures[0].water.drawn_l_per_day);
    plan.site.water.source = plan::WaterSource::tap;
    const auto tap = instant(plan).enclosures[0].water;
    REQUIRE(tap.drawn_l_per_day);
    CHECK(tap.drawn_l_per_day->likely == Approx(tap.daily_l.likely));
    plan.site.water.source = plan::WaterSource::reverse_osmosis;
    plan.site.water.reject_l_per_l = 4.0;
    plan.site.water.cartridge_l = 1000.0;
    const auto osmosis = instant(plan);
    const auto& water = osmosis.enclosures[0].water;
    CHECK(water.drawn_l_per_day->likely == Approx(5.0 * water.daily_l.likely));
    CHECK(water.cartridges_per_year->likely == Approx(5.0 * 0.365 * water.daily_l.likely));
    CHECK_FALSE(water.conditioner_ml_per_day); // nothing left to bind
    CHECK(with_code(osmosis, "water.filter-life-not-known").empty());
    plan.site.water.cartridge_l.reset();
    CHECK(has(instant(plan), "water.filter-life-not-known", Verdict::not_known));
}

TEST_CASE("an amphibian's tap water has to be treated")
{
    plan::Plan plan = turtle_table();
    plan.site.water.source = plan::WaterSource::tap;
    plan.site.water.conditioned = false;
    CHECK(with_code(instant(plan), "water.not-treated").empty());
    plan.enclosures[0].animals = {animal("a1", "litoria-caerulea", 0.08)};
    CHECK(has(instant(plan), "water.not-treated", Verdict::falls_short));
    plan.site.water.conditioned = true;
    CHECK(with_code(instant(plan), "water.not-treated").empty());
}

TEST_CASE("water and cartridges cost what their price says, and nothing is priced without one")
{
    const auto line = [](const assess::Assessment& assessment, const std::string& item) {
        for (const assess::CostLine& one : assessment.costs.lines) {
            if (one.item == item) {
                return std::optional(one.per_year.typical);
            }
        }
        return std::optional<Money>();
    };
    plan::Plan plan = turtle_table();
    plan.site.water.source = plan::WaterSource::filtered;
    plan.site.water.cartridge_l = 100.0;
    CHECK_FALSE(line(instant(plan), "mains-water"));
    plan.site.water.price_per_m3 = Decimal::parse("100.00");
    const auto priced = instant(plan);
    const auto& water = priced.enclosures[0].water;
    REQUIRE(line(priced, "mains-water"));
    CHECK(line(priced, "mains-water")->decimal().value() == Approx(100.0 * 0.365 * water.daily_l.likely).margin(0.006));
    CHECK(water.price_per_year->typical == *line(priced, "mains-water"));
    REQUIRE(line(priced, "filter-cartridge"));
    CHECK(line(priced, "filter-cartridge")->decimal().value() ==
          Approx(15.0 * 3.65 * water.daily_l.likely).margin(0.006)); // 15.00 each in the invented list
}

TEST_CASE("a bowl weighs its water and, where that is stated, itself")
{
    plan::Plan plan = with_bowl(0.30, 0.20, 0.03);
    bowl_of(plan).mass_kg.reset();
    // 30 x 20 x 3 cm at 0.8 is 1.44 l (tests/core/water/water_test.cpp).
    CHECK(instant(plan).enclosures[0].water.bowls[0].carried_kg.likely == Approx(1.44));
    bowl_of(plan).mass_kg = 0.6;
    CHECK(instant(plan).enclosures[0].water.bowls[0].carried_kg.likely == Approx(2.04));
}
