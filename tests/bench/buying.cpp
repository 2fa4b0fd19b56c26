// How long the choice of packs for one need takes, by aim and by how much is needed. Aim: under 1 ms for amounts that a
// keeper or a club buys. Run: bench_buying, on an idle machine.
#include <algorithm>
#include <array>
#include <cstdio>
#include <ctime>
#include <random>
#include <vector>

#include "core/buying/pack_choice.hpp"
#include "tests/catch.hpp"

using namespace loam;
using namespace loam::buying;

namespace {

struct Spread {
    double median_ms = 0.0;
    double longest_ms = 0.0;
};

std::vector<PackCandidate> random_packs(std::mt19937& dice)
{
    std::vector<PackCandidate> packs(1 + dice() % 6);
    for (PackCandidate& pack : packs) {
        pack.amount = exactly(0.1 * static_cast<double>(5 + dice() % 995)); // 0.5 to 100 l
        pack.price_minor = 100 + static_cast<std::int64_t>(dice() % 9900);
    }
    return packs;
}

// Processor time of one choice, over many random sets of packs.
Spread spread(double amount, Aim aim)
{
    constexpr int sets = 301;
    std::mt19937 dice(7);
    std::vector<double> times_ms;
    for (int set = 0; set < sets; ++set) {
        const std::vector<PackCandidate> packs = random_packs(dice);
        const std::clock_t begin = std::clock();
        const auto choice = choose_packs(amount, packs, aim);
        times_ms.push_back(1000.0 * static_cast<double>(std::clock() - begin) / static_cast<double>(CLOCKS_PER_SEC));
        REQUIRE(choice);
    }
    std::sort(times_ms.begin(), times_ms.end());
    return {times_ms[sets / 2], times_ms.back()};
}

} // namespace

TEST_CASE("Choice of packs for one need", "[bench]")
{
    std::printf("processor time of one choice among up to six packs, median and longest, ms\n");
    for (const double amount : {1.0, 86.4, 1000.0, 20000.0}) {
        const std::array spreads{spread(amount, Aim::cheapest), spread(amount, Aim::fewest_packs),
                                 spread(amount, Aim::least_left_over)};
        std::printf("%7.0f l  cheapest %.3f %.3f   fewest packs %.3f %.3f   least left over %.3f %.3f\n", amount,
                    spreads[0].median_ms, spreads[0].longest_ms, spreads[1].median_ms, spreads[1].longest_ms,
                    spreads[2].median_ms, spreads[2].longest_ms);
    }
}
