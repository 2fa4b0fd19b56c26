// What the things in the two views are called.
#pragma once

#include <QPainter>
#include <vector>

#include "app/drawing/shapes.hpp"

namespace loam::drawing {

// Fittings bear their names in the plan, where these have room beside tags and lamps; the lamps of the section are
// named in a row over them, with a leader line to each. `taken`: where in the plan something is written already.
void paint_names(QPainter& painter, const Frame& frame, const Picture& picture, const std::vector<Shape>& shapes,
                 std::vector<QRectF> taken);

} // namespace loam::drawing
