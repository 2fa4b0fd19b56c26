#include "core/buying/purchase.hpp"

#include <random>

#include "tests/catch.hpp"

using namespace loam;
using namespace loam::buying;

namespace {

const Currency usd{"USD", 2};

MoneyRange exact(std::int64_t minor)
{
    return {Money(minor, usd), Money(minor, usd), Money(minor, usd)};
}

PackOffer pack(std::int64_t minor, std::string seller, bool in_stock = true)
{
    return {.name = "one",
            .amount = exactly(1.0),
            .price = exact(minor),
            .in_stock = in_stock,
            .seller = std::move(seller)};
}

ItemOffer item(std::string kind, std::vector<PackOffer> packs)
{
    return {kind + "-item", kind, kind, "each", {}, {}, std::move(packs)};
}

Terms terms(std::string seller, std::int64_t delivery, std::optional<std::int64_t> free_from = {}, double tax = 0.0,
            std::optional<std::int64_t> minimum = {})
{
    const auto money = [](const std::optional<std::int64_t>& minor) {
        return minor ? std::optional(Money(*minor, usd)) : std::nullopt;
    };
    return {std::move(seller), exact(delivery), money(free_from), tax, money(minimum)};
}

std::vector<Household> needs(const std::vector<std::string>& kinds)
{
    Household one;
    for (const std::string& kind : kinds) {
        Need need;
        need.kind = kind;
        need.amount = 1.0;
        need.unit = "each";
        one.needs.push_back(need);
    }
    return {one};
}

std::int64_t typical(const MoneyRange& range)
{
    return range.typical.minor_units();
}

} // namespace

TEST_CASE("A second delivery is paid only where it saves more than it costs")
{
    // By hand: the lamp is 3.00 dearer at the shop. Delivery by the club costs 4.00, so everything comes from the shop;
    // at 2.00 it pays.
    const std::vector<ItemOffer> offers{item("lamp", {pack(1300, "shop"), pack(1000, "club")}),
                                        item("box", {pack(9000, "shop"), pack(9500, "club")})};
    const Purchase apart = purchase(needs({"lamp", "box"}), offers, {terms("shop", 0), terms("club", 400)}, usd);
    CHECK(typical(apart.total) == 1300 + 9000);
    REQUIRE(apart.deliveries.size() == 1);
    const Purchase both = purchase(needs({"lamp", "box"}), offers, {terms("shop", 0), terms("club", 200)}, usd);
    CHECK(typical(both.total) == 1000 + 200 + 9000);
    CHECK(both.deliveries.size() == 2);
}

TEST_CASE("Goods of enough are brought for nothing, and tax comes on goods and delivery, rounded once a place")
{
    const std::vector<ItemOffer> offers{item("box", {pack(9999, "web")})};
    const Purchase paid = purchase(needs({"box"}), offers, {terms("web", 495, 10000, 0.19)}, usd);
    // By hand: (99.99 + 4.95) x 0.19 = 19.9386.
    CHECK(typical(paid.deliveries.at(0).tax) == 1994);
    CHECK(typical(paid.total) == 9999 + 495 + 1994);
    const Purchase free = purchase(needs({"box"}), offers, {terms("web", 495, 9999, 0.19)}, usd);
    CHECK(typical(free.deliveries.at(0).delivery) == 0);
}

TEST_CASE("What a place sells too little of is bought elsewhere, and where it can't be, that is told")
{
    const std::vector<ItemOffer> offers{item("lamp", {pack(1300, "shop"), pack(1000, "club")})};
    const Purchase other = purchase(needs({"lamp"}), offers, {terms("shop", 0), terms("club", 0, {}, 0.0, 5000)}, usd);
    CHECK(other.deliveries.at(0).seller == "shop");
    const std::vector<ItemOffer> only{item("lamp", {pack(1000, "club")})};
    const Purchase told = purchase(needs({"lamp"}), only, {terms("club", 0, {}, 0.0, 5000)}, usd);
    CHECK(told.deliveries.at(0).below_minimum);
}

TEST_CASE("What only one place sells is bought there, whatever bringing it costs")
{
    const std::vector<ItemOffer> offers{item("lamp", {pack(1300, "shop")}), item("rock", {pack(100, "club")})};
    const Purchase all = purchase(needs({"lamp", "rock"}), offers, {terms("shop", 0), terms("club", 5000)}, usd);
    for (const Line& line : all.order.lines) {
        CHECK_FALSE(line.unpriced);
    }
    CHECK(typical(all.total) == 1300 + 100 + 5000);
}

TEST_CASE("What is out of stock is told beside what is bought in its place")
{
    const std::vector<ItemOffer> offers{item("lamp", {pack(1000, "shop", false), pack(1300, "shop")})};
    const Purchase bought = purchase(needs({"lamp"}), offers, {terms("shop", 0)}, usd);
    CHECK(bought.order.lines.at(0).instead_of == "lamp, one");
    CHECK(typical(bought.total) == 1300);
    const std::vector<ItemOffer> dear{item("lamp", {pack(1000, "shop"), pack(1300, "shop", false)})};
    CHECK(purchase(needs({"lamp"}), dear, {terms("shop", 0)}, usd).order.lines.at(0).instead_of.empty());
}

TEST_CASE("A further place to buy never raises the total, and the total is no more than any one place's")
{
    std::mt19937 random(20261127);
    std::uniform_int_distribution<std::int64_t> price(100, 3000);
    std::uniform_int_distribution<std::int64_t> bring(0, 800);
    for (int round = 0; round < 200; ++round) {
        std::vector<ItemOffer> offers;
        std::vector<std::string> kinds;
        for (const char* kind : {"a", "b", "c", "d"}) {
            kinds.emplace_back(kind);
            offers.push_back(
                item(kind, {pack(price(random), "one"), pack(price(random), "two"), pack(price(random), "three")}));
        }
        const std::vector<Terms> places{terms("one", bring(random)), terms("two", bring(random)),
                                        terms("three", bring(random), price(random), 0.07)};
        const Purchase all = purchase(needs(kinds), offers, places, usd);
        const Purchase fewer = purchase(needs(kinds), offers, {places[0], places[1]}, usd);
        REQUIRE(typical(all.total) <= typical(fewer.total));
        MoneyRange goods = MoneyRange::zero(usd);
        for (const Delivered& one : all.deliveries) {
            goods += one.goods;
        }
        REQUIRE(goods == all.order.total);
    }
}
