// What is on the shelf with its age, what the sums leave out, and costs by the month, the head and the life.
#include <algorithm>

#include "core/assess/cost_lines.hpp"
#include "core/assess/life_costs.hpp"
#include "core/assess/shelf.hpp"
#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;
using namespace std::chrono_literals;

namespace {

void own(plan::Plan& plan, const std::string& item, double quantity, std::optional<double> age_months)
{
    plan::OwnedItem& owned = plan.owned.emplace_back();
    owned.id = "o" + std::to_string(plan.owned.size());
    owned.item = item;
    owned.quantity = quantity;
    owned.age_months = age_months;
}

std::vector<assess::Replacement> of_item(const assess::Assessment& assessment, const std::string& item)
{
    std::vector<assess::Replacement> found;
    for (const assess::Replacement& one : assessment.costs.replacements) {
        if (one.item == item) {
            found.push_back(one);
        }
    }
    return found;
}

// The item and life of something of which the turtle's table takes two: thermometers.
const catalog::Item& thermometer()
{
    const auto& items = shipped_catalog().prices.items;
    return *std::find_if(items.begin(), items.end(),
                         [](const catalog::Item& one) { return one.serves == "measure.thermometer"; });
}

buying::Need a_need(double amount)
{
    return {
        .kind = "kind", .amount = amount, .unit = "each", .fits_value = {}, .enclosures = {}, .why = {}, .where = {}};
}

} // namespace

TEST_CASE("each thing on the shelf lends its age to one need")
{
    const std::vector<buying::ItemOffer> offers{{"a", "A", "kind", "each", {}, {}, {}},
                                                {"b", "B", "kind", "each", {}, {}, {}}};
    std::vector<plan::OwnedItem> owned(3);
    owned[0].item = "a";
    owned[0].age_months = 30.0;
    owned[1].item = "not-in-the-list";
    owned[2].item = "b";
    assess::Shelf shelf(owned, offers);
    const auto first = shelf.take(a_need(1.0));
    const auto second = shelf.take(a_need(1.0));
    REQUIRE(first);
    REQUIRE(second);
    CHECK(first->age_months == 30.0);
    CHECK_FALSE(second->age_months);
    CHECK(second->entry == 2);
    CHECK_FALSE(shelf.take(a_need(1.0)));
}

TEST_CASE("an owned thing is replaced by its age, and one of unknown age may be due today")
{
    const catalog::Item& item = thermometer();
    REQUIRE(item.life_months);
    plan::Plan plan = turtle_table();
    CHECK(of_item(instant(plan), item.id).empty()); // new ones outlast the year
    own(plan, item.id, 2.0, item.life_months->likely - 1.0);
    const auto aged = of_item(instant(plan), item.id);
    REQUIRE(aged.size() == 1);
    CHECK(aged[0].due == 2025y / 12 / 25); // a month from the day of the tests
    plan.owned.back().age_months.reset();
    const auto unknown = instant(plan);
    const auto& assumed = unknown.assumed;
    const auto bracket = std::find_if(assumed.begin(), assumed.end(),
                                      [](const assess::Assumed& one) { return one.where == "/owned/0/age_months"; });
    REQUIRE(bracket != assumed.end());
    CHECK(bracket->bracket->low == 0.0);
    CHECK(bracket->bracket->high == item.life_months->high);
    CHECK(unknown.costs.horizon[1].spent.high.minor_units() >
          instant(turtle_table()).costs.horizon[1].spent.high.minor_units());
}

TEST_CASE("sums that lack electricity say so")
{
    plan::Plan plan = turtle_table();
    CHECK_FALSE(instant(plan).costs.without_electricity);
    plan.site.electricity_price_per_kwh.reset();
    const assess::Costs costs = instant(plan).costs;
    CHECK(costs.without_electricity);
    CHECK(assess::not_included(costs) == std::vector<std::string>{"electricity"});
}

TEST_CASE("a plan's twelve months add up to its yearly lines that are no replacements")
{
    const assess::Costs costs = whole(turtle_table()).costs;
    REQUIRE(costs.months.size() == 12);
    CHECK(costs.months.front().month == 2025y / 11);
    MoneyRange by_month = MoneyRange::zero(costs.currency);
    for (const assess::CostMonth& month : costs.months) {
        by_month += month.electricity;
        by_month += month.others;
    }
    MoneyRange by_line = MoneyRange::zero(costs.currency);
    for (const assess::CostLine& line : costs.lines) {
        by_line += line.every_months ? MoneyRange::zero(costs.currency) : line.per_year;
    }
    CHECK(by_month == by_line);
    // A winter month burns more than a summer one: the table's mats and lamps answer to the room.
    CHECK(costs.months[2].electricity.typical.minor_units() > costs.months[8].electricity.typical.minor_units());
}

TEST_CASE("round figures keep two digits and err outwards")
{
    const Currency usd{"USD", 2};
    using assess::Towards;
    CHECK(assess::in_round_figures(Money(1'234'567, usd), Towards::lower).minor_units() == 1'200'000);
    CHECK(assess::in_round_figures(Money(1'234'567, usd), Towards::nearest).minor_units() == 1'200'000);
    CHECK(assess::in_round_figures(Money(1'264'567, usd), Towards::nearest).minor_units() == 1'300'000);
    CHECK(assess::in_round_figures(Money(1'234'567, usd), Towards::higher).minor_units() == 1'300'000);
    CHECK(assess::in_round_figures(Money(99, usd), Towards::higher).minor_units() == 99);
    CHECK(assess::in_round_figures(Money(0, usd), Towards::higher).minor_units() == 0);
}

TEST_CASE("a life costs its start and its years, by the years that are left")
{
    plan::Plan plan = turtle_table();
    auto& animals = plan.enclosures.at(0).animals;
    animals.resize(1);
    animals[0].age_years = 10.0;
    const catalog::Species* species = shipped_catalog().find_species(animals[0].species);
    REQUIRE(species->lifespan_years.min);
    const double longest = species->lifespan_years.max.value_or(*species->lifespan_years.min);
    const assess::Costs costs = instant(plan).costs;
    REQUIRE(costs.life);
    CHECK(costs.life->animal == animals[0].id);
    CHECK(costs.life->years.high == longest - 10.0);
    CHECK(costs.life->or_longer == !species->lifespan_years.max);
    const double high =
        costs.startup.high.decimal().value() + costs.running_per_year.high.decimal().value() * costs.life->years.high;
    CHECK(costs.life->cost.high.decimal().value() >= high);
    CHECK(costs.life->cost.high.decimal().value() <= 1.1 * high);
    animals[0].age_years.reset();
    CHECK(instant(plan).costs.life->years.low == 1.0);
    plan.currency = "EUR";
    CHECK_FALSE(instant(plan).costs.life);
}
