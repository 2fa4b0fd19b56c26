// Where a line of a sheet may not break.
#pragma once

#include <QString>

#include "app/sheets/block.hpp"

namespace loam::sheets {

// A figure keeps its unit, and a range both its ends: "0.25 m²" and "15–19 mm" stay on one line.
QString figures_kept_whole(const QString& text);
void keep_figures_whole(Content& content);

} // namespace loam::sheets
