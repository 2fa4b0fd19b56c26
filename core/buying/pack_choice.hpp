// Which whole packs cover an amount.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/explain.hpp"

namespace loam::buying {

enum class Level { low, typical, high };

enum class Aim {
    cheapest,       // then fewest packs, then least left over (not where pack_search.hpp has to do it)
    fewest_packs,   // then cheapest, then least left over
    least_left_over // then cheapest, then fewest packs
};

struct PackCandidate {
    Range amount;                 // what one pack yields; the low end counts, so that nobody is a bag short
    std::int64_t price_minor = 0; // in minor units of the one currency
};

struct PackChoice {
    std::vector<std::int64_t> counts; // one for each candidate
    std::int64_t packs = 0;
    std::int64_t price_minor = 0;
    Range left_over; // over the yields
    friend bool operator==(const PackChoice&, const PackChoice&) = default;
};

// The best multiset of packs whose low yields add up to at least `amount`. The same input gives the same choice.
//
// Method: integer programme, min sum c_i x_i subject to sum a_i x_i >= amount, amounts counted in millionths of the
// unit. Exact for its aim; see pack_grid.hpp and pack_search.hpp for how.
// Range: nullopt where a candidate's low yield is not above zero or there is none, a figure is negative or not finite,
// or the instance is too large or too fine to be solved exactly. An amount under half a millionth is nothing.
// Source: P. C. Gilmore and R. E. Gomory, "The theory and computation of knapsack functions", Operations Research 14
// (1966), for the periodic structure that both methods use (from memory).
std::optional<PackChoice> choose_packs(double amount, const std::vector<PackCandidate>& candidates,
                                       Aim aim = Aim::cheapest);

} // namespace loam::buying
