#include "app/drawing/probe.hpp"

#include <QFontMetricsF>
#include <algorithm>

#include "app/drawing/field_reading.hpp"
#include "app/drawing/heat_layer.hpp"
#include "app/drawing/shapes.hpp"
#include "app/drawing/uv_layer.hpp"
#include "app/drawing/wall_layer.hpp"
#include "app/words/verdicts.hpp"
#include "core/climate/condensation.hpp"

namespace loam::drawing {

namespace {

using words::Quantity;

QString line(const QString& name, double stored, Quantity quantity, const words::Formatter& formatter)
{
    return name + QStringLiteral("  ") + formatter.value(stored, quantity);
}

QStringList floor_lines(const climate::CaseResult& detail, double x_m, double y_m, const words::Formatter& formatter)
{
    const auto reading = read_floor(detail.floor, x_m, y_m);
    if (!reading) {
        return {};
    }
    QStringList lines{
        line(QObject::tr("surface, by infrared"), reading->surface_c, Quantity::temperature, formatter),
        line(QObject::tr("ground level, shaded thermometer"), reading->ground_c, Quantity::temperature, formatter),
        line(QObject::tr("felt by the back (operative)"), reading->operative_c, Quantity::temperature, formatter)};
    constexpr double least_w_m2 = 1.0;
    if (reading->beam_w_m2 >= least_w_m2) {
        lines << line(QObject::tr("lamp light"), reading->beam_w_m2, Quantity::flux, formatter);
    }
    return lines;
}

QStringList section_lines(const climate::CaseResult& detail, double x_m, double z_m, const Picture& picture)
{
    const auto bed = read_bed_c(
        detail, [&picture](double x) { return bed_top_m(picture.enclosure, x); }, x_m, z_m);
    if (bed) {
        return {line(QObject::tr("bed"), *bed, Quantity::temperature, picture.formatter)};
    }
    const bool upper = z_m > picture.enclosure.shell.height_m / 2.0;
    return {upper
                ? line(QObject::tr("upper air"), detail.section.upper_air_c, Quantity::temperature, picture.formatter)
                : line(QObject::tr("lower air"), detail.section.lower_air_c, Quantity::temperature, picture.formatter)};
}

// On the plan: at the back of an animal there, and below the roof it would stand on.
QStringList uv_lines(const Picture& picture, double x_m, double y_m)
{
    const light::UvMap& map = picture.result->uv.map;
    const auto cell = uv_cell_at(map, x_m, y_m);
    if (!cell) {
        return {};
    }
    const words::Formatter& formatter = picture.formatter;
    QStringList lines{QObject::tr("UV index  %1").arg(formatter.range(map.uvi[*cell], Quantity::uv_index)),
                      line(QObject::tr("at a back, over the base"), map.back_m[*cell], Quantity::length, formatter)};
    for (const plan::Fitting& fitting : picture.enclosure.fittings) {
        const bool roof = fitting.kind == plan::FittingKind::hide || fitting.kind == plan::FittingKind::humid_hide;
        if (roof && QRectF(fitting.x_m, fitting.y_m, fitting.length_m, fitting.width_m).contains(x_m, y_m)) {
            lines << QObject::tr("inside the %1  none").arg(words::fitting_kind(fitting.kind));
        }
    }
    return lines;
}

QStringList panel_lines(const PanelPlace& place, const words::Formatter& formatter)
{
    const climate::PanelField& panel = *place.panel;
    const QString name = words::panel(panel.plane);
    if (panel.closed[place.cell] == 0) {
        return {QObject::tr("%1: open here").arg(name)};
    }
    QStringList lines{
        line(QObject::tr("%1, inside").arg(name), panel.inside_c[place.cell], Quantity::temperature, formatter),
        line(QObject::tr("outside"), panel.outside_c[place.cell], Quantity::temperature, formatter)};
    if (panel.plane != climate::Plane::ceiling) {
        lines << line(QObject::tr("over the base"), climate::centre_of(panel, place.cell).z_m, Quantity::length,
                      formatter);
    }
    return lines;
}

QPointF floor_place_m(const QPointF& point, const Frame& frame)
{
    return {(point.x() - frame.plan.left()) / frame.pixels_per_m,
            (frame.plan.bottom() - point.y()) / frame.pixels_per_m};
}

QPointF section_place_m(const QPointF& point, const Frame& frame)
{
    return {(point.x() - frame.section.left()) / frame.pixels_per_m,
            (frame.section.bottom() - point.y()) / frame.pixels_per_m};
}

QStringList heat_lines(const QPointF& point, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = heat_in_view(picture);
    if (heat == nullptr) {
        return {};
    }
    if (frame.plan.contains(point)) {
        const QPointF at = floor_place_m(point, frame);
        return floor_lines(heat->detail, at.x(), at.y(), picture.formatter);
    }
    if (frame.section.contains(point)) {
        const QPointF at = section_place_m(point, frame);
        return section_lines(heat->detail, at.x(), at.y(), picture);
    }
    if (const auto place = panel_at(point, frame, picture)) {
        return panel_lines(*place, picture.formatter);
    }
    return {};
}

// On the floor: as damp as the lower air is at that place's temperature. In the lower air of the section: as it is.
QStringList moisture_lines(const QPointF& point, const Frame& frame, const Picture& picture)
{
    const assess::HeatCase* heat = case_in_view(picture);
    if (heat == nullptr) {
        return {};
    }
    const words::Formatter& formatter = picture.formatter;
    QStringList lines;
    if (frame.plan.contains(point)) {
        const QPointF at = floor_place_m(point, frame);
        const auto reading = read_floor(heat->detail.floor, at.x(), at.y());
        if (!reading) {
            return {};
        }
        lines << line(QObject::tr("humidity at ground level, shaded"), reading->humidity, Quantity::fraction, formatter)
              << line(QObject::tr("temperature there"), reading->ground_c, Quantity::temperature, formatter);
    } else if (frame.section.contains(point)) {
        const QPointF at = section_place_m(point, frame);
        if (at.y() <= bed_top_m(picture.enclosure, at.x()) || at.y() > picture.enclosure.shell.height_m / 2.0) {
            return {};
        }
        lines << line(QObject::tr("humidity of the lower air"), heat->detail.air_humidity.likely, Quantity::fraction,
                      formatter);
    } else {
        return {};
    }
    if (const auto dew_c = climate::lower_dew_point_c(heat->detail)) {
        lines << line(QObject::tr("dew point of the lower air"), *dew_c, Quantity::temperature, formatter);
    }
    return lines;
}

QStringList layer_lines(const QPointF& point, const Frame& frame, const Picture& picture)
{
    switch (picture.layer) {
    case Layer::heat:
        return heat_lines(point, frame, picture);
    case Layer::uv:
        return picture.result != nullptr && frame.plan.contains(point)
                   ? uv_lines(picture, floor_place_m(point, frame).x(), floor_place_m(point, frame).y())
                   : QStringList();
    case Layer::moisture:
        return moisture_lines(point, frame, picture);
    }
    return {};
}

} // namespace

QStringList probe_lines(const QPointF& point, const QRectF& area, const Picture& picture)
{
    QStringList lines = layer_lines(point, lay_out(picture, area), picture);
    if (!lines.isEmpty() && is_stale(picture)) {
        lines << QObject::tr("from before the last change");
    }
    return lines;
}

QRectF readout_box(const QPointF& point, const QSizeF& size, const QRectF& area)
{
    constexpr double clear_px = 16.0;
    const bool fits_right = point.x() + clear_px + size.width() <= area.right();
    const bool fits_above = point.y() - clear_px - size.height() >= area.top();
    const double left = fits_right ? point.x() + clear_px : point.x() - clear_px - size.width();
    const double top = fits_above ? point.y() - clear_px - size.height() : point.y() + clear_px;
    return {QPointF(std::max(area.left(), left), top), size};
}

void paint_probe(QPainter& painter, const QPointF& point, const QRectF& area, const Picture& picture)
{
    const QStringList lines = probe_lines(point, area, picture);
    if (lines.isEmpty()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(picture.font);
    const QFontMetricsF metrics(picture.font);
    double width = 0.0;
    for (const QString& each : lines) {
        width = std::max(width, metrics.horizontalAdvance(each));
    }
    const QRectF box =
        readout_box(point, QSizeF(width + 16.0, metrics.height() * static_cast<double>(lines.size()) + 8.0), area);
    painter.setPen(QPen(picture.inks.ink, 1.0, is_stale(picture) ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(picture.inks.paper);
    painter.drawRoundedRect(box, 4, 4);
    painter.drawText(box.adjusted(8, 4, -8, -4), Qt::AlignLeft | Qt::AlignVCenter, lines.join(QLatin1Char('\n')));
    painter.restore();
}

} // namespace loam::drawing
