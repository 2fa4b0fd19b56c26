// What boxes of one shape have in common, whatever their devices draw and the weather is: kept in a workspace, so that
// the cases of one box and the tries of a search lay out the box and cast its lamps only once.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

#include "core/climate/model.hpp"

namespace loam::climate {

struct Prepared {
    Box shape; // without what neither the scene nor the order depends on
    Cells cells;
    Scene scene;                    // its dryness is that of the box it was made for
    std::vector<std::size_t> order; // of elimination; empty: not yet known
};

// The scene of `box`, bit for bit as if made anew: the kept one where the shape is the same, with only those lamps cast
// that are new where just lamps differ. nullopt where the box is not physical.
std::optional<Scene> scene_for(const Box& box, const Cells& cells, Workspace::Level& level);

// The order of elimination for the model of that scene.
const std::vector<std::size_t>& order_for(const Model& model, Workspace::Level& level);

} // namespace loam::climate
