// The coupled balance of heat and vapour: residual and slopes.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/climate/model.hpp"

namespace loam::climate {

// Slopes of the residual, split as the solver wants them: bricks among each other are the model's links plus a
// diagonal; bricks against the shared places as columns; the rest small and dense.
struct Slopes {
    struct Entry {
        std::size_t row = 0;
        std::size_t column = 0;
        double value = 0.0;
    };
    std::vector<double> diagonal;    // of the bricks, beside the links
    std::vector<Entry> brick_shared; // row a brick, column a shared place (counted from 0)
    std::vector<Entry> shared_brick; // row a shared place, column a brick
    std::vector<Entry> shared_shared;
    void clear(std::size_t bricks);
};

// Heat that leaves to the room, W, by way.
struct Losses {
    double conducted_w = 0.0; // panes, covers, base, flanks: convection and radiation at their outside
    double radiated_w = 0.0;  // through the mesh
    double air_w = 0.0;
    double vapour_w = 0.0;
    double sum_w() const { return conducted_w + radiated_w + air_w + vapour_w; }
};

struct Balance {
    std::vector<double> residual_w; // what leaves each place less what arrives; vapour as latent heat
    Losses losses;
    double evaporation_kg_s = 0.0;  // from bed and bowls
    double condensation_kg_s = 0.0; // on panes, and on the bed where it is colder than the dew point
    double input_w = 0.0;           // released inside the box
    double drawn_w = 0.0;           // by all devices
};

// nullopt where a temperature is out of the range of an equation. Fills `slopes` where given.
std::optional<Balance> balance(const Model& model, const std::vector<double>& solution, Slopes* slopes);

double power_w(const Device& device, const Layout& layout, const std::vector<double>& solution);

} // namespace loam::climate
