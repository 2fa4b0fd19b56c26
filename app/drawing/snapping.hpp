// Where a thing that is moved comes to rest: in line with the box or with another thing nearby, else on the raster.
#pragma once

#include <QLineF>
#include <QPointF>
#include <vector>

#include "app/drawing/placing.hpp"

namespace loam::drawing {

struct Snapped {
    QPointF by_m;               // how far the thing goes
    std::vector<QLineF> guides; // what it is in line with, in metres on the floor
};

// `by_m` is where the hand would have it. Edges go to edges, middles to middles, within `reach_m`; along each side for
// itself. With `free` it goes where the hand goes, on millimetres.
Snapped snapped(const plan::Enclosure& enclosure, const Placed& what, const QPointF& by_m, double reach_m, bool free);

} // namespace loam::drawing
