// Labelled lines of equal temperature through the bed, in the section.
#pragma once

#include <QPainter>

#include "app/drawing/enclosure_drawing.hpp"
#include "app/drawing/isolines.hpp"
#include "app/drawing/shapes.hpp"

namespace loam::drawing {

// In metres along the box and over the base pane, drawn out to the base and to the deepest bed.
std::vector<Line> section_isolines(const climate::CaseResult& detail, double level_c);

void paint_section_lines(QPainter& painter, const Frame& frame, const Picture& picture);
// Over the bed where a line meets its surface, else in the bed; one without a free place goes unlabelled.
void paint_section_line_labels(QPainter& painter, const Frame& frame, const Picture& picture,
                               const std::vector<Shape>& shapes);

} // namespace loam::drawing
