// Where a line of a sheet may not break.
#pragma once

#include "app/sheets/block.hpp"

namespace loam::sheets {

// A figure keeps its unit, and a range both its ends, in every text but the user's own.
void keep_figures_whole(Content& content);

} // namespace loam::sheets
