// A box of 1.0 by 0.5 m on a floor of 10 by 5 cells, and the picture of what is known of it.
#pragma once

#include <QImage>
#include <QPainter>

#include "app/drawing/enclosure_drawing.hpp"
#include "core/assess/assessment.hpp"

namespace loam::test {

inline plan::Enclosure drawn_box(double height_m = 0.5)
{
    plan::Enclosure enclosure;
    enclosure.id = "e1";
    enclosure.shell.length_m = 1.0;
    enclosure.shell.width_m = 0.5;
    enclosure.shell.height_m = height_m;
    return enclosure;
}

inline plan::Enclosure bedded_box(double height_m = 0.5)
{
    plan::Enclosure enclosure = drawn_box(height_m);
    enclosure.substrate.emplace_back().depth_m = 0.1;
    return enclosure;
}

// A solved case on that floor, its values still to be filled in cell by cell.
inline assess::HeatCase on_drawn_floor(const std::string& id)
{
    assess::HeatCase heat;
    heat.id = id;
    heat.known = true;
    climate::FloorField& floor = heat.detail.floor;
    floor.nx = 10;
    floor.ny = 5;
    floor.dx_m = floor.dy_m = 0.1;
    return heat;
}

inline drawing::Picture picture_of(const plan::Enclosure& box, const assess::EnclosureResult& result,
                                   drawing::Layer layer = drawing::Layer::heat)
{
    drawing::Picture made;
    made.enclosure = box;
    made.result = &result;
    made.layer = layer;
    made.formatter = words::Formatter(words::UnitSystem::metric, QLocale::c());
    return made;
}

inline QImage painted(const drawing::Picture& picture)
{
    QImage image(900, 400, QImage::Format_ARGB32);
    QPainter painter(&image);
    drawing::paint(painter, QRectF(image.rect()), picture);
    return image;
}

} // namespace loam::test
