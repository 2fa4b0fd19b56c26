// Volume and mass of the bed, layer by layer.
#pragma once

#include <string>
#include <vector>

#include "core/explain.hpp"

namespace loam::substrate {

// Depths are settled; they run straight from the left wall to the right one.
struct Layer {
    std::string id;
    double depth_left_m = 0.0;
    double depth_right_m = 0.0;
    Range settling = exactly(0.0);       // share of the filled depth that is lost, 0..1
    Range dry_density_kg_m3;             // in the settled bed
    Range water_fraction = exactly(0.0); // volume of water over volume of bed as it is kept
    friend bool operator==(const Layer&, const Layer&) = default;
};

// A box sunk into the bed: a bowl, a rock that stands on the base. Heights are over the base pane.
struct SunkPart {
    double x_m = 0.0; // front-left corner before it is turned about its own centre
    double y_m = 0.0;
    double length_m = 0.0;
    double width_m = 0.0;
    double rotation_deg = 0.0;
    double bottom_m = 0.0;
    double top_m = 0.0;
    friend bool operator==(const SunkPart&, const SunkPart&) = default;
};

struct Floor {
    double length_m = 0.0;
    double width_m = 0.0;
    friend bool operator==(const Floor&, const Floor&) = default;
};

struct LayerAmount {
    std::string id;
    double settled_l = 0.0;
    Range fill_in_l; // loose, before it settles
    Range dry_kg;
    Range water_l; // to add to the dry material
    Range damp_kg;
    friend bool operator==(const LayerAmount&, const LayerAmount&) = default;
};

// What: litres and kilograms of each layer.
// Method: a layer's volume is floor area times its mean depth, less what the sunk parts take of it. That share is
//   integrated over x: the part's width at x and the height it shares with the layer are piecewise linear, so Gauss'
//   two-point rule is exact on each piece. Fill-in = settled / (1 - settling); dry mass = density * volume; water =
//   fraction * volume; damp = dry + water at 998.2 kg/m3. Spreads combine as independent.
// Range: depths >= 0, settling < 1, sunk parts that don't overlap each other.
// Source: closed form; density of water at 20 degC from IAPWS-IF97 (from memory). That a bed loses 10 to 15 % of its
//   filled depth is common practice, no source; the figure is the caller's.
std::vector<LayerAmount> bed_amounts(const Floor& floor, const std::vector<Layer>& layers,
                                     const std::vector<SunkPart>& sunk);

// What: height (m) of the bed's surface over the base pane at x. Range: 0 <= x <= floor length.
double surface_m(const Floor& floor, const std::vector<Layer>& layers, double x_m);

} // namespace loam::substrate
