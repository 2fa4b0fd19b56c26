// Where plan elements lie in the two views, in pixels. Painting and picking share these, so they can't disagree.
#pragma once

#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <vector>

#include "app/drawing/enclosure_drawing.hpp"

namespace loam::drawing {

enum class ShapeKind { cover, fitting, mat, lamp, animal, probe };

struct Shape {
    ShapeKind kind = ShapeKind::fitting;
    QString id;
    QPolygonF outline; // in one of the two views
    bool in_section = false;
};

QPointF on_plan(const Frame& frame, double x_m, double y_m);
QPointF on_section(const Frame& frame, double x_m, double z_m);

// Height of the bed's surface over the base pane.
double bed_top_m(const plan::Enclosure& enclosure, double x_m);

inline QPointF on_floor_m(const Frame& frame, const QPointF& point) // of the plan view
{
    return {(point.x() - frame.plan.left()) / frame.pixels_per_m,
            (frame.plan.bottom() - point.y()) / frame.pixels_per_m};
}

// From the bottom to the top, as they are painted.
std::vector<Shape> shapes_of(const plan::Enclosure& enclosure, const Frame& frame);

} // namespace loam::drawing
