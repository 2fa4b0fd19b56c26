// What is chosen or moved on the plan view: its handle, what it is in line with, how far from the walls it is, and what
// it stands in.
#pragma once

#include "app/drawing/placing.hpp"

namespace loam::drawing {

// The corner by which a thing of its own size is made larger, in pixels: the far right one. Empty: it has none.
QRectF handle_of(const Placed& what, const Frame& frame);

// "30 cm from the left, 12 cm from the front; stands in: water bowl".
QString place_words(const plan::Enclosure& enclosure, const Placed& what, const words::Formatter& formatter);

void paint_in_hand(QPainter& painter, const Frame& frame, const Picture& picture);

} // namespace loam::drawing
