#include "core/buying/pack_grid.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <limits>
#include <numeric>

namespace loam::buying {

namespace {

constexpr std::int64_t most_steps = 1'000'000;

struct Criteria {
    std::int64_t price = 0;
    std::int64_t packs = 0;
    std::int64_t yield = 0;
};

using Key = std::array<std::int64_t, 3>;

Key key(const Criteria& of, Aim aim)
{
    switch (aim) {
    case Aim::fewest_packs:
        return {of.packs, of.price, of.yield};
    case Aim::least_left_over:
        return {of.yield, of.price, of.packs};
    case Aim::cheapest:
        break;
    }
    return {of.price, of.packs, of.yield};
}

std::size_t largest_pack(const std::vector<CoverPack>& packs)
{
    std::size_t best = 0;
    for (std::size_t i = 1; i < packs.size(); ++i) {
        const bool larger = packs[i].yield > packs[best].yield;
        const bool cheaper = packs[i].yield == packs[best].yield && packs[i].price < packs[best].price;
        best = larger || cheaper ? i : best;
    }
    return best;
}

std::int64_t common_measure(const std::vector<CoverPack>& packs)
{
    std::int64_t measure = 0;
    for (const CoverPack& pack : packs) {
        measure = std::gcd(measure, pack.yield);
    }
    return measure;
}

// How many of the leading pack every demand of this size may start with (see the header).
std::int64_t certain_count(const Covering& in_steps, std::size_t leading)
{
    std::int64_t largest = 0;
    for (const CoverPack& pack : in_steps.packs) {
        largest = std::max(largest, pack.yield);
    }
    const std::int64_t lead = in_steps.packs[leading].yield;
    const Wide by_others = static_cast<Wide>(lead - 1) * largest;
    if (by_others >= in_steps.demand) {
        return 0;
    }
    return divided_up(in_steps.demand - static_cast<std::int64_t>(by_others), lead);
}

// Whether every total price on the way fits: never more packs than steps of demand.
bool prices_fit(const Covering& in_steps)
{
    Wide dearest = 0;
    for (const CoverPack& pack : in_steps.packs) {
        dearest = std::max<Wide>(dearest, pack.price);
    }
    return dearest * (in_steps.demand + 1) <= std::numeric_limits<std::int64_t>::max();
}

// Fills `counts` with the best choice for the demand.
void solve(const Covering& in_steps, Aim aim, Counts& counts)
{
    const auto steps = static_cast<std::size_t>(in_steps.demand);
    std::vector<Criteria> best(steps + 1);
    std::vector<std::size_t> last(steps + 1, 0);
    for (std::size_t step = 1; step <= steps; ++step) {
        Key lowest{};
        for (std::size_t i = 0; i < in_steps.packs.size(); ++i) {
            const CoverPack& pack = in_steps.packs[i];
            const auto yield = static_cast<std::size_t>(pack.yield);
            const Criteria& rest = best[step > yield ? step - yield : 0];
            const Criteria sum{rest.price + pack.price, rest.packs + 1, rest.yield + pack.yield};
            const Key candidate = key(sum, aim);
            if (i == 0 || candidate < lowest) {
                lowest = candidate;
                best[step] = sum;
                last[step] = i;
            }
        }
    }
    for (std::size_t step = steps; step > 0;) {
        const std::size_t i = last[step];
        ++counts[i];
        const auto yield = static_cast<std::size_t>(in_steps.packs[i].yield);
        step = step > yield ? step - yield : 0;
    }
}

} // namespace

std::optional<Counts> choose_on_grid(const Covering& covering, Aim aim)
{
    const std::int64_t measure = common_measure(covering.packs);
    assert(measure > 0);
    Covering in_steps = covering;
    in_steps.demand = divided_up(covering.demand, measure);
    for (CoverPack& pack : in_steps.packs) {
        pack.yield /= measure;
    }
    if (!prices_fit(in_steps)) {
        return std::nullopt;
    }
    const std::size_t leading = aim == Aim::fewest_packs ? largest_pack(in_steps.packs) : best_value(in_steps.packs);
    const std::int64_t certain = certain_count(in_steps, leading);
    in_steps.demand = std::max<std::int64_t>(0, in_steps.demand - certain * in_steps.packs[leading].yield);
    if (in_steps.demand > most_steps) {
        return std::nullopt;
    }
    Counts counts(covering.packs.size(), 0);
    counts[leading] = certain;
    solve(in_steps, aim, counts);
    return counts;
}

} // namespace loam::buying
