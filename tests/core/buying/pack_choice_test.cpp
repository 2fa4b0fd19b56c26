#include "core/buying/pack_choice.hpp"

#include <array>
#include <chrono>
#include <cmath>
#include <functional>
#include <limits>

#include "core/buying/pack_grid.hpp"
#include "core/buying/pack_search.hpp"
#include "tests/catch.hpp"
#include "tests/core/buying/dice.hpp"

using namespace loam;
using namespace loam::buying;

namespace {

struct Sums {
    std::int64_t price = 0;
    std::int64_t packs = 0;
    std::int64_t yield = 0;
};

using Key = std::array<std::int64_t, 3>;

Key key(const Sums& sums, Aim aim)
{
    switch (aim) {
    case Aim::fewest_packs:
        return {sums.packs, sums.price, sums.yield};
    case Aim::least_left_over:
        return {sums.yield, sums.price, sums.packs};
    case Aim::cheapest:
        break;
    }
    return {sums.price, sums.packs, sums.yield};
}

Sums sums_of(const Covering& covering, const Counts& counts)
{
    Sums sums;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        sums.price += counts[i] * covering.packs[i].price;
        sums.packs += counts[i];
        sums.yield += counts[i] * covering.packs[i].yield;
    }
    return sums;
}

// Every combination in which no pack could be left out.
void try_all(const Covering& covering, Aim aim, std::size_t from, const Sums& so_far, Key& best)
{
    if (so_far.yield >= covering.demand) {
        best = std::min(best, key(so_far, aim));
        return;
    }
    for (std::size_t i = from; i < covering.packs.size(); ++i) {
        const CoverPack& pack = covering.packs[i];
        try_all(covering, aim, i, {so_far.price + pack.price, so_far.packs + 1, so_far.yield + pack.yield}, best);
    }
}

Key by_trying_all(const Covering& covering, Aim aim)
{
    Key best;
    best.fill(std::numeric_limits<std::int64_t>::max());
    try_all(covering, aim, 0, {}, best);
    return best;
}

// The least price by growing the budget one minor unit at a time: most[b] is the largest yield that b buys.
// An independent method for demands that are too large to try all.
std::int64_t by_growing_budget(const Covering& covering)
{
    std::vector<std::int64_t> most{0};
    while (most.back() < covering.demand) {
        const auto budget = static_cast<std::int64_t>(most.size());
        std::int64_t yield = most.back();
        for (const CoverPack& pack : covering.packs) {
            if (pack.price <= budget) {
                yield = std::max(yield, pack.yield + most[static_cast<std::size_t>(budget - pack.price)]);
            }
        }
        most.push_back(yield);
    }
    return static_cast<std::int64_t>(most.size()) - 1;
}

Covering random_covering(Dice& dice, std::int64_t most_packs, std::int64_t largest_yield, std::int64_t largest_demand)
{
    Covering covering{dice.between(1, largest_demand), {}};
    const std::int64_t packs = dice.between(1, most_packs);
    for (std::int64_t i = 0; i < packs; ++i) {
        covering.packs.push_back({dice.between(largest_yield / 8 + 1, largest_yield), dice.between(1, 60)});
    }
    return covering;
}

double seconds_of(const std::function<void()>& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

} // namespace

TEST_CASE("On small instances the grid finds what trying every combination finds, for every aim and to the last tie")
{
    Dice dice(20240617);
    for (int instance = 0; instance < 1000; ++instance) {
        const Covering covering = random_covering(dice, 4, 24, 90);
        for (const Aim aim : {Aim::cheapest, Aim::fewest_packs, Aim::least_left_over}) {
            const auto counts = choose_on_grid(covering, aim);
            REQUIRE(counts);
            CAPTURE(instance, covering.demand, static_cast<int>(aim));
            REQUIRE(key(sums_of(covering, *counts), aim) == by_trying_all(covering, aim));
        }
    }
}

TEST_CASE("On small instances the search finds the price that trying every combination finds")
{
    Dice dice(97);
    for (int instance = 0; instance < 1000; ++instance) {
        const Covering covering = random_covering(dice, 5, 24, 90);
        const auto counts = choose_by_search(covering);
        REQUIRE(counts);
        const Sums sums = sums_of(covering, *counts);
        CAPTURE(instance, covering.demand);
        REQUIRE(sums.yield >= covering.demand);
        REQUIRE(sums.price == by_trying_all(covering, Aim::cheapest)[0]);
    }
}

TEST_CASE("On large instances grid, search and a growing budget agree on the price")
{
    Dice dice(5);
    for (int instance = 0; instance < 200; ++instance) {
        const Covering covering = random_covering(dice, 6, 400, 60000);
        const auto on_grid = choose_on_grid(covering, Aim::cheapest);
        const auto by_search = choose_by_search(covering);
        REQUIRE(on_grid);
        REQUIRE(by_search);
        const std::int64_t least = by_growing_budget(covering);
        CAPTURE(instance, covering.demand);
        REQUIRE(sums_of(covering, *on_grid).price == least);
        REQUIRE(sums_of(covering, *by_search).price == least);
        REQUIRE(sums_of(covering, *on_grid).yield >= covering.demand);
        REQUIRE(sums_of(covering, *by_search).yield >= covering.demand);
    }
}

TEST_CASE("Where all packs are nearly the same value the search and a growing budget still agree")
{
    Dice dice(6);
    for (int instance = 0; instance < 200; ++instance) {
        Covering covering{dice.between(1, 40000), {}};
        for (int i = 0; i < 5; ++i) {
            const std::int64_t yield = dice.between(300, 2400);
            covering.packs.push_back({yield, yield / 4 + dice.between(0, 3)});
        }
        const auto counts = choose_by_search(covering);
        REQUIRE(counts);
        CAPTURE(instance, covering.demand);
        REQUIRE(sums_of(covering, *counts).yield >= covering.demand);
        REQUIRE(sums_of(covering, *counts).price == by_growing_budget(covering));
    }
}

TEST_CASE("A better rate does not hide a smaller pack of the same residue where the demand is small")
{
    // By hand: 1000 at 10 is the best rate. 1770 at 18 and 1260 at 13 lose less than 755 at 8 and 250 at 3, to whose
    // residues modulo 10 they belong; yet 755 + 250 covers 1005 for 11, and no other choice costs 11 or less.
    const Covering covering{1005, {{1000, 10}, {250, 3}, {1260, 13}, {755, 8}, {1770, 18}}};
    CHECK(choose_by_search(covering) == Counts{0, 1, 0, 1, 0});
}

TEST_CASE("Prices in proportion to the yields, where no bound helps, are still solved")
{
    // An odd demand and even packs at the same price per litre: the search can't stop at the bound.
    Covering covering{9'999'999, {}};
    for (const std::int64_t yield : {1998, 3002, 4006, 5014, 7026}) {
        covering.packs.push_back({yield, yield});
    }
    const auto counts = choose_by_search(covering);
    REQUIRE(counts);
    CHECK(sums_of(covering, *counts).price == 10'000'000);
}

TEST_CASE("A hundred thousand litres in packs of odd yields are chosen at once")
{
    // Speed only; the price is checked against the growing budget.
    const std::vector<PackCandidate> packs{{{7.123457, 8, 9}, 1099},    {{22.710001, 24, 25}, 2899},
                                           {{49.999999, 52, 55}, 5475}, {{69.31, 70, 72}, 7999},
                                           {{3.3, 3.5, 4}, 499},        {{113.7, 115, 120}, 12349}};
    Covering covering{100'000'000'000, {}};
    for (const PackCandidate& pack : packs) {
        covering.packs.push_back({std::llround(pack.amount.low * 1e6), pack.price_minor});
    }
    std::optional<PackChoice> choice;
    const double seconds = seconds_of([&] { choice = choose_packs(100'000.0, packs); });
    REQUIRE(choice);
    CHECK(seconds < 1.0);
    CHECK(choice->price_minor == by_growing_budget(covering));
    CHECK(choice->left_over.low >= 0.0);
}

TEST_CASE("Three bags of 0.7 litres cover 2.1 litres although three times 0.7 is less in doubles")
{
    REQUIRE(0.7 + 0.7 + 0.7 < 2.1);
    const auto choice = choose_packs(2.1, {{exactly(0.7), 100}});
    REQUIRE(choice);
    CHECK(choice->packs == 3);
    CHECK(choice->left_over.low == 0.0);
}

TEST_CASE("The low yield decides, and the left-over spans the yields")
{
    const auto choice = choose_packs(21.0, {{{7.0, 8.0, 9.0}, 900}, {{10.4, 12.0, 13.0}, 1400}});
    REQUIRE(choice);
    CHECK(choice->counts == std::vector<std::int64_t>{3, 0}); // 27.00; two large ones are 20.8 l, a bag short
    CHECK(choice->left_over.low == Approx(0.0).margin(1e-12));
    CHECK(choice->left_over.likely == Approx(3.0));
    CHECK(choice->left_over.high == Approx(6.0));
}

TEST_CASE("Each aim takes another way where they differ")
{
    // 12 l of: 4 l at 4.00, 9 l at 8.00, 20 l at 13.00. By hand: 4+9 at 12.00; 20 at 13.00; 3 x 4 at 12.00 and exact.
    const std::vector<PackCandidate> packs{{exactly(4.0), 400}, {exactly(9.0), 800}, {exactly(20.0), 1300}};
    CHECK(choose_packs(12.0, packs, Aim::cheapest)->counts == std::vector<std::int64_t>{1, 1, 0});
    CHECK(choose_packs(12.0, packs, Aim::fewest_packs)->counts == std::vector<std::int64_t>{0, 0, 1});
    CHECK(choose_packs(12.0, packs, Aim::least_left_over)->counts == std::vector<std::int64_t>{3, 0, 0});
}

TEST_CASE("Nothing needed is nothing bought, and what can't be counted is refused")
{
    const std::vector<PackCandidate> packs{{exactly(4.0), 400}};
    CHECK(choose_packs(0.0, packs)->packs == 0);
    CHECK_FALSE(choose_packs(-1.0, packs));
    CHECK_FALSE(choose_packs(std::nan(""), packs));
    CHECK_FALSE(choose_packs(1e13, packs));
    CHECK_FALSE(choose_packs(1.0, {}));
    CHECK_FALSE(choose_packs(1.0, {{exactly(0.0), 400}}));
    CHECK_FALSE(choose_packs(1.0, {{exactly(1.0), -1}}));
    CHECK_FALSE(choose_packs(1e12, {{exactly(0.001), 100'000'000}})); // 10^23 minor units
}

TEST_CASE("A free pack is taken before any that costs money")
{
    const auto choice = choose_packs(10.0, {{exactly(50.0), 1}, {exactly(3.0), 0}, {exactly(4.0), 0}});
    REQUIRE(choice);
    CHECK(choice->price_minor == 0);
    CHECK(choice->packs == 3);
}
