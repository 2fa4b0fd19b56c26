// Strokes and hatchings of the places in a chart of hours. Each has a stroke of its own, for grey and colour-blind
// eyes.
#pragma once

#include <QBrush>
#include <QPen>

#include "core/assess/assessment.hpp"

namespace loam::desk {

QPen zone_pen(assess::Zone zone, bool on_dark);
QPen room_pen(bool on_dark);
QPen humidity_pen(bool on_dark);
Qt::BrushStyle zone_hatch(assess::Zone zone);

} // namespace loam::desk
