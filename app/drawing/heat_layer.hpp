// The predicted temperatures under the drawing.
#pragma once

#include <QPainter>

#include "app/drawing/floor_layer.hpp"

namespace loam::drawing {

// The case in view, or nullptr where there is none, it did not converge, or the layer shows no case.
const assess::HeatCase* case_in_view(const Picture& picture);
// The same, where its warmth is shown.
const assess::HeatCase* heat_in_view(const Picture& picture);
// Whether that is of an older enclosure.
bool is_stale(const Picture& picture);

// What the colours span: the floor's ground-level temperatures, and those of the walls where they are shown; widened to
// whole degrees and at least 4 K.
Span colour_span(const Picture& picture, const assess::HeatCase& heat);

std::optional<FloorLayer> heat_on_floor(const Picture& picture);
void paint_section_heat(QPainter& painter, const Frame& frame, const Picture& picture);

} // namespace loam::drawing
