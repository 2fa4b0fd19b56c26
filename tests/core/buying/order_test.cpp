#include "core/buying/order.hpp"

#include "tests/catch.hpp"

using namespace loam;
using namespace loam::buying;

namespace {

const Currency usd{"USD", 2};

MoneyRange price(std::int64_t low, std::int64_t typical, std::int64_t high)
{
    return {Money(low, usd), Money(typical, usd), Money(high, usd)};
}

ItemOffer chips()
{
    return {"coir-chips",
            "Coir chips",
            "substrate.coir-chips",
            "l",
            std::nullopt,
            std::nullopt,
            {{"small brick", {7.0, 8.0, 9.0}, price(400, 500, 700), true},
             {"large brick", {60.0, 70.0, 75.0}, price(1500, 2200, 2600), true}}};
}

ItemOffer lamp(std::string id, double from_w, double to_w, std::int64_t typical)
{
    return {id,
            "Flood lamp " + id,
            "lamp.flood-lamp",
            "each",
            from_w,
            to_w,
            {{"one", exactly(1.0), price(typical / 2, typical, typical * 2), true}}};
}

Need litres(double amount, std::string enclosure)
{
    return {"substrate.coir-chips", amount, "l", std::nullopt, {std::move(enclosure)}, "bed", "layer"};
}

Need lamps(double count, std::optional<double> power_w, std::string enclosure)
{
    return {"lamp.flood-lamp", count, "each", power_w, {std::move(enclosure)}, "device", "d1"};
}

Line only_line(const Household& household, const std::vector<ItemOffer>& offers)
{
    const Order placed = order({household}, offers, usd);
    REQUIRE(placed.lines.size() == 1);
    return placed.lines.front();
}

} // namespace

TEST_CASE("One order serves several enclosures: their litres are added before packs are counted")
{
    // By hand: 10 l + 10 l = 20 l in three small bricks of at least 7 l; apart it would be two bricks each.
    const Line line = only_line({{litres(10.0, "e1"), litres(10.0, "e2")}, {}}, {chips()});
    REQUIRE(line.bought.size() == 1);
    CHECK(line.bought[0].pack == "small brick");
    CHECK(line.bought[0].packs == 3);
    CHECK(line.enclosures == std::vector<std::string>{"e1", "e2"});
    CHECK(line.needed == 20.0);
    CHECK(line.total == price(1200, 1500, 2100));
    CHECK(line.left_over.low == Approx(1.0));
    CHECK(line.left_over.high == Approx(7.0));
    CHECK(line.why == "bed");
    CHECK(line.where == "layer");
}

TEST_CASE("Rows of one line share out its need, and the left-over stands once")
{
    // By hand: 73 l = one large (60) and two small (14) at 32.00; two large are 44.00, eleven small 55.00.
    const Line line = only_line({{litres(73.0, "e1")}, {}}, {chips()});
    REQUIRE(line.bought.size() == 2);
    CHECK(line.bought[0].covers == 14.0);
    CHECK(line.bought[1].covers == 59.0);
    CHECK(line.bought[0].left_over == Range{});
    CHECK(line.bought[1].left_over == line.left_over);
    CHECK(line.left_over.low == Approx(1.0));
    CHECK(line.bought[1].total == price(1500, 2200, 2600));
    CHECK(line.total == price(2300, 3200, 4000));
}

TEST_CASE("The packs are chosen at one price level and the other totals are those of the same packs")
{
    // 14 l: two small bricks at 8.00, 10.00, 14.00; at each level cheaper than a large one at 15.00, 22.00, 26.00.
    // 28 l: four small at 16.00, 20.00, 28.00: at the low and high level the large one is cheaper, at the typical not.
    const Household household{{litres(28.0, "e1")}, {}};
    CHECK(order({household}, {chips()}, usd, Aim::cheapest, Level::low).total == price(1500, 2200, 2600));
    CHECK(order({household}, {chips()}, usd, Aim::cheapest, Level::typical).total == price(1600, 2000, 2800));
    CHECK(order({household}, {chips()}, usd, Aim::cheapest, Level::high).total == price(1500, 2200, 2600));
}

TEST_CASE("What is owned is taken off, in the item's own unit, and stays on the list as owned")
{
    const Line part = only_line({{litres(20.0, "e1")}, {{"coir-chips", 6.5}, {"coir-chips", 0.5}}}, {chips()});
    CHECK(part.needed == 13.0);
    CHECK(part.owned == 7.0);
    CHECK(part.owned_item == "coir-chips");
    CHECK(part.bought[0].packs == 2);

    const Line all = only_line({{litres(20.0, "e1")}, {{"coir-chips", 500.0}}}, {chips()});
    CHECK(all.needed == 0.0);
    CHECK(all.owned == 20.0);
    CHECK(all.bought.empty());
    CHECK(all.total == MoneyRange::zero(usd));
    CHECK_FALSE(all.unpriced);

    const Line other = only_line({{litres(20.0, "e1")}, {{"something-else", 500.0}}}, {chips()});
    CHECK(other.needed == 20.0);
}

TEST_CASE("A shelf serves its own keeper only")
{
    const Household rich{{lamps(1.0, 75.0, "a")}, {{"l75", 5.0}}};
    const Household poor{{lamps(1.0, 75.0, "b")}, {}};
    const Order placed = order({rich, poor}, {lamp("l75", 60.0, 80.0, 900)}, usd);
    REQUIRE(placed.lines.size() == 1);
    CHECK(placed.lines[0].needed == 1.0);
    CHECK(placed.lines[0].owned == 1.0);
    CHECK(placed.total.typical.minor_units() == 900);
}

TEST_CASE("Watts choose the lamp, both ends of an item's span included")
{
    const std::vector<ItemOffer> offers{lamp("l50", 40.0, 60.0, 700), lamp("l75", 61.0, 80.0, 900)};
    const Order placed =
        order({{{lamps(1.0, 60.0, "e1"), lamps(2.0, 61.0, "e2"), lamps(1.0, 40.0, "e2")}, {}}}, offers, usd);
    REQUIRE(placed.lines.size() == 2);
    CHECK(placed.lines[0].bought[0].item == "l50");
    CHECK(placed.lines[0].bought[0].packs == 2);
    CHECK(placed.lines[1].bought[0].item == "l75");
    CHECK(placed.lines[1].bought[0].packs == 2);
    CHECK(placed.total.typical.minor_units() == 2 * 700 + 2 * 900);
}

TEST_CASE("A need that can't be priced is a line without a price, never one at zero, and says why")
{
    const auto reason = [](const Need& need, const std::vector<ItemOffer>& offers) {
        const Line line = only_line({{need}, {}}, offers);
        CHECK_FALSE(line.total);
        CHECK(line.bought.empty());
        return line.unpriced;
    };
    CHECK(reason(litres(5.0, "e1"), {}) == Unpriced::no_item);
    CHECK(reason(litres(5.0, "e1"), {lamp("l50", 40.0, 60.0, 700)}) == Unpriced::no_item);
    CHECK(reason(lamps(1.0, 100.0, "e1"), {lamp("l50", 40.0, 60.0, 700)}) == Unpriced::nothing_fits);
    CHECK(reason(lamps(1.0, std::nullopt, "e1"), {lamp("l50", 40.0, 60.0, 700)}) == Unpriced::fit_unknown);
    CHECK(reason(litres(-5.0, "e1"), {chips()}) == Unpriced::too_large);

    ItemOffer item = chips();
    item.unit = "kg";
    CHECK(reason(litres(5.0, "e1"), {item}) == Unpriced::other_unit);
    item = chips();
    item.packs[0].in_stock = item.packs[1].in_stock = false;
    CHECK(reason(litres(5.0, "e1"), {item}) == Unpriced::out_of_stock);
    item = chips();
    item.packs[0].price.reset();
    item.packs[1].amount.low = 0.0;
    CHECK(reason(litres(5.0, "e1"), {item}) == Unpriced::no_price);
    item = chips();
    item.packs = {{"in another currency", exactly(10.0), MoneyRange::zero({"JPY", 0}), true}};
    CHECK(reason(litres(5.0, "e1"), {item}) == Unpriced::no_price);
}

TEST_CASE("A pack out of stock or without a price is passed over for one that can be had")
{
    ItemOffer item = chips();
    item.packs[0].in_stock = false;
    CHECK(only_line({{litres(5.0, "e1")}, {}}, {item}).bought[0].pack == "large brick");
    item = chips();
    item.packs[1].price.reset();
    CHECK(only_line({{litres(60.0, "e1")}, {}}, {item}).bought[0].packs == 9);
}

TEST_CASE("Unserved needs stay apart where they need different things")
{
    const Order placed =
        order({{{lamps(1.0, 100.0, "e1"), lamps(1.0, 150.0, "e1"), lamps(1.0, 100.0, "e2")}, {}}}, {}, usd);
    REQUIRE(placed.lines.size() == 2);
    CHECK(placed.lines[0].needed == 2.0);
    CHECK(placed.lines[1].fits_value == 150.0);
    CHECK(placed.total == MoneyRange::zero(usd));
}

TEST_CASE("An order too dear to count is refused, not wrapped around")
{
    ItemOffer item = chips();
    item.packs = {{"gold brick", exactly(1.0), price(1, 1, 9'000'000'000'000'000'000), true}};
    CHECK(only_line({{litres(5.0, "e1")}, {}}, {item}).unpriced == Unpriced::too_large);
}
