// How damp it is at ground level, under the drawing.
#pragma once

#include "app/drawing/floor_layer.hpp"

namespace loam::drawing {

std::optional<FloorLayer> moisture_on_floor(const Picture& picture);

// Drops along the coldest pane of the case in view, where water condenses on it.
void paint_condensation(QPainter& painter, const Frame& frame, const Picture& picture);
void paint_drop(QPainter& painter, const QPointF& centre, const Inks& inks);

} // namespace loam::drawing
