// How far readings may be off together, apart from what the inputs explain.
#pragma once

#include <vector>

#include "core/climate/calibration.hpp"

namespace loam::climate {

// Covariance, row by row, K2. The thermometer: an accuracy of +-a counts as a rectangular distribution, a / sqrt(3)
// (JCGM 100:2008, 4.3.7; from memory); readings of one measure are taken with one thermometer, and 0.8 of its variance
// is an offset that they share (own estimate). The model: its own error at each place, the same in a repeated reading,
// less alike with distance (e-fold over a third of the box's length), half alike between measures, unrelated between
// lamps on and lamps off (own estimates, no measurement found).
std::vector<double> noise_of(const std::vector<TakenReading>& readings, const Box& box);

} // namespace loam::climate
