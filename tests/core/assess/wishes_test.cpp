// What a keeper changes of the bill of needs, lines of their own, and by what packs are chosen.
#include <algorithm>

#include "tests/catch.hpp"
#include "tests/core/assess/setup.hpp"

using namespace loam;
using namespace loam::test;

namespace {

plan::Wish wish(std::string need, std::optional<std::string> item = {}, std::optional<std::string> where = {})
{
    plan::Wish one;
    one.id = "w1";
    one.need = std::move(need);
    one.item = std::move(item);
    one.where = std::move(where);
    return one;
}

plan::OwnLine own_line(std::int64_t quantity, std::optional<std::string> price, std::optional<double> every_months = {})
{
    plan::OwnLine line;
    line.id = "l1";
    line.name = "Delivery";
    line.quantity = quantity;
    line.price = price ? Decimal::parse(*price) : std::nullopt;
    line.every_months = every_months;
    return line;
}

std::vector<assess::ShoppingLine> of_need(const assess::Assessment& assessment, std::string_view need)
{
    std::vector<assess::ShoppingLine> lines;
    for (const assess::ShoppingLine& line : assessment.shopping) {
        if (line.need == need) {
            lines.push_back(line);
        }
    }
    return lines;
}

std::int64_t typical(const MoneyRange& range)
{
    return range.typical.minor_units();
}

// The lines alone, without what is set aside for surprises.
plan::Plan without_reserve()
{
    plan::Plan plan = turtle_table();
    plan.budget.contingency = 0.0;
    return plan;
}

} // namespace

TEST_CASE("a need that is left out is neither bought nor paid for, and that is told")
{
    plan::Plan plan = without_reserve();
    const auto before = instant(plan);
    const auto scale = of_need(before, "measure.scale");
    REQUIRE(scale.size() == 1);
    plan.wishes = {wish("measure.scale")};
    const auto after = instant(plan);
    CHECK(of_need(after, "measure.scale").empty());
    CHECK(typical(after.costs.startup) == typical(before.costs.startup) - typical(*scale[0].line_total));
    CHECK(has(after, "money.left-out", Verdict::fits));
}

TEST_CASE("food that is left out is not in the running costs either")
{
    plan::Plan plan = without_reserve();
    const auto food = [](const assess::Costs& costs) {
        return std::count_if(costs.lines.begin(), costs.lines.end(), [](const assess::CostLine& line) {
            return line.kind == assess::CostKind::food && line.item != "calcium";
        });
    };
    const auto before = instant(plan);
    const auto line = std::find_if(before.shopping.begin(), before.shopping.end(),
                                   [](const auto& one) { return one.need.rfind("food.", 0) == 0; });
    REQUIRE(line != before.shopping.end());
    plan.wishes = {wish(line->need)};
    CHECK(food(instant(plan).costs) < food(before.costs));
}

TEST_CASE("leaving out what safety hangs on falls short, wherever else the plan is sound")
{
    plan::Plan plan = without_reserve();
    plan.site.strips.at(0).residual_current_protected = false;
    for (const char* kind : {"measure.thermometer", "electrical.rcd-adapter"}) {
        plan.wishes = {wish(kind)};
        CHECK(has(instant(plan), "money.safety-left-out", Verdict::falls_short));
    }
}

TEST_CASE("a wish for one place leaves the others alone")
{
    plan::Plan plan = without_reserve();
    const auto hides = of_need(instant(plan), "fitting.hide");
    REQUIRE_FALSE(hides.empty());
    const double all = hides[0].amount_needed;
    plan.wishes = {wish("fitting.hide", {}, "no-such-element")};
    CHECK(of_need(instant(plan), "fitting.hide")[0].amount_needed == all);
    CHECK(has(instant(plan), "money.wish-idle", Verdict::not_known));
}

TEST_CASE("an item that is wished for is bought in the place of what serves the need")
{
    plan::Plan plan = without_reserve();
    const auto& items = shipped_catalog().prices.items;
    const auto other = std::find_if(items.begin(), items.end(), [](const catalog::Item& item) {
        return item.unit == "each" && item.serves == "fitting.rock";
    });
    REQUIRE(other != items.end());
    plan.wishes = {wish("measure.scale", other->id)};
    const auto lines = of_need(instant(plan), "measure.scale");
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].item == other->id);
    plan.wishes = {wish("measure.scale", "no-such-item")};
    CHECK(has(instant(plan), "money.wish-idle", Verdict::not_known));
    CHECK_FALSE(of_need(instant(plan), "measure.scale")[0].line_total);
}

TEST_CASE("a line of one's own is paid at the start, and again as often as it says")
{
    plan::Plan plan = without_reserve();
    const assess::Costs before = instant(plan).costs;
    plan.own_lines = {own_line(2, "12.50", 6.0)};
    const assess::Costs after = instant(plan).costs;
    // By hand: 2 x 12.50 now, and 25.00 every six months, 50.00 a year.
    CHECK(typical(after.startup) == typical(before.startup) + 2500);
    CHECK(typical(after.running_per_year) == typical(before.running_per_year) + 5000);
    CHECK(typical(after.horizon[1].spent) ==
          typical(before.horizon[1].spent) + 2500); // month 6; month 12 is year two's
    plan.own_lines = {own_line(2, {})};
    CHECK(instant(plan).costs.startup == before.startup);
    CHECK(instant(plan).costs.unpriced == std::vector<std::string>{"own.l1"});
}

TEST_CASE("packs are chosen by the plan's aim: never fewer than the fewest, never less left over than the least")
{
    plan::Plan plan = without_reserve();
    const auto sum_of = [&](plan::PackAim aim) {
        plan.budget.pack_aim = aim;
        std::pair<std::int64_t, double> sum{0, 0.0}; // packs and left-over of the bed
        for (const assess::ShoppingLine& line : instant(plan).shopping) {
            if (line.need.rfind("substrate.", 0) == 0) {
                sum.first += line.packs;
                sum.second += line.left_over.low;
            }
        }
        return sum;
    };
    const auto cheapest = sum_of(plan::PackAim::cheapest);
    const auto fewest = sum_of(plan::PackAim::fewest_packs);
    const auto least = sum_of(plan::PackAim::least_left_over);
    CHECK(fewest.first <= std::min(cheapest.first, least.first));
    CHECK(least.second <= std::min(cheapest.second, fewest.second));
    CHECK(fewest != least); // or the plan would prove nothing
}
