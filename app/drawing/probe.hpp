// What the pointer is over: what the chosen layer reads at that place, in a small readout beside it.
#pragma once

#include <QStringList>

#include "app/drawing/enclosure_drawing.hpp"

namespace loam::drawing {

// Of heat, on the floor: surface, ground level, what the back feels, lamp light; on walls and top: inside and outside;
// in the section: bed or air. Of UV, on the
// floor: the index at an animal's back, with its range. Of moisture, on the floor: humidity at ground level; in the
// lower air of the section: its own. Empty elsewhere and where nothing is worked out.
QStringList probe_lines(const QPointF& point, const QRectF& area, const Picture& picture);

// Where a readout of this size stands: inside the area and clear of the point.
QRectF readout_box(const QPointF& point, const QSizeF& size, const QRectF& area);

void paint_probe(QPainter& painter, const QPointF& point, const QRectF& area, const Picture& picture);

} // namespace loam::drawing
