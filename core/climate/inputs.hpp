// The uncertain inputs of a balance, each by a name that tells the keeper what to measure.
#pragma once

#include <functional>
#include <string>

#include "core/climate/box.hpp"
#include "core/climate/model.hpp"

namespace loam::climate {

// Names: "room.temperature", "room.relative-humidity", "walls.conductivity", "base.…", "top.…", "mesh.open-fraction",
// "bed.<material>.…", "underlay.<material>.…", "model.film-factor" and the other model coefficients, "misting"; of
// things with ids "<id>.power", "<id>.radiant-share", "<id>.convective-share", "<id>.beam", "<id>.leak", ….
using VisitInput = std::function<void(const std::string& name, Range& range, const Parts& reaches)>;
void visit_inputs(Box& box, Case& now, const VisitInput& visit);

inline constexpr const char* dampness_input = "bed.dampness"; // lamp-dried or just misted

} // namespace loam::climate
