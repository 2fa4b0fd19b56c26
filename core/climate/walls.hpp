// What a wall is made of, from the inside outwards.
#pragma once

#include <vector>

#include "core/climate/box.hpp"
#include "core/climate/enclosure.hpp"

namespace loam::climate {

// A wall's plane is one of front, back, left, right. A mat on it has the panel as the outermost sheet.
std::vector<const Sheet*> wall_sheets(const Box& box, Plane plane, bool under_mat);

// What: thermal resistance (m2 K/W) of sheets upon each other. Method: series. Range: conductivities > 0.
double resistance_m2k_w(const std::vector<const Sheet*>& sheets);

// How sheets upon each other take lamp light from the first one's side, by their likely values; what neither stays nor
// passes comes back. Method: light once through, what a sheet behind sends back is taken as not passing the one before
// a second time. Source: ISO 9050 has the full series; it differs by the product of two reflectances.
struct LampShares {
    double absorbed = 0.0;
    double passed = 1.0;
};
LampShares lamp_shares(const std::vector<const Sheet*>& sheets);

} // namespace loam::climate
