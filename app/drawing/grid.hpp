// Faint lines at round distances over floor and section, to judge places by.
#pragma once

#include "app/drawing/shapes.hpp"

namespace loam::drawing {

// Every 10 cm, or every 6 inches.
void paint_grid(QPainter& painter, const Frame& frame, const Picture& picture);

} // namespace loam::drawing
