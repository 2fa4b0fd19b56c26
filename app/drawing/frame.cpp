#include <algorithm>
#include <optional>

#include <QFontMetricsF>

#include "app/drawing/enclosure_drawing.hpp"

namespace loam::drawing {

Inks Inks::light()
{
    return {.paper = QColor(0xfd, 0xfc, 0xf9),
            .ink = QColor(0x24, 0x22, 0x1e),
            .faint = QColor(0x6b, 0x66, 0x5c),
            .line = QColor(0xc9, 0xc2, 0xb4),
            .accent = QColor(0x1f, 0x5f, 0x8b),
            .glass = QColor(0x5b, 0x7d, 0x8c),
            .on_dark = false};
}

Inks Inks::print()
{
    return {.paper = Qt::white,
            .ink = Qt::black,
            .faint = Qt::black,
            .line = Qt::black,
            .accent = Qt::black,
            .glass = Qt::black,
            .on_dark = false};
}

Inks Inks::dark()
{
    return {.paper = QColor(0x2b, 0x2c, 0x2f),
            .ink = QColor(0xe9, 0xe6, 0xdf),
            .faint = QColor(0xa4, 0x9f, 0x95),
            .line = QColor(0x4b, 0x4e, 0x53),
            .accent = QColor(0x6f, 0xb1, 0xdd),
            .glass = QColor(0x8f, 0xb4, 0xc4),
            .on_dark = true};
}

namespace {

// Room that text needs around the views, in text heights.
struct Surround {
    double text;
    double left() const { return 3.2 * text; } // dimension line of the width or height
    double right() const { return 1.2 * text; }
    double above() const { return 0.6 * text; }
    double below() const { return 3.6 * text; } // dimension line of the length, and the caption
    double names() const { return 2.6 * text; } // of the lamps, over the section
    double legend() const { return 2.6 * text; }
};

struct Extent {
    double length_m, width_m, height_m;
    double fixture_m; // how far lamps stand out over the top
};

Extent extent_of(const plan::Enclosure& enclosure)
{
    constexpr double lamp_m = 0.05;
    const plan::Shell& shell = enclosure.shell;
    double top_m = shell.height_m;
    for (const plan::Device& device : enclosure.equipment) {
        if (device.kind != plan::DeviceKind::heat_mat) {
            top_m = std::max(top_m, device.height_above_base_m.value_or(shell.height_m) + lamp_m);
        }
    }
    return {shell.length_m, shell.width_m, shell.height_m, top_m - shell.height_m};
}

double scale_for(double wide, double tall, double length_m, double height_m)
{
    return std::max(1.0, std::min(wide / length_m, tall / height_m));
}

// Plan over section, aligned along the length.
Frame stacked(const Extent& box, const QRectF& area, const Surround& room, std::optional<double> pixels_per_m = {})
{
    const double wide = area.width() - room.left() - room.right();
    const double tall = area.height() - room.above() - 2 * room.below() - room.names() - room.legend();
    Frame frame;
    const double scale =
        pixels_per_m.value_or(scale_for(wide, tall, box.length_m, box.width_m + box.height_m + box.fixture_m));
    frame.pixels_per_m = scale;
    const double x = area.left() + room.left() + (wide - scale * box.length_m) / 2.0;
    frame.plan = QRectF(x, area.top() + room.above(), scale * box.length_m, scale * box.width_m);
    const double y = frame.plan.bottom() + room.below() + room.names() + scale * box.fixture_m;
    frame.section = QRectF(x, y, scale * box.length_m, scale * box.height_m);
    frame.legend = QRectF(area.left() + room.left(), area.bottom() - room.legend(),
                          area.width() - room.left() - 2.5 * room.right(), room.legend());
    return frame;
}

// What half of a width has for a view.
double half(double width, const Surround& room)
{
    return width / 2.0 - room.left() - room.right();
}

// Whether plan and section have the room beside each other at a scale.
bool go_beside(const Extent& box, double width, const Surround& room, double pixels_per_m)
{
    return pixels_per_m * box.length_m <= half(width, room);
}

// Section beside the plan, both standing on one line: larger in a low, wide window.
Frame side_by_side(const Extent& box, const QRectF& area, const Surround& room, std::optional<double> pixels_per_m = {})
{
    const double wide = half(area.width(), room);
    const double tall = area.height() - room.above() - room.below() - room.legend();
    const double section_m = box.height_m + box.fixture_m;
    Frame frame;
    const double scale = pixels_per_m.value_or(std::min(scale_for(wide, tall, box.length_m, box.width_m),
                                                        scale_for(wide, tall - room.names(), box.length_m, section_m)));
    frame.pixels_per_m = scale;
    const double slack = wide - scale * box.length_m;
    const double top = std::max(scale * box.width_m, room.names() + scale * section_m);
    const double floor_y = area.top() + room.above() + top + (tall - top) / 2.0;
    const double plan_x = area.left() + room.left() + slack * 0.6;
    const double section_x = area.left() + area.width() / 2.0 + room.left() + slack * 0.4;
    frame.plan = QRectF(plan_x, floor_y - scale * box.width_m, scale * box.length_m, scale * box.width_m);
    frame.section = QRectF(section_x, floor_y - scale * box.height_m, scale * box.length_m, scale * box.height_m);
    frame.legend =
        QRectF(plan_x, floor_y + room.below(), frame.section.right() - plan_x, room.legend()); // close under both
    return frame;
}

// The walls folded out around the plan; beside them the section over the top.
Frame unfold(const Extent& box, const QRectF& area, const Surround& room)
{
    constexpr double fold_px = 4.0;
    const double caption = 1.6 * room.text;
    const double tall = area.height() - room.above() - room.legend();
    const double wide = area.width() - 2.0 * room.right() - room.left();
    const double net_length_m = box.length_m + 2.0 * box.height_m;
    const double net_width_m = box.width_m + 2.0 * box.height_m;
    const double beside_m = box.fixture_m + box.height_m + box.width_m;
    const double beside_text = room.names() + room.below() + caption;
    Frame frame;
    frame.unfolded = true;
    frame.fold = fold_px;
    const double scale =
        std::max(1.0, std::min({(wide - 2.0 * fold_px) / (net_length_m + box.length_m),
                                (tall - caption - 2.0 * fold_px) / net_width_m, (tall - beside_text) / beside_m}));
    frame.pixels_per_m = scale;
    const double slack = wide - 2.0 * fold_px - scale * (net_length_m + box.length_m);
    const double net_x = area.left() + room.right() + slack * 0.4;
    const double net_tall = scale * net_width_m + 2.0 * fold_px;
    const double net_y = area.top() + room.above() + (tall - caption - net_tall) / 2.0;
    const double up = scale * box.height_m + fold_px;
    frame.plan = QRectF(net_x + up, net_y + up, scale * box.length_m, scale * box.width_m);
    const double beside_x = net_x + scale * net_length_m + 2.0 * fold_px + room.left() + slack * 0.2;
    const double beside_y = area.top() + room.above() + (tall - beside_text - scale * beside_m) / 2.0;
    frame.section =
        QRectF(beside_x, beside_y + room.names() + scale * box.fixture_m, scale * box.length_m, scale * box.height_m);
    frame.top = QRectF(beside_x, frame.section.bottom() + room.below(), scale * box.length_m, scale * box.width_m);
    frame.legend = QRectF(net_x, area.bottom() - room.legend(), frame.section.right() - net_x, room.legend());
    return frame;
}

} // namespace

QSizeF size_at(const plan::Enclosure& enclosure, double pixels_per_m, const QFont& font, double width)
{
    const Surround room{QFontMetricsF(font).height()};
    const Extent box = extent_of(enclosure);
    const double section_m = box.height_m + box.fixture_m;
    if (go_beside(box, width, room, pixels_per_m)) {
        return {width, room.above() + std::max(pixels_per_m * box.width_m, room.names() + pixels_per_m * section_m) +
                           room.below() + room.legend()};
    }
    return {room.left() + pixels_per_m * box.length_m + room.right(),
            room.above() + pixels_per_m * (box.width_m + section_m) + 2.0 * room.below() + room.names() +
                room.legend()};
}

Frame lay_out(const Picture& picture, const QRectF& area)
{
    const Surround room{QFontMetricsF(picture.font).height()};
    if (picture.pixels_per_m) {
        const Extent box = extent_of(picture.enclosure);
        return go_beside(box, area.width(), room, *picture.pixels_per_m)
                   ? side_by_side(box, area, room, picture.pixels_per_m)
                   : stacked(box, area, room, picture.pixels_per_m);
    }
    Frame frame = picture.unfolded && picture.layer == Layer::heat ? unfold(extent_of(picture.enclosure), area, room)
                                                                   : lay_out(picture.enclosure, area, picture.font);
    if (picture.in_view) {
        const QRectF& seen = *picture.in_view;
        frame.legend = QRectF(seen.left() + room.right(), seen.bottom() - room.legend(),
                              seen.width() - 2.0 * room.right(), room.legend());
    }
    return frame;
}

Frame lay_out(const plan::Enclosure& enclosure, const QRectF& area, const QFont& font)
{
    const Surround room{QFontMetricsF(font).height()};
    const Extent box = extent_of(enclosure);
    const Frame over = stacked(box, area, room);
    const Frame beside = side_by_side(box, area, room);
    return beside.pixels_per_m > over.pixels_per_m ? beside : over;
}

} // namespace loam::drawing
