#include "core/catalog/prices.hpp"

#include "core/catalog/catalog.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

namespace {

Pack pack(const std::string& id)
{
    Pack one;
    one.id = id;
    one.name = id;
    one.amount = exactly(1.0);
    one.low = one.typical = one.high = Decimal{1250, 2};
    return one;
}

PriceList list_of(const std::string& channel, const std::string& date, std::vector<Item> items)
{
    PriceList list;
    list.title = channel + " list";
    list.channel = channel;
    list.date = date;
    list.place = "invented";
    list.items = std::move(items);
    return list;
}

Item item(const std::string& id, const std::string& serves)
{
    Item one;
    one.id = id;
    one.name = id;
    one.serves = serves;
    one.unit = "each";
    one.packs = {pack("one")};
    return one;
}

} // namespace

TEST_CASE("lists put together hold each item once, with the packs of all of them")
{
    const PriceList shop =
        list_of("shop", "2026-11-01", {item("scale", "measure.scale"), item("timer", "control.timer")});
    const PriceList club =
        list_of("club", "2026-03-01", {item("scale", "measure.scale"), item("timer", "measure.scale")});
    const PriceList whole = put_together({shop, club, club});
    REQUIRE(whole.items.size() == 4);
    CHECK(whole.items[0].packs.size() == 3);
    CHECK(whole.items[0].packs[1].seller == "club");
    CHECK(whole.items[0].packs[2].seller == "club-2");
    CHECK(whole.items[2].id == "club.timer"); // another thing under the same id
    CHECK(whole.date == "2026-03-01");
    REQUIRE(sellers_of(whole).size() == 3);
    CHECK(sellers_of(shop).at(0).channel == "shop");
    CHECK(put_together({shop}) == shop);
}

TEST_CASE("terms of delivery and tax go through JSON and CSV unharmed")
{
    PriceList list = list_of("web", "2026-11-01", {item("scale", "measure.scale")});
    list.delivery = Delivery{Decimal{495, 2}, Decimal{595, 2}, Decimal{990, 2}, Decimal{5000, 2}, {}};
    list.tax_share = 0.19;
    list.minimum_order = Decimal{2000, 2};
    const PriceListRead json = read_prices(write(list));
    CHECK(json.problems.empty());
    CHECK(json.prices == list);
    const PriceListRead csv = read_prices_csv(write_csv(list));
    CHECK(csv.problems.empty());
    CHECK(csv.prices == list);
}

TEST_CASE("a delivery whose prices are out of order or too fine is refused where it stands")
{
    PriceList list = list_of("web", "2026-11-01", {item("scale", "measure.scale")});
    list.delivery = Delivery{Decimal{595, 2}, Decimal{495, 2}, Decimal{990, 2}, {}, {}};
    CHECK_FALSE(read_prices(write(list)).problems.empty());
    list.delivery = Delivery{Decimal{4955, 3}, Decimal{4955, 3}, Decimal{4955, 3}, {}, {}};
    const auto problems = read_prices(write(list)).problems;
    REQUIRE_FALSE(problems.empty());
    CHECK(problems.front().where == "/delivery/low");
}
