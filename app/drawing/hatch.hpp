// Hatching of lines, for paper: brush patterns come out as fine as the printer's dots.
#pragma once

#include <QPainter>
#include <QPolygonF>

namespace loam::drawing {

enum class Hatch { rising, falling, crossed };

// Thin lines at 45 degrees within the outline.
void paint_hatch(QPainter& painter, const QPolygonF& outline, Hatch hatch, double apart, const QColor& ink);

} // namespace loam::drawing
