// The coupled balance of heat and vapour: residual and slopes.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
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
    // What bricks emit reaches the irradiation of every patch: row `first_irradiation` + p takes
    // spread[p * patches + patch] times slope. Kept apart, since as entries they would outnumber all others.
    struct Emitter {
        std::size_t patch = 0;
        std::size_t brick = 0;
        double slope = 0.0; // W/K
    };
    std::vector<Emitter> emitters;
    std::vector<double> spread;
    std::size_t patches = 0;
    std::size_t first_irradiation = 0; // among the shared places

    void clear(std::size_t bricks);
    // Adds, to each shared place, what its slopes against the bricks make of these values of theirs.
    void add_from_bricks(std::span<const double> of_bricks, std::span<double> to_shared) const;
    // The same transposed: from the shared places to the bricks.
    void add_to_bricks(std::span<const double> of_shared, std::span<double> to_bricks) const;
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
