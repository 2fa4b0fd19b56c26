// Which part of the floor is the basking spot, the warm side and the cool side, and what is read there.
#pragma once

#include <utility>
#include <vector>

#include "core/climate/model.hpp"
#include "core/climate/steady.hpp"

namespace loam::climate {

struct Zone {
    std::vector<std::pair<std::size_t, double>> columns; // weights sum to 1
    Rect area;
};

// basking: the patch of the largest animal's size with the highest mean surface temperature. Where something that can
//       be stood on lies in the beam, its surface and operative readings are taken there (quantities.hpp).
// warm: the end third of the length with the warmer ground, without the beam's spot: a column counts less from 0.35 of
//       the lamp light's peak and no more at 0.65 (if all of the third is so bright, its least lit quarter counts).
// cool: the other end's third, likewise.
struct Zones {
    Zone basking;
    Zone warm;
    Zone cool;
};
Zones find_zones(const Model& model, const Box& box, const Scene& scene, const std::vector<double>& solution);

Reading surface_of(const Model& model, const Zone& zone);
Reading ground_of(const Model& model, const Zone& zone);
Reading operative_of(const Model& model, const Box& box, const Scene& scene, const Zone& zone,
                     const std::vector<double>& solution);

// Lamp light now on each column, W/m2.
std::vector<double> irradiance_w_m2(const Model& model, const Box& box, const Scene& scene,
                                    const std::vector<double>& solution);

} // namespace loam::climate
