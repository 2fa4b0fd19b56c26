// How far each reported figure may be off, and which input decides it.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/climate/combine.hpp"
#include "core/climate/inputs.hpp"
#include "core/climate/newton.hpp"
#include "core/climate/quantities.hpp"

namespace loam::climate {

// A state of the box beside the likely one, of which the ranges must take account.
struct OtherState {
    std::string name;
    std::vector<double> values; // of the quantities
};

struct Solved {
    const Box& box;
    const Case& now;
    const Scene& scene;
    const Model& model;
    const Solution& solution;
    const Places& places;
    const Quantities& quantities;
};

struct Effects {
    std::vector<double> likely; // of the quantities
    std::vector<InputEffect> inputs;
};

// Method: each input in turn goes to the ends of its range; the change of every figure follows from the adjoint of the
// converged balance (one transposed solve per figure, one residual per end), where it is not small corrected by one
// step towards the end's own solution. Where it is large, or takes a thermostat past its limits, the balance is solved
// again at the end. `solver` must hold factors at the solution. nullopt only where `stop` was requested.
std::optional<Effects> find_effects(const Solved& solved, BorderedSolver& solver, const std::stop_token& stop);

// The effects of all inputs and of the other states, combined.
std::optional<std::vector<QuantityRange>> find_ranges(const Solved& solved, BorderedSolver& solver,
                                                      const std::vector<OtherState>& others,
                                                      const std::stop_token& stop);

} // namespace loam::climate
