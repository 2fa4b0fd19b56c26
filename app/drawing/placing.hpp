// The things that have a place in the plan view, and what happens to the enclosure when one of them is moved, given
// another size, turned or taken out. Free of pixels; lengths in metres, x along the length, y towards the back.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "app/drawing/shapes.hpp"
#include "core/plan/plan.hpp"

namespace loam::drawing {

// Which way it can go: a mat on a wall goes along that wall.
enum class Freedom { both, along_length, along_width };

struct Placed {
    QString id;
    ShapeKind kind = ShapeKind::fitting;
    QRectF footprint_m; // of what is turned, the box around it; top() is the front edge
    Freedom freedom = Freedom::both;
    bool sizable = false;   // has a length and a width of its own
    bool turnable = false;  // by quarters
    bool by_middle = false; // a lamp: its middle stays over the floor, its rim need not
};

// As they are painted, from the bottom to the top.
std::vector<Placed> placed_things(const plan::Enclosure& enclosure);
std::optional<Placed> placed_thing(const plan::Enclosure& enclosure, const QString& id);

// Steps of places and sizes: half a centimetre.
inline constexpr double raster_m = 0.005;

// The thing `by_m` further, but not out of the box. What has no such thing stays as it is; so for the others.
plan::Enclosure moved(plan::Enclosure enclosure, const QString& id, const QPointF& by_m);
// Longer and wider by this much, no less than the raster and not out of the box; its front left corner stays.
plan::Enclosure resized(plan::Enclosure enclosure, const QString& id, const QSizeF& by_m);
// By a quarter, counter-clockwise, about its middle.
plan::Enclosure turned(plan::Enclosure enclosure, const QString& id);
plan::Enclosure taken_out(plan::Enclosure enclosure, const QString& id);
// A second one like it under `new_id`, a little aside.
plan::Enclosure duplicated(plan::Enclosure enclosure, const QString& id, const QString& new_id);

enum class Alignment { left, right, front, back, middle_of_length, middle_of_width };
plan::Enclosure aligned(plan::Enclosure enclosure, const QString& id, Alignment alignment);

// Ids of the fittings that a fitting stands in. Lamps, mats and covers lie above or below and are in nobody's way.
QStringList standing_in(const plan::Enclosure& enclosure, const QString& id);

} // namespace loam::drawing
