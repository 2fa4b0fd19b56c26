// The keeper's readings against what is expected, as rows of words.
#pragma once

#include "app/desk/views/figure_rows.hpp"

namespace loam::desk {

FigureGroup reading_group(const assess::CalibrationResult& calibration, const words::Speaker& speaker);

} // namespace loam::desk
