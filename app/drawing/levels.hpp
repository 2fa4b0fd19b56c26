// Temperatures as the drawing writes them, and the round ones at which lines run. Internal to app/drawing.
#pragma once

#include <QString>
#include <vector>

#include "app/drawing/colour_map.hpp"
#include "app/words/numbers.hpp"

namespace loam::drawing {

// "29 °C": on a drawing tenths would pretend.
QString whole_degrees(double c, const words::Formatter& formatter);

// Round figures in the reader's own unit inside the span, in degC.
std::vector<double> levels_c(const Span& span, const words::Formatter& formatter);

} // namespace loam::drawing
