#include "app/drawing/section_lines.hpp"

#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <optional>

#include "app/drawing/dimensions.hpp"
#include "app/drawing/field_reading.hpp"
#include "app/drawing/heat_layer.hpp"
#include "app/drawing/levels.hpp"

namespace loam::drawing {

namespace {

// The bed's own span, not the floor's: over a mat it is hotter than any place on top.
std::optional<Span> bed_span(const Picture& picture, const climate::CaseResult& detail)
{
    const climate::SectionField& section = detail.section;
    std::optional<Span> span;
    for (std::size_t row = 0; row < section.nz; ++row) {
        for (std::size_t column = 0; column < section.nx; ++column) {
            const double x_m = (static_cast<double>(column) + 0.5) * section_step_m(detail);
            if (section.z_m[row] > bed_top_m(picture.enclosure, x_m)) {
                continue; // air
            }
            const double here_c = section.temperature_c.at(row * section.nx + column);
            span = span ? Span{std::min(span->low, here_c), std::max(span->high, here_c)} : Span{here_c, here_c};
        }
    }
    return span;
}

QPainterPath bed_outline(const Frame& frame, const Picture& picture)
{
    const double length_m = picture.enclosure.shell.length_m;
    QPainterPath path;
    path.addPolygon(QPolygonF({on_section(frame, 0.0, 0.0), on_section(frame, 0.0, bed_top_m(picture.enclosure, 0.0)),
                               on_section(frame, length_m, bed_top_m(picture.enclosure, length_m)),
                               on_section(frame, length_m, 0.0)}));
    path.closeSubpath();
    return path;
}

struct Places {
    const Frame& frame;
    const Picture& picture;
    QSizeF size; // of the label

    QRectF around(const QPointF& centre) const
    {
        return {centre - QPointF(size.width() / 2.0, size.height() / 2.0), size};
    }

    // Over the bed where the line comes out of it, then along the line.
    std::vector<QRectF> of(const Line& line) const
    {
        std::vector<QRectF> places;
        for (const QPointF& end : {line.front(), line.back()}) {
            const double top_m = bed_top_m(picture.enclosure, end.x());
            if (end.y() >= top_m - 1e-9) {
                places.push_back(around(on_section(frame, end.x(), top_m) - QPointF(0.0, size.height() / 2.0 + 3.0)));
            }
        }
        const QRectF bed = bed_outline(frame, picture).boundingRect();
        for (const QPointF& point : line) {
            const QRectF box = around(on_section(frame, point.x(), point.y()));
            if (bed.contains(box)) {
                places.push_back(box);
            }
        }
        return places;
    }
};

// What stands in the section already: fittings and lamps, and the bed's depth in its middle.
std::vector<QRectF> taken_in_section(const Frame& frame, const Picture& picture, const std::vector<Shape>& shapes)
{
    std::vector<QRectF> taken;
    for (const Shape& shape : shapes) {
        if (shape.in_section) {
            taken.push_back(shape.outline.boundingRect().adjusted(-2, -1, 2, 1));
        }
    }
    const QFontMetricsF metrics(picture.font);
    const double middle_m = picture.enclosure.shell.length_m / 2.0;
    const QPointF centre = on_section(frame, middle_m, bed_top_m(picture.enclosure, middle_m) / 2.0);
    const double half = metrics.horizontalAdvance(QStringLiteral("bed 00.0 cm")) / 2.0 + 6.0;
    const double height = metrics.height() + 6.0;
    taken.emplace_back(centre - QPointF(half, height / 2.0), QSizeF(2.0 * half, height));
    return taken;
}

} // namespace

std::vector<Line> section_isolines(const climate::CaseResult& detail, double level_c)
{
    const climate::SectionField& section = detail.section;
    if (section.nx < 2 || section.nz == 0) {
        return {};
    }
    // A row more at the base and at the top, so that lines run out to both.
    std::vector<double> values;
    std::vector<double> heights_m{0.0};
    const auto add_row = [&](std::size_t row) {
        const auto first = section.temperature_c.begin() + static_cast<std::ptrdiff_t>(row * section.nx);
        values.insert(values.end(), first, first + static_cast<std::ptrdiff_t>(section.nx));
    };
    add_row(0);
    for (std::size_t row = 0; row < section.nz; ++row) {
        add_row(row);
        heights_m.push_back(section.z_m[row]);
    }
    add_row(section.nz - 1);
    const double below_m = section.nz > 1 ? section.z_m[section.nz - 2] : -section.z_m[section.nz - 1];
    heights_m.push_back(section.z_m[section.nz - 1] + (section.z_m[section.nz - 1] - below_m) / 2.0);
    std::vector<Line> lines = isolines(values, {section.nx, heights_m.size(), section_step_m(detail), 1.0}, level_c);
    for (Line& line : lines) {
        for (QPointF& point : line) { // rows, counted from half, to heights
            const double row = std::clamp(point.y() - 0.5, 0.0, static_cast<double>(heights_m.size() - 1));
            const auto below = std::min(static_cast<std::size_t>(row), heights_m.size() - 2);
            point.setY(std::lerp(heights_m[below], heights_m[below + 1], row - static_cast<double>(below)));
        }
    }
    return lines;
}

void paint_section_lines(QPainter& painter, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = heat_in_view(picture);
    const auto span = heat != nullptr ? bed_span(picture, heat->detail) : std::nullopt;
    if (!span) {
        return;
    }
    const Span colours = colour_span(picture, *heat);
    painter.save();
    painter.setClipPath(bed_outline(frame, picture));
    painter.setBrush(Qt::NoBrush);
    for (const double level : levels_c(*span, picture.formatter)) {
        painter.setPen(QPen(picture.colours ? ink_on(colour_at(colours.share(level))) : picture.inks.ink, 1.0));
        for (const Line& line : section_isolines(heat->detail, level)) {
            QPolygonF path;
            for (const QPointF& point : line) {
                path << on_section(frame, point.x(), point.y());
            }
            painter.drawPolyline(path);
        }
    }
    painter.restore();
}

void paint_section_line_labels(QPainter& painter, const Frame& frame, const Picture& picture,
                               const std::vector<Shape>& shapes)
{
    const assess::HeatCase* heat = heat_in_view(picture);
    const auto span = heat != nullptr ? bed_span(picture, heat->detail) : std::nullopt;
    if (!span) {
        return;
    }
    std::vector<QRectF> taken = taken_in_section(frame, picture, shapes);
    const QFontMetricsF metrics(painter.font());
    for (const double level : levels_c(*span, picture.formatter)) {
        const QString text = whole_degrees(level, picture.formatter);
        const Places places{frame, picture, QSizeF(metrics.horizontalAdvance(text) + 8.0, metrics.height())};
        for (const Line& line : section_isolines(heat->detail, level)) {
            for (const QRectF& box : places.of(line)) {
                const auto meets = [&box](const QRectF& other) { return other.intersects(box); };
                if (frame.section.contains(box) && std::none_of(taken.begin(), taken.end(), meets)) {
                    paint_label(painter, box.center(), text, picture.inks.ink, picture.inks.paper);
                    taken.push_back(box);
                    break;
                }
            }
        }
    }
}

} // namespace loam::drawing
