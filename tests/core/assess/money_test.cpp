// The order and its costs through the whole path.
#include <algorithm>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

std::int64_t packs_of(const std::vector<assess::ShoppingLine>& lines, std::string_view need)
{
    std::int64_t packs = 0;
    for (const assess::ShoppingLine& line : lines) {
        packs += line.need == need ? line.packs : 0;
    }
    return packs;
}

} // namespace

TEST_CASE("the startup is the sum of the lines as printed and the contingency, rounded once")
{
    plan::Plan plan = turtle_table();
    plan.budget.contingency = 0.0;
    const auto assessment = instant(plan);
    Money sum = MoneyRange::zero(assessment.costs.currency).typical;
    for (const assess::ShoppingLine& line : assessment.shopping) {
        REQUIRE(line.line_total);
        CHECK(line.line_total->typical == line.pack_price->typical.times(line.packs));
        sum += line.line_total->typical;
    }
    CHECK(assessment.costs.startup.typical == sum);
}

TEST_CASE("what is owned is not bought, and what it is of is still told")
{
    plan::Plan plan = turtle_table();
    CHECK(packs_of(instant(plan).shopping, "measure.scale") == 1);
    plan.owned.emplace_back().id = "o1";
    plan.owned.back().item = "scale";
    const auto lines = instant(plan).shopping;
    CHECK(packs_of(lines, "measure.scale") == 0);
    const auto scale = std::find_if(lines.begin(), lines.end(),
                                    [](const assess::ShoppingLine& one) { return one.need == "measure.scale"; });
    REQUIRE(scale != lines.end());
    CHECK(scale->amount_owned == 1.0);
}

TEST_CASE("a list in another currency prices nothing, and says so")
{
    plan::Plan plan = turtle_table();
    plan.currency = "EUR";
    const auto assessment = instant(plan);
    CHECK(has(assessment, "money.currency-mismatch", Verdict::not_known));
    CHECK_FALSE(assessment.costs.prices_match_currency);
    for (const assess::ShoppingLine& line : assessment.shopping) {
        CHECK_FALSE(line.line_total);
    }
    CHECK(assessment.costs.startup.typical.minor_units() == 0);
}

TEST_CASE("a need without an item in the list is unpriced, never free")
{
    plan::Plan plan = turtle_table();
    catalog::Catalog catalog = shipped_catalog();
    auto& items = catalog.prices.items;
    items.erase(std::remove_if(items.begin(), items.end(),
                               [](const catalog::Item& one) { return one.serves == "measure.hygrometer"; }),
                items.end());
    const auto assessment = instant(plan, catalog);
    CHECK(has(assessment, "money.unpriced", Verdict::not_known));
    CHECK(assessment.costs.unpriced == std::vector<std::string>{"measure.hygrometer"});
}

TEST_CASE("electricity costs its kilowatt-hours at the tariff, and nothing is made up without one")
{
    plan::Plan plan = turtle_table();
    const auto assessment = whole(plan);
    const double kwh = assessment.enclosures[0].power.daily_kwh.likely * 365.0;
    REQUIRE(assessment.costs.electricity_per_year);
    CHECK(assessment.costs.electricity_per_year->typical.decimal().value() == Approx(kwh * 0.17).margin(0.01));
    plan.site.electricity_price_per_kwh.reset();
    CHECK_FALSE(instant(plan).costs.electricity_per_year);
    CHECK(has(instant(plan), "money.no-tariff", Verdict::not_known));
}

TEST_CASE("one order for two plans buys whole packs over both, each shelf serving its own keeper")
{
    const plan::Plan plan = turtle_table();
    const auto single = assess::merged_order({plan}, shipped_catalog(), day).lines;
    const auto both = assess::merged_order({plan, plan}, shipped_catalog(), day).lines;
    CHECK(packs_of(both, "measure.thermometer") == 2 * packs_of(single, "measure.thermometer"));
    CHECK(packs_of(both, "substrate.topsoil") <= 2 * packs_of(single, "substrate.topsoil"));
}

TEST_CASE("a price list of more than a year is called old, a younger one is not")
{
    const auto told_with = [](const char* date) {
        catalog::Catalog catalog = shipped_catalog();
        catalog.prices.date = date; // the assessment is of 2025-11-25
        return has(instant(turtle_table(), catalog), "money.prices-old", Verdict::tight);
    };
    CHECK(told_with("2024-10-25"));
    CHECK_FALSE(told_with("2024-12-25"));
    CHECK_FALSE(told_with("2026-11-01"));
}
