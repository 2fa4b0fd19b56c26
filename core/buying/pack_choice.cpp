#include "core/buying/pack_choice.hpp"

#include <algorithm>
#include <limits>

#include "core/buying/covering.hpp"
#include "core/buying/pack_grid.hpp"
#include "core/buying/pack_search.hpp"
#include "core/buying/quantity.hpp"

namespace loam::buying {

std::size_t best_value(const std::vector<CoverPack>& packs)
{
    std::size_t best = 0;
    for (std::size_t i = 1; i < packs.size(); ++i) {
        const Wide here = static_cast<Wide>(packs[i].yield) * packs[best].price;
        const Wide there = static_cast<Wide>(packs[best].yield) * packs[i].price;
        if (here > there || (here == there && packs[i].yield > packs[best].yield)) {
            best = i;
        }
    }
    return best;
}

namespace {

std::optional<Covering> covering_of(std::int64_t demand, const std::vector<PackCandidate>& candidates)
{
    Covering covering{demand, {}};
    for (const PackCandidate& candidate : candidates) {
        const auto yield = millionths(candidate.amount.low);
        if (!yield || *yield == 0 || candidate.price_minor < 0) {
            return std::nullopt;
        }
        covering.packs.push_back({*yield, candidate.price_minor});
    }
    return covering;
}

// nullopt where the total price does not fit.
std::optional<PackChoice> described(const Counts& counts, double amount, const std::vector<PackCandidate>& candidates)
{
    PackChoice choice;
    choice.counts = counts;
    Wide price = 0;
    Wide low = 0; // in millionths, so that nothing over is nothing
    Range sum;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        const auto count = static_cast<double>(counts[i]);
        choice.packs += counts[i];
        price += static_cast<Wide>(counts[i]) * candidates[i].price_minor;
        low += static_cast<Wide>(counts[i]) * millionths(candidates[i].amount.low).value_or(0);
        sum.likely += count * candidates[i].amount.likely;
        sum.high += count * candidates[i].amount.high;
    }
    if (price > std::numeric_limits<std::int64_t>::max()) {
        return std::nullopt;
    }
    choice.price_minor = static_cast<std::int64_t>(price);
    choice.left_over.low = static_cast<double>(low - millionths(amount).value_or(0)) / millionths_per_unit;
    choice.left_over.likely = std::max(choice.left_over.low, sum.likely - amount);
    choice.left_over.high = std::max(choice.left_over.likely, sum.high - amount);
    return choice;
}

} // namespace

std::optional<PackChoice> choose_packs(double amount, const std::vector<PackCandidate>& candidates, Aim aim)
{
    const auto demand = millionths(amount);
    if (!demand) {
        return std::nullopt;
    }
    if (*demand == 0) {
        return PackChoice{Counts(candidates.size(), 0), 0, 0, {}};
    }
    const auto covering = covering_of(*demand, candidates);
    if (!covering || covering->packs.empty()) {
        return std::nullopt;
    }
    auto counts = choose_on_grid(*covering, aim);
    if (!counts && aim == Aim::cheapest) {
        counts = choose_by_search(*covering);
    }
    return counts ? described(*counts, amount, candidates) : std::nullopt;
}

} // namespace loam::buying
