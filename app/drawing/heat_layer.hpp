// The predicted temperatures under the drawing: colours, labelled isolines, zone outlines.
#pragma once

#include <QPainter>

#include "app/drawing/colour_map.hpp"
#include "app/drawing/enclosure_drawing.hpp"
#include "app/drawing/shapes.hpp"

namespace loam::drawing {

// The case in view, or nullptr where there is none or it did not converge.
const assess::HeatCase* case_in_view(const Picture& picture);
// Whether that is of an older enclosure.
bool is_stale(const Picture& picture);

// What the colours span: the floor's ground-level temperatures, widened to whole degrees and at least 4 K.
Span colour_span(const assess::HeatCase& heat);

void paint_floor_heat(QPainter& painter, const Frame& frame, const Picture& picture);
// After everything else, each where it covers no zone tag and no fitting; a line without such a place goes unlabelled.
void paint_isoline_labels(QPainter& painter, const Frame& frame, const Picture& picture,
                          const std::vector<Shape>& shapes);
// Where the zones' tags stand: nothing else is written there.
std::vector<QRectF> zone_tags(const Frame& frame, const Picture& picture, const QFont& font);
void paint_zones(QPainter& painter, const Frame& frame, const Picture& picture);
void paint_section_heat(QPainter& painter, const Frame& frame, const Picture& picture);
void paint_heat_legend(QPainter& painter, const Frame& frame, const Picture& picture);

} // namespace loam::drawing
