// Where a line may not break.
#pragma once

#include <QString>

namespace loam::words {

// A figure keeps its unit, and a range both its ends: "0.25 m²" and "15–19 mm" stay on one line.
QString figures_kept_whole(const QString& text);

} // namespace loam::words
