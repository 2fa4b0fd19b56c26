// The likely temperatures over every floor as CSV: `loamstead-cli assess --field`.
#pragma once

#include <string>

#include "core/assess/assessment.hpp"

namespace loam::report {

// One row for each cell of each known case: enclosure, case, x_m, y_m, surface_c, ground_c, operative_c, beam_w_m2; the
// place is the cell's centre, counted from the front left corner. A case whose balance did not close has no rows.
std::string field_csv(const assess::Assessment& assessment);

} // namespace loam::report
