// Newton's method on a balance too fine to be factored.
#pragma once

#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/climate/conditioner.hpp"
#include "core/climate/fine_scratch.hpp"
#include "core/climate/newton.hpp"

namespace loam::climate {

// Method: damped inexact Newton; each step is solved as well as the last one paid (Eisenstat & Walker 1996, choice 2;
// from memory). `conditioner` is used where it suits and replaced where it does not. Converged where the residuals add
// up to less than 4e-7 of the power (at least of 1 W). nullopt only where `stop` was requested.
std::optional<Solution> solve_fine(const Model& model, std::vector<double> start,
                                   std::shared_ptr<const Conditioner>& conditioner, FineScratch& scratch,
                                   const std::stop_token& stop);

} // namespace loam::climate
