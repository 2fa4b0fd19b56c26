// What the fine balance is conditioned with: its bricks as even layers, and how those answer heat on the floor.
#pragma once

#include <cstddef>
#include <memory>
#include <vector>

#include "core/climate/balance.hpp"
#include "core/climate/layered.hpp"

namespace loam::climate {

// Layers as conductive as the model's are on average, held by the mean of the slopes' diagonal.
Layers mean_layers(const Model& model, const Slopes& slopes);

// Immutable, so that cases solved side by side may share one.
struct Conditioner {
    explicit Conditioner(const Layers& given, const std::vector<std::size_t>& floor_patch);

    Layers layers;
    LayeredSolver solver;
    std::size_t floor_patches = 0;
    std::vector<double> answers; // K, of all bricks, to one watt on each column of a floor patch; patch by patch
};

// Whether layers differ so little that one conditioner serves both; what is left costs some iterations, no accuracy.
bool alike(const Layers& a, const Layers& b);

} // namespace loam::climate
