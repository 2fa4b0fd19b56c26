// What the pointer is over: the temperatures at that place, in a small readout beside it.
#pragma once

#include <QStringList>

#include "app/drawing/enclosure_drawing.hpp"

namespace loam::drawing {

// On the floor: surface, ground level, animal's back, lamp light. In the section: bed or air. Empty elsewhere and where
// nothing is known.
QStringList probe_lines(const QPointF& point, const QRectF& area, const Picture& picture);

// Where a readout of this size stands: inside the area and clear of the point.
QRectF readout_box(const QPointF& point, const QSizeF& size, const QRectF& area);

void paint_probe(QPainter& painter, const QPointF& point, const QRectF& area, const Picture& picture);

} // namespace loam::drawing
