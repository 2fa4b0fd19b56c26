// Two price lists side by side. The figures are worked out by hand beside each check.
#include "core/catalog/price_difference.hpp"

#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

namespace {

Pack pack(std::string id, const char* low, const char* typical, const char* high)
{
    Pack one;
    one.id = std::move(id);
    one.amount = {10.0, 10.0, 10.0};
    one.low = *Decimal::parse(low);
    one.typical = *Decimal::parse(typical);
    one.high = *Decimal::parse(high);
    return one;
}

Item item(std::string id, std::vector<Pack> packs)
{
    Item one;
    one.id = id;
    one.name = id;
    one.serves = "stand";
    one.unit = "each";
    one.packs = std::move(packs);
    return one;
}

PriceList list(std::vector<Item> items)
{
    PriceList one;
    one.items = std::move(items);
    return one;
}

PackDifference only_pack(const PriceDifference& found)
{
    REQUIRE(found.packs.size() == 1);
    return found.packs.front();
}

} // namespace

TEST_CASE("a list beside itself differs in nothing, however its prices are written")
{
    const PriceList one = list({item("stand", {pack("a", "1", "2.5", "3")})});
    CHECK(difference(one, one) == PriceDifference{});
    CHECK(difference(one, list({item("stand", {pack("a", "1.00", "2.50", "3.0")})})) == PriceDifference{});
}

TEST_CASE("the rise of a typical price is exact and a share of the first price")
{
    // 0.1 + 0.2 is 0.3 in decimals and not in doubles; 0.30 - 0.1 = 0.20, twice the first price.
    const auto found = only_pack(difference(list({item("stand", {pack("a", "0.1", "0.1", "0.1")})}),
                                            list({item("stand", {pack("a", "0.1", "0.30", "0.3")})})));
    CHECK(found.kind == Difference::changed);
    CHECK(found.price);
    CHECK_FALSE(found.amount);
    CHECK_FALSE(found.stock);
    REQUIRE(found.rise);
    CHECK(found.rise->text() == "0.20");
    CHECK(found.rise_share == 2.0);
}

TEST_CASE("what became cheaper rises by less than nothing, and from zero there is no share")
{
    const PriceList dear = list({item("stand", {pack("a", "0", "8", "8")})});
    const PriceList cheap = list({item("stand", {pack("a", "0", "6.00", "8")})});
    const PriceList free = list({item("stand", {pack("a", "0", "0", "8")})});
    CHECK(only_pack(difference(dear, cheap)).rise->text() == "-2.00");
    CHECK(only_pack(difference(dear, cheap)).rise_share == -0.25);
    CHECK(only_pack(difference(free, dear)).rise->text() == "8");
    CHECK_FALSE(only_pack(difference(free, dear)).rise_share);
}

TEST_CASE("a low or high price, an amount and the stock are changes of their own")
{
    const PriceList before = list({item("stand", {pack("a", "1", "2", "3")})});
    PriceList after = before;
    after.items[0].packs[0].high = *Decimal::parse("4");
    CHECK(only_pack(difference(before, after)).price);
    CHECK(only_pack(difference(before, after)).rise->coefficient == 0);
    after = before;
    after.items[0].packs[0].amount.high = 11.0;
    CHECK(only_pack(difference(before, after)).amount);
    CHECK_FALSE(only_pack(difference(before, after)).price);
    after = before;
    after.items[0].packs[0].in_stock = false;
    CHECK(only_pack(difference(before, after)).stock);
    after = before;
    after.items[0].unit = "l"; // ten of something else
    CHECK(only_pack(difference(before, after)).amount);
    REQUIRE(difference(before, after).items.size() == 1);
    CHECK(difference(before, after).items[0].meaning);
}

TEST_CASE("items and packs that only one list has are told, and swapping the lists swaps them")
{
    const PriceList first =
        list({item("old", {pack("a", "1", "1", "1")}), item("both", {pack("gone", "1", "1", "1")})});
    const PriceList second =
        list({item("both", {pack("come", "1", "1", "1")}), item("new", {pack("b", "1", "1", "1")})});
    const PriceDifference found = difference(first, second);
    REQUIRE(found.items.size() == 2);
    CHECK(found.items[0] == ItemDifference{Difference::removed, "old", "old"});
    CHECK(found.items[1] == ItemDifference{Difference::added, "new", "new"});
    REQUIRE(found.packs.size() == 4);
    CHECK((found.packs[0].kind == Difference::removed && found.packs[0].before->id == "a"));
    CHECK((found.packs[1].kind == Difference::removed && found.packs[1].before->id == "gone"));
    CHECK((found.packs[2].kind == Difference::added && found.packs[2].after->id == "come"));
    CHECK((found.packs[3].kind == Difference::added && found.packs[3].after->id == "b"));
    const PriceDifference back = difference(second, first);
    CHECK(back.items[0] == ItemDifference{Difference::removed, "new", "new"});
    CHECK(back.items[1] == ItemDifference{Difference::added, "old", "old"});
}

TEST_CASE("prices of two currencies are not compared, amounts and stock are")
{
    const PriceList first = list({item("stand", {pack("a", "1", "2", "3"), pack("b", "1", "2", "3")})});
    PriceList second = list({item("stand", {pack("a", "4", "5", "6"), pack("b", "4", "5", "6")})});
    second.currency = "EUR";
    second.items[0].packs[1].in_stock = false;
    const PriceDifference found = difference(first, second);
    CHECK_FALSE(found.prices_compared);
    CHECK(only_pack(found).after->id == "b");
    CHECK_FALSE(only_pack(found).price);
    CHECK_FALSE(only_pack(found).rise);
    CHECK_FALSE(only_pack(found).rise_share);
}

TEST_CASE("a difference that does not fit is not known, and still a change")
{
    const Decimal huge = *Decimal::parse("999999999999999999");
    CHECK_FALSE(exact_difference(huge, *Decimal::parse("0.000000000001")));
    const auto found =
        only_pack(difference(list({item("stand", {pack("a", "0", "0.000000000001", "1")})}),
                             list({item("stand", {pack("a", "0", huge.text().c_str(), huge.text().c_str())})})));
    CHECK(found.price);
    CHECK_FALSE(found.rise);
}
