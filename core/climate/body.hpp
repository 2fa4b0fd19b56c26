// What a body in the beam comes to: an animal's back, a rock, a log.
#pragma once

#include <cstddef>
#include <vector>

#include "core/climate/box.hpp"
#include "core/climate/model.hpp"

namespace loam::climate {

// Share of lamp light and heat that skin, shell, rock or bark takes. From memory of measured 0.7 to 0.95.
inline constexpr double body_absorptance = 0.9;

struct Body {
    Point at;                  // its back, from the base pane
    double length_m = 0.0;     // of the warmed face
    double seen_surface = 0.5; // share of its surroundings that is the bed below; the rest is the box above
};

// Operative temperature: air and surroundings weighted by film and long-wave, raised by what it takes of the beam.
// Method: T = (h T_air + h_r T_radiant + a E) / (h + h_r), h from the horizontal film at the body's own temperature
// (found once at the given solution), h_r the long-wave slope there; no heat goes on into the body.
// Range: that of the film. Source: operative temperature after Bakken 1976 (from memory), ISO 7730 without a beam.
Reading body_reading(const Model& model, const Box& box, const Scene& scene, const Body& body,
                     const std::vector<double>& solution);

// Irradiance at a point, W/m2, per W drawn by each lamp.
std::vector<double> irradiance_per_watt(const Box& box, const Scene& scene, const Point& at);

} // namespace loam::climate
