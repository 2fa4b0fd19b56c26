// What every place of a balance stores in a unit of its own: J/K for temperatures, J per kg/kg for vapour, nothing for
// what follows at once.
#pragma once

#include <vector>

#include "core/climate/model.hpp"

namespace loam::climate {

// Method: bricks by their material and water; bowls as water; a pane's or cover's heat at its faces, half each, the
// outer ones of a stack together at the outside; air and its vapour in two equal halves, vapour as latent heat.
std::vector<double> storage_of(const Model& model, const Box& box, const Scene& scene);

} // namespace loam::climate
