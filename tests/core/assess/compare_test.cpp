#include "core/assess/compare.hpp"

#include "tests/catch.hpp"

using namespace loam;
using namespace loam::assess;

namespace {

MoneyRange dollars(std::int64_t whole)
{
    const Money amount(whole * 100, Currency{});
    return {amount, amount, amount};
}

Costs costs(std::int64_t startup, std::int64_t yearly)
{
    Costs result;
    result.startup = dollars(startup);
    result.running_per_year = dollars(yearly);
    result.electricity_per_year = dollars(0);
    return result;
}

Assessment with_boxes(const std::vector<std::string>& ids)
{
    Assessment assessment;
    for (const std::string& id : ids) {
        assessment.enclosures.emplace_back().id = id;
    }
    return assessment;
}

std::vector<Sides<std::string>> paired(const std::vector<std::string>& first, const std::vector<std::string>& second)
{
    std::vector<Sides<std::string>> ids;
    for (const ComparedEnclosure& each : compare(with_boxes(first), with_boxes(second)).enclosures) {
        ids.push_back(each.ids);
    }
    return ids;
}

ShoppingLine line(const std::string& item, std::int64_t packs, std::int64_t total)
{
    ShoppingLine result;
    result.need = "need";
    result.item = item;
    result.packs = packs;
    result.line_total = dollars(total);
    return result;
}

} // namespace

TEST_CASE("1200 more to start and 300 less a year come back in four years")
{
    // By hand, the textbook's simple pay-back period.
    CHECK(payback(costs(500, 700), costs(1700, 400)) == PaybackResult{Payback::after, 4.0});
}

TEST_CASE("Seen from the other side a pay-back is the time after which a lead is lost")
{
    CHECK(payback(costs(1700, 400), costs(500, 700)) == PaybackResult{Payback::trade, 4.0});
}

TEST_CASE("Without a trade there are no years")
{
    CHECK(payback(costs(500, 700), costs(500, 700)).kind == Payback::at_once);
    CHECK(payback(costs(500, 700), costs(400, 700)).kind == Payback::at_once);
    CHECK(payback(costs(500, 700), costs(500, 600)).kind == Payback::at_once);
    CHECK(payback(costs(500, 700), costs(600, 700)).kind == Payback::never);
    CHECK(payback(costs(500, 700), costs(500, 800)).kind == Payback::never);
    CHECK(payback(costs(500, 700), costs(600, 800)) == PaybackResult{Payback::never, {}});
}

TEST_CASE("A pay-back that would leave out a part of one side is not known")
{
    const Costs first = costs(500, 700);
    const Costs good = costs(1700, 400);
    Costs second = good;
    second.electricity_per_year.reset();
    CHECK(payback(first, second) == PaybackResult{});
    CHECK(payback(second, first) == PaybackResult{});
    second = good;
    second.unpriced = {"stand"};
    CHECK(payback(first, second) == PaybackResult{});
    Costs same_missing = first;
    same_missing.unpriced = {"stand"};
    CHECK(payback(same_missing, second).kind == Payback::after);
    second = good;
    second.prices_match_currency = false;
    CHECK(payback(first, second) == PaybackResult{});
    second = good;
    second.currency = Currency{"EUR", 2};
    CHECK(payback(first, second) == PaybackResult{});
}

TEST_CASE("Boxes go together by id, the rest in order, and none is lost")
{
    using Ids = std::vector<Sides<std::string>>;
    CHECK(paired({"a", "b"}, {"b", "a"}) == Ids{{"a", "a"}, {"b", "b"}});
    CHECK(paired({"a", "b"}, {"b"}) == Ids{{"a", ""}, {"b", "b"}});
    CHECK(paired({"a"}, {"x"}) == Ids{{"a", "x"}});
    CHECK(paired({"a", "b"}, {"x", "a", "y", "z"}) == Ids{{"a", "a"}, {"b", "x"}, {"", "y"}, {"", "z"}});
    CHECK(paired({}, {"x"}) == Ids{{"", "x"}});
}

TEST_CASE("Purchases are added up by item and pack, and only what differs is told")
{
    Assessment first;
    first.shopping = {line("bag", 1, 10), line("lamp", 1, 20), line("bag", 2, 20)};
    Assessment second;
    second.shopping = {line("lamp", 1, 20), line("bag", 1, 10)};
    const auto purchases = compare(first, second).purchases;
    REQUIRE(purchases.size() == 1);
    CHECK(purchases[0].item == "bag");
    CHECK(purchases[0].packs == Sides<std::int64_t>{3, 1});
    CHECK(purchases[0].totals[0] == dollars(30));
    CHECK(purchases[0].totals[1] == dollars(10));
}

TEST_CASE("A zone that only one side has leaves the other empty")
{
    Assessment first = with_boxes({"a"});
    HeatCase& heat = first.enclosures[0].heat.emplace_back();
    heat.id = "winter-day";
    heat.known = true;
    heat.zones.emplace_back().zone = Zone::basking;
    Assessment second = first;
    second.enclosures[0].heat[0].zones[0].zone = Zone::cool;
    const auto zones = compare(first, second).enclosures[0].zones;
    REQUIRE(zones.size() == 2);
    CHECK((zones[0].sides[0] && !zones[0].sides[1]));
    CHECK((!zones[1].sides[0] && zones[1].sides[1]));
    second.enclosures[0].heat[0].known = false; // a balance that did not close says nothing
    CHECK(compare(first, second).enclosures[0].zones.size() == 1);
}
