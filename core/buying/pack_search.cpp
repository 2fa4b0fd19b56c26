#include "core/buying/pack_search.hpp"

#include <algorithm>
#include <limits>
#include <numeric>
#include <queue>
#include <tuple>
#include <unordered_map>

namespace loam::buying {

namespace {

constexpr std::size_t most_partials = 1'000'000;
constexpr std::size_t no_parent = std::numeric_limits<std::size_t>::max();

// A choice of packs other than the best-value one.
struct Partial {
    std::int64_t price = 0;
    std::int64_t yield = 0;
    std::int64_t packs = 0;
    std::size_t parent = no_parent; // without its `last` pack
    std::size_t last = 0;
};

struct Completed {
    std::int64_t price = 0;
    std::int64_t packs = 0;
    std::size_t partial = 0;
    std::int64_t best_value_packs = 0;
};

class Search {
public:
    explicit Search(const Covering& covering)
        : covering_(covering), best_(best_value(covering.packs)), lead_(covering.packs[best_])
    {
        for (const CoverPack& pack : covering.packs) {
            price_step_ = std::gcd(price_step_, pack.price);
        }
    }

    std::optional<Counts> run()
    {
        wait({});
        while (!queue_.empty()) {
            const std::size_t index = std::get<3>(queue_.top());
            queue_.pop();
            const Partial partial = partials_[index];
            if (index != 0 && !worth_keeping(partial)) {
                continue;
            }
            keep(partial);
            complete(partial, index);
            if (!extend(partial, index)) {
                return std::nullopt;
            }
        }
        return counts();
    }

private:
    // What the packs cost beyond the best rate, times the lead's yield. Never below zero, and never lowered by a
    // further pack; within one residue it orders the partial choices by what they yield for their price.
    Wide loss(const Partial& partial) const
    {
        return static_cast<Wide>(partial.price) * lead_.yield - static_cast<Wide>(partial.yield) * lead_.price;
    }

    bool worth_keeping(const Partial& partial) const
    {
        if (partial.price >= shortest_.price) {
            return false;
        }
        // No completion is cheaper than buying the rest at the best rate, in whole steps of price.
        const Wide rest = std::max<Wide>(0, static_cast<Wide>(covering_.demand) - partial.yield);
        const Wide room = static_cast<Wide>(shortest_.price) - price_step_ - partial.price;
        if (rest * lead_.price > room * lead_.yield) {
            return false;
        }
        // Whatever was kept for the residue has lost no more, so only a lower price can tell for this one.
        const auto kept = cheapest_.find(partial.price % lead_.price);
        return kept == cheapest_.end() || partial.price < kept->second;
    }

    void keep(const Partial& partial) { cheapest_[partial.price % lead_.price] = partial.price; }

    void wait(const Partial& partial)
    {
        queue_.push({loss(partial), partial.price, partial.packs, partials_.size()});
        partials_.push_back(partial);
    }

    void complete(const Partial& partial, std::size_t index)
    {
        const std::int64_t more = divided_up(covering_.demand - partial.yield, lead_.yield);
        const Completed candidate{partial.price + more * lead_.price, partial.packs + more, index, more};
        if (std::tie(candidate.price, candidate.packs) < std::tie(shortest_.price, shortest_.packs)) {
            shortest_ = candidate;
        }
    }

    // false where there are too many.
    bool extend(const Partial& partial, std::size_t index)
    {
        if (partial.yield >= covering_.demand) {
            return true;
        }
        for (std::size_t i = 0; i < covering_.packs.size(); ++i) {
            const CoverPack& pack = covering_.packs[i];
            if (i == best_) {
                continue;
            }
            const Partial next{partial.price + pack.price, partial.yield + pack.yield, partial.packs + 1, index, i};
            if (!worth_keeping(next)) {
                continue;
            }
            if (partials_.size() >= most_partials) {
                return false;
            }
            wait(next);
        }
        return true;
    }

    Counts counts() const
    {
        Counts result(covering_.packs.size(), 0);
        result[best_] = shortest_.best_value_packs;
        for (std::size_t at = shortest_.partial; partials_[at].parent != no_parent; at = partials_[at].parent) {
            ++result[partials_[at].last];
        }
        return result;
    }

    const Covering& covering_;
    std::size_t best_;
    CoverPack lead_;
    std::int64_t price_step_ = 0;
    std::vector<Partial> partials_;
    using Waiting = std::tuple<Wide, std::int64_t, std::int64_t, std::size_t>; // loss, price, packs, index
    std::priority_queue<Waiting, std::vector<Waiting>, std::greater<>> queue_;
    std::unordered_map<std::int64_t, std::int64_t> cheapest_; // price kept, by its residue
    Completed shortest_{std::numeric_limits<std::int64_t>::max(), std::numeric_limits<std::int64_t>::max(), 0, 0};
};

} // namespace

std::optional<Counts> choose_by_search(const Covering& covering)
{
    const std::size_t best = best_value(covering.packs);
    const CoverPack& lead = covering.packs[best];
    const std::int64_t alone = divided_up(covering.demand, lead.yield);
    if (lead.price == 0) {
        Counts counts(covering.packs.size(), 0);
        counts[best] = alone;
        return counts;
    }
    // A quarter of the largest number leaves room for one more pack in every sum below.
    constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max() / 4;
    Wide dearest = 0;
    for (const CoverPack& pack : covering.packs) {
        dearest = std::max<Wide>(dearest, std::max(pack.price, pack.yield));
    }
    if (static_cast<Wide>(alone) * lead.price > most || dearest > most || covering.demand > most) {
        return std::nullopt;
    }
    return Search(covering).run();
}

} // namespace loam::buying
