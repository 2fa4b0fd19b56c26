// The likely temperatures and humidity over every floor as CSV: `loamstead-cli assess --field`.
#pragma once

#include <string>

#include "core/assess/assessment.hpp"

namespace loam::report {

// One row for each cell of each known case: enclosure, case, part (floor, front, back, left, right, top), x_m, y_m, z_m
// of the cell's centre from the front left corner of the base (z_m empty on the floor: the bed's surface), surface_c
// (inside), outside_c (of walls and top), and on the floor ground_c, operative_c, beam_w_m2 and relative_humidity
// (0..1, at ground_c). What mesh or nothing closes has no rows, nor has a case whose balance did not close.
std::string field_csv(const assess::Assessment& assessment);

} // namespace loam::report
