// The age of a price list and what is missing from it.
#include "core/catalog/price_state.hpp"

#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

namespace {

constexpr std::chrono::year_month_day day{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

PriceState dated(const char* date)
{
    PriceList prices;
    prices.date = date;
    return price_state(prices, {}, day);
}

Item item(const char* id, const char* serves, std::vector<bool> packs_in_stock)
{
    Item one;
    one.id = id;
    one.serves = serves;
    for (const bool in_stock : packs_in_stock) {
        one.packs.emplace_back().in_stock = in_stock;
    }
    return one;
}

} // namespace

TEST_CASE("a list is old once it is of more than twelve months")
{
    CHECK(dated("2025-10-25").old); // thirteen months before the day
    CHECK(*dated("2025-10-25").age_months == Approx(13.0).margin(0.1));
    CHECK_FALSE(dated("2025-12-25").old); // eleven
    CHECK(*dated("2025-12-25").age_months == Approx(11.0).margin(0.1));
    CHECK(*dated("2026-11-25").age_months == 0.0);
    CHECK(*dated("2026-12-25").age_months < 0.0);
}

TEST_CASE("the age of a list without a date is not known")
{
    for (const char* date : {"", "2026", "2026-02-30", "25.11.2026", "2026-11-2x", "2026/11/25"}) {
        INFO(date);
        CHECK_FALSE(dated(date).age_months);
        CHECK_FALSE(dated(date).old);
    }
}

TEST_CASE("an item is out of stock where none of its packs is in stock, and kinds without an item are told once")
{
    PriceList kinds;
    kinds.items = {item("s", "stand", {true}), item("l1", "lamp.uv-tube", {true}), item("l2", "lamp.uv-tube", {true}),
                   item("c", "cover.glass", {true})};
    PriceList prices;
    prices.items = {item("mine", "stand", {false, true}), item("gone", "own.thing", {false, false})};
    const PriceState state = price_state(prices, kinds, day);
    CHECK(state.out_of_stock == std::vector<std::string>{"gone"});
    CHECK(state.unserved == std::vector<std::string>{"cover.glass", "lamp.uv-tube"});
    CHECK(price_state(kinds, kinds, day).unserved.empty());
}
