// What stands on the stand: the mass of the shell and of everything in it.
#pragma once

#include <optional>
#include <vector>

#include "core/explain.hpp"

namespace loam::substrate {

struct Panel {
    double thickness_m = 0.0;
    Range density_kg_m3;
    friend bool operator==(const Panel&, const Panel&) = default;
};

// Inner dimensions; the walls stand on the base, the side walls between front and back.
struct ShellForm {
    double length_m = 0.0;
    double width_m = 0.0;
    double height_m = 0.0;
    Panel walls;
    Panel base;
    std::optional<Panel> top;                  // a pane or board; a mesh or an open top weighs nothing here
    std::optional<Panel> front = std::nullopt; // where they differ from the walls
    std::optional<Panel> back = std::nullopt;
    std::optional<Panel> left = std::nullopt;
    std::optional<Panel> right = std::nullopt;
    std::vector<Panel> long_linings = {}; // flat against front or back, inside or outside
    std::vector<Panel> side_linings = {};
    friend bool operator==(const ShellForm&, const ShellForm&) = default;
};

// What: mass of the sheets (kg). Method: volumes of the sheets times density; joints, frames and meshes are left out.
// Range: thicknesses > 0. Source: closed form.
Range shell_kg(const ShellForm& shell);

// What: area (m2) of the base's outer outline.
double footprint_m2(const ShellForm& shell);

struct Masses {
    Range shell_kg;
    Range substrate_kg; // damp
    Range water_kg;     // in bowls
    Range fittings_kg;
    Range animals_kg;
    friend bool operator==(const Masses&, const Masses&) = default;
};

struct Load {
    Range total_kg;
    Range pressure_kpa; // spread evenly over the footprint
    friend bool operator==(const Load&, const Load&) = default;
};

// What: total mass and mean pressure under the footprint. A caution for the keeper, never a structural approval: legs
//   and edges press harder than the mean, shelves sag and creep.
// Method: sum of independent masses; pressure = mass * g / area, g = 9.80665 m/s2.
// Range: footprint > 0, otherwise nullopt. Source: closed form.
std::optional<Load> load(const Masses& masses, double footprint_m2);

} // namespace loam::substrate
