#include "app/drawing/shapes.hpp"

#include <QTransform>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace loam::drawing {

namespace {

constexpr double mark_m = 0.045;        // how large a lamp is drawn
constexpr double sheet_px = 5.0;        // how thick a mat or cover is drawn in the section
constexpr double plain_height_m = 0.06; // a fitting whose height is not known

QPolygonF plan_rectangle(const Frame& frame, double x_m, double y_m, double length_m, double width_m)
{
    return QPolygonF(QRectF(on_plan(frame, x_m, y_m + width_m), on_plan(frame, x_m + length_m, y_m)));
}

QPolygonF rotated(const QPolygonF& outline, double degrees)
{
    const QPointF centre = outline.boundingRect().center();
    return QTransform()
        .translate(centre.x(), centre.y())
        .rotate(-degrees)
        .translate(-centre.x(), -centre.y())
        .map(outline);
}

void add_fitting(const plan::Enclosure& enclosure, const plan::Fitting& fitting, const Frame& frame,
                 std::vector<Shape>& shapes)
{
    const QString id = QString::fromStdString(fitting.id);
    const QPolygonF flat = rotated(plan_rectangle(frame, fitting.x_m, fitting.y_m, fitting.length_m, fitting.width_m),
                                   fitting.rotation_deg.value_or(0.0));
    shapes.push_back({ShapeKind::fitting, id, flat, false});

    // The same extent along the length, in the other view.
    const QRectF box = flat.boundingRect().translated(frame.section.left() - frame.plan.left(), 0.0);
    const double height_m = fitting.height_m.value_or(plain_height_m);
    const double top = bed_top_m(enclosure, fitting.x_m + fitting.length_m / 2.0);
    // A bowl is sunk to its rim, everything else stands on the bed.
    const bool sunk = fitting.kind == plan::FittingKind::water_bowl;
    const double low = on_section(frame, 0.0, sunk ? std::max(0.0, top - height_m) : top).y();
    const double high = on_section(frame, 0.0, sunk ? top : top + height_m).y();
    shapes.push_back(
        {ShapeKind::fitting, id, QPolygonF(QRectF(QPointF(box.left(), high), QPointF(box.right(), low))), true});
}

void add_mat(const plan::Enclosure& enclosure, const plan::Device& mat, const Frame& frame, std::vector<Shape>& shapes)
{
    const QString id = QString::fromStdString(mat.id);
    const double length_m = mat.length_m.value_or(0.2);
    const double width_m = mat.width_m.value_or(0.2);
    const double low_m = mat.z_m.value_or(0.0);
    const plan::Shell& shell = enclosure.shell;
    const double sheet_m = sheet_px / frame.pixels_per_m;
    const auto wall_x = [&](double x_m) {
        shapes.push_back({ShapeKind::mat, id, plan_rectangle(frame, x_m, mat.y_m, sheet_m, length_m), false});
        shapes.push_back(
            {ShapeKind::mat, id,
             QPolygonF(QRectF(on_section(frame, x_m, low_m + width_m), on_section(frame, x_m + sheet_m, low_m))),
             true});
    };
    switch (mat.place.value_or(plan::Place::under_base)) {
    case plan::Place::left_wall:
        return wall_x(-sheet_m);
    case plan::Place::right_wall:
        return wall_x(shell.length_m);
    case plan::Place::back_wall:
    case plan::Place::front_wall: {
        const double y_m = mat.place == plan::Place::back_wall ? shell.width_m : -sheet_m;
        shapes.push_back({ShapeKind::mat, id, plan_rectangle(frame, mat.x_m, y_m, length_m, sheet_m), false});
        shapes.push_back({ShapeKind::mat, id,
                          QPolygonF(QRectF(on_section(frame, mat.x_m, low_m + width_m),
                                           on_section(frame, mat.x_m + length_m, low_m))),
                          true});
        return;
    }
    default: {
        const double top_m = mat.place == plan::Place::in_bed ? sheet_m : 0.0;
        shapes.push_back({ShapeKind::mat, id, plan_rectangle(frame, mat.x_m, mat.y_m, length_m, width_m), false});
        shapes.push_back({ShapeKind::mat, id,
                          QPolygonF(QRectF(on_section(frame, mat.x_m, top_m),
                                           on_section(frame, mat.x_m + length_m, top_m - sheet_m))),
                          true});
    }
    }
}

void add_lamp(const plan::Enclosure& enclosure, const plan::Device& lamp, const Frame& frame,
              std::vector<Shape>& shapes)
{
    const QString id = QString::fromStdString(lamp.id);
    const double half_x = std::max(lamp.length_m.value_or(0.0), mark_m) / 2.0;
    const double half_y = std::max(lamp.width_m.value_or(0.0), mark_m) / 2.0;
    shapes.push_back({ShapeKind::lamp, id,
                      plan_rectangle(frame, lamp.x_m - half_x, lamp.y_m - half_y, 2 * half_x, 2 * half_y), false});
    const double face_m = lamp.height_above_base_m.value_or(enclosure.shell.height_m);
    const QPointF face = on_section(frame, lamp.x_m, face_m);
    const double half = half_x * frame.pixels_per_m;
    const double depth = mark_m * frame.pixels_per_m;
    // A dome: narrow above, its face below.
    shapes.push_back({ShapeKind::lamp, id,
                      QPolygonF({face + QPointF(-half, 0), face + QPointF(half, 0), face + QPointF(half * 0.6, -depth),
                                 face + QPointF(-half * 0.6, -depth)}),
                      true});
}

} // namespace

QPointF on_plan(const Frame& frame, double x_m, double y_m)
{
    return {frame.plan.left() + x_m * frame.pixels_per_m, frame.plan.bottom() - y_m * frame.pixels_per_m};
}

QPointF on_section(const Frame& frame, double x_m, double z_m)
{
    return {frame.section.left() + x_m * frame.pixels_per_m, frame.section.bottom() - z_m * frame.pixels_per_m};
}

double bed_top_m(const plan::Enclosure& enclosure, double x_m)
{
    const double share = std::clamp(x_m / enclosure.shell.length_m, 0.0, 1.0);
    double top_m = 0.0;
    for (const plan::SubstrateLayer& layer : enclosure.substrate) {
        top_m += layer.depth_m + share * (layer.depth_at_right_m.value_or(layer.depth_m) - layer.depth_m);
    }
    return top_m;
}

std::vector<Shape> shapes_of(const plan::Enclosure& enclosure, const Frame& frame)
{
    std::vector<Shape> shapes;
    for (const plan::Device& device : enclosure.equipment) {
        if (device.kind == plan::DeviceKind::heat_mat) {
            add_mat(enclosure, device, frame, shapes);
        }
    }
    for (const plan::Fitting& fitting : enclosure.fittings) {
        add_fitting(enclosure, fitting, frame, shapes);
    }
    for (const plan::Cover& cover : enclosure.shell.top.covers) {
        const QString id = QString::fromStdString(cover.id);
        shapes.push_back(
            {ShapeKind::cover, id, plan_rectangle(frame, cover.x_m, cover.y_m, cover.length_m, cover.width_m), false});
        const QPointF left = on_section(frame, cover.x_m, enclosure.shell.height_m);
        shapes.push_back(
            {ShapeKind::cover, id,
             QPolygonF(QRectF(left - QPointF(0, sheet_px), QSizeF(cover.length_m * frame.pixels_per_m, sheet_px))),
             true});
    }
    for (const plan::Device& device : enclosure.equipment) {
        if (device.kind != plan::DeviceKind::heat_mat) {
            add_lamp(enclosure, device, frame, shapes);
        }
    }
    return shapes;
}

namespace {

// A few pixels around thin things, so that a mat's edge can be hit.
bool is_at(const Shape& shape, const QPointF& point)
{
    return shape.outline.containsPoint(point, Qt::OddEvenFill) ||
           shape.outline.boundingRect().adjusted(-3, -3, 3, 3).contains(point);
}

// The topmost; but a cover is only hit where nothing lies under it, for it would hide half the box.
const Shape* shape_at(const QPointF& point, const std::vector<Shape>& shapes, bool in_section)
{
    const auto hit = [&](bool cover) {
        return std::find_if(shapes.rbegin(), shapes.rend(), [&](const Shape& shape) {
            return shape.in_section == in_section && (shape.kind == ShapeKind::cover) == cover && is_at(shape, point);
        });
    };
    const auto above = hit(false);
    const auto found = above != shapes.rend() ? above : hit(true);
    return found == shapes.rend() ? nullptr : &*found;
}

} // namespace

QString element_at(const QPointF& point, const QRectF& area, const Picture& picture)
{
    QString on_floor = thing_at(point, area, picture);
    if (!on_floor.isEmpty()) {
        return on_floor;
    }
    const std::vector<Shape> shapes = shapes_of(picture.enclosure, lay_out(picture, area));
    const Shape* hit = shape_at(point, shapes, true);
    return hit == nullptr ? QString() : hit->id;
}

QString thing_at(const QPointF& point, const QRectF& area, const Picture& picture)
{
    const std::vector<Shape> shapes = shapes_of(picture.enclosure, lay_out(picture, area));
    const auto lit = std::find_if(shapes.begin(), shapes.end(), [&](const Shape& shape) {
        return !shape.in_section && shape.id == picture.highlighted && is_at(shape, point);
    });
    if (lit != shapes.end()) {
        return lit->id;
    }
    const Shape* hit = shape_at(point, shapes, false);
    return hit == nullptr ? QString() : hit->id;
}

} // namespace loam::drawing
