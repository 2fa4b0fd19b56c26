// A place on the floor where a keeper held a thermometer.
#pragma once

#include <vector>

#include "core/climate/body.hpp"
#include "core/climate/model.hpp"
#include "core/climate/steady.hpp"

namespace loam::climate {

struct Spot {
    Measure measure = Measure::ground;
    double x_m = 0.0;
    double y_m = 0.0;
    friend bool operator==(const Spot&, const Spot&) = default;
};

bool is_inside(const Box& box, const Spot& spot);

// What the thermometer shows there. Between the middles of columns, what lies between their readings (bilinear); where
// something that can be stood on is in the way, its upper face; an operative temperature at the height of the back.
Reading spot_reading(const Model& model, const Box& box, const Scene& scene, const Spot& spot,
                     const std::vector<double>& solution);

} // namespace loam::climate
