// Exact choice over a grid of amounts; fast while the yields have a coarse common measure.
#pragma once

#include <optional>

#include "core/buying/covering.hpp"
#include "core/buying/pack_choice.hpp"

namespace loam::buying {

// Method: dynamic programming over the demand in steps of the yields' greatest common divisor g, with the tuple of
// `aim`'s criteria as cost (tuples add up and compare in order, so the recursion holds for them). Large demands are
// cut down first: of any a/g packs other than the leading one (yield a), some have a total yield that is a multiple
// of a; leading packs give the same yield and are no worse in any criterion, so some best choice has fewer than a/g
// other packs, and the rest of the demand is leading packs.
// Range: nullopt where more than a million steps would remain, or a total price does not fit.
// Source: Gilmore and Gomory 1966 (see pack_choice.hpp); the exchange argument is the usual pigeonhole one.
std::optional<Counts> choose_on_grid(const Covering& covering, Aim aim);

} // namespace loam::buying
