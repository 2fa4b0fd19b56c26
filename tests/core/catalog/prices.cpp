#include <algorithm>
#include <map>
#include <set>

#include "core/units.hpp"
#include "shipped.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::catalog;

namespace {

const PriceList& prices()
{
    return shipped::catalog().prices;
}

// The need kinds of resources/prices/README.md: what stands in backquotes in the first column of its table, with
// the unit of the second.
std::map<std::string, std::string> documented_kinds()
{
    std::map<std::string, std::string> kinds;
    const std::string text = shipped::text_of("prices/README.md");
    std::size_t at = text.find("|---");
    at = text.find('\n', at) + 1;
    while (text[at] == '|') {
        const std::string line = text.substr(at, text.find('\n', at) - at);
        const std::size_t second = line.find('|', 1);
        const std::string unit = line.substr(second + 2, line.find_first_of(" ,|", second + 2) - second - 2);
        std::string stem;
        for (std::size_t tick = line.find('`'); tick != std::string::npos && tick < second;) {
            const std::size_t end = line.find('`', tick + 1);
            std::string kind = line.substr(tick + 1, end - tick - 1);
            if (kind.find('<') != std::string::npos) {
                stem = kind.substr(0, kind.find('<')); // "substrate.<material>", its materials follow
            } else {
                kinds[stem + kind] = unit;
            }
            tick = line.find('`', end + 1);
        }
        at = text.find('\n', at) + 1;
    }
    return kinds;
}

const Item* item(const std::string& id)
{
    const auto& items = prices().items;
    const auto found = std::find_if(items.begin(), items.end(), [&](const Item& each) { return each.id == id; });
    return found == items.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("the shipped list serves every kind of need that the program can have, in the unit of that need")
{
    const auto kinds = documented_kinds();
    CHECK(kinds.size() > 55);
    for (const auto& [kind, unit] : kinds) {
        INFO(kind);
        const bool served = std::any_of(prices().items.begin(), prices().items.end(),
                                        [&](const Item& each) { return each.serves == kind && each.unit == unit; });
        CHECK(served);
    }
}

TEST_CASE("every item of the shipped list serves a documented kind of need")
{
    const auto kinds = documented_kinds();
    for (const Item& each : prices().items) {
        INFO(each.id << " serves " << each.serves);
        CHECK(kinds.count(each.serves) == 1);
    }
}

TEST_CASE("every bed and cover material that is shipped can be bought")
{
    for (const Material& material : shipped::catalog().materials) {
        for (const MaterialUse use : material.uses) {
            if (use != MaterialUse::cover && use != MaterialUse::substrate) {
                continue;
            }
            const std::string need = (use == MaterialUse::cover ? "cover." : "substrate.") + material.id;
            INFO(need);
            CHECK(std::any_of(prices().items.begin(), prices().items.end(),
                              [&](const Item& each) { return each.serves == need; }));
        }
    }
}

TEST_CASE("what is bought by watts, area or outlets leaves no gap between its items")
{
    std::map<std::string, std::vector<const Item*>> by_need;
    for (const Item& each : prices().items) {
        by_need[each.serves].push_back(&each);
    }
    for (auto& [need, items] : by_need) {
        std::sort(items.begin(), items.end(),
                  [](const Item* a, const Item* b) { return a->fits_from.value_or(0.0) < b->fits_from.value_or(0.0); });
        for (std::size_t i = 1; i < items.size(); ++i) {
            INFO(need << " at " << items[i]->id);
            REQUIRE(items[i - 1]->fits_to.has_value());
            REQUIRE(items[i]->fits_from.has_value());
            const double gap = *items[i]->fits_from - *items[i - 1]->fits_to;
            CHECK(gap <= (need == "electrical.strip" ? 1.0 : 0.011)); // outlets are whole
        }
    }
}

TEST_CASE("the shipped list says that it is invented, and when")
{
    CHECK(prices().illustrative);
    CHECK(prices().place == "invented");
    CHECK(prices().currency == "USD");
    CHECK(prices().date.size() == 10);
}

TEST_CASE("a compressed brick of coir yields 12 to 15 litres per kilogram, 13 likely")
{
    // Gardening and supplier pages (secondary).
    int seen = 0;
    for (const char* id : {"coir-fine", "coir-chips"}) {
        REQUIRE(item(id) != nullptr);
        for (const Pack& pack : item(id)->packs) {
            if (pack.mass_kg) {
                INFO(id << " " << pack.id);
                CHECK(pack.amount.low == Approx(12.0 * *pack.mass_kg));
                CHECK(pack.amount.likely == Approx(13.0 * *pack.mass_kg));
                CHECK(pack.amount.high == Approx(15.0 * *pack.mass_kg));
                ++seen;
            }
        }
    }
    CHECK(seen == 5);
}

TEST_CASE("a pack in quarts says which quart, and holds that many litres")
{
    int seen = 0;
    for (const Item& each : prices().items) {
        for (const Pack& pack : each.packs) {
            const bool liquid = pack.name.find("liquid quart") != std::string::npos;
            const bool dry = pack.name.find("dry quart") != std::string::npos;
            if (pack.name.find("quart") == std::string::npos) {
                continue;
            }
            INFO(each.id << " " << pack.name);
            REQUIRE(liquid != dry);
            const double count = std::stod(pack.name.substr(pack.name.find("of ") + 3));
            const double quart_l = liquid ? units::us_liquid_quart_l : units::us_dry_quart_l;
            CHECK(pack.amount.likely == Approx(count * quart_l).epsilon(1e-4));
            ++seen;
        }
    }
    CHECK(seen >= 4);
}

TEST_CASE("fifty pounds of play sand are half a cubic foot")
{
    // Common practice: 22.7 kg, about 14 l.
    const Pack& bag = item("play-sand")->packs.front();
    CHECK(*bag.mass_kg == Approx(50.0 * units::pound_kg).epsilon(1e-3));
    CHECK(bag.amount.likely == Approx(0.5 * units::cubic_foot_l).epsilon(1e-3));
}
