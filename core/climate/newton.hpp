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
    int linear_iterations = 0; // of an iterative solver inside
    bool converged = false;
};

std::vector<double> room_start(const Model& model);
bool fits(const Model& model, const std::vector<double>& start);

// Method: damped Newton; the factors are kept while they still cut the residual well. Converged where every
// residual is below `share` of the power (at least of 1 W); 1e-10 keeps the sum over all places below 1e-6 of it.
// nullopt only where `stop` was requested. `solver` is left with factors near the solution.
inline constexpr double exact_share = 1e-10;
inline constexpr double nearby_share = 1e-5; // moves no reading by 0.01 K; enough for the ends of ranges
std::optional<Solution> solve(const Model& model, std::vector<double> start, BorderedSolver& solver,
                              const std::stop_token& stop, double share = exact_share);

// From a kept start where there is one, else from the room's state; from that also where the start misled.
std::optional<Solution> solve_from(const std::vector<double>* start, const Model& model, BorderedSolver& solver,
                                   const std::stop_token& stop);

// As `solve` for a model near one whose factors `solver` holds: fixed slopes, no new factors, converged to
// `nearby_share`; nullopt where that does not get there in a few steps.
std::optional<Solution> solve_nearby(const Model& model, const std::vector<double>& start,
                                     const BorderedSolver& solver);

// Factors at the solution itself, for sensitivities.
bool factor_at(const Model& model, const Solution& solution, BorderedSolver& solver);

} // namespace loam::climate
