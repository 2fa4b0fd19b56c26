// Exact cheapest choice for yields without a common measure and for large demands.
#pragma once

#include <optional>

#include "core/buying/covering.hpp"

namespace loam::buying {

// Method: shortest path over the residues of the price modulo the price c of the best-value pack (yield a). A partial
// choice of other packs is filled up with best-value packs. Of two partial choices whose prices differ by k c, the
// cheaper one plus k best-value packs costs the same; where it also yields as much, the other one is dropped. Taken in
// the order of what they lose against the best value's rate, few stay for each residue, and the search ends where the
// loss alone makes the rest too dear. Of equally cheap choices it returns the first that it meets in that order.
// Range: nullopt where a total price does not fit, or after a million partial choices.
// Source: Gilmore and Gomory 1966 (see pack_choice.hpp), from memory; derivation above.
std::optional<Counts> choose_by_search(const Covering& covering);

} // namespace loam::buying
