// Newton's method on the coupled balance.
#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/climate/balance.hpp"
#include "core/climate/bordered.hpp"

namespace loam::climate {

struct Solution {
    std::vector<double> values;
    Balance balance = {};    // at these values
    double residual_w = 0.0; // largest
    int iterations = 0;
    bool converged = false;
};

std::vector<double> room_start(const Model& model);
bool fits(const Model& model, const std::vector<double>& start);

// Method: damped Newton; the factors are kept while they still cut the residual well. Converged below 1e-10 of the
// power (at least of 1 W), so that the sum over all places stays below 1e-6 of it.
// nullopt only where `stop` was requested. `solver` is left with factors near the solution.
std::optional<Solution> solve(const Model& model, std::vector<double> start, BorderedSolver& solver,
                              const std::stop_token& stop);

// Factors at the solution itself, for sensitivities.
bool factor_at(const Model& model, const Solution& solution, BorderedSolver& solver);

} // namespace loam::climate
