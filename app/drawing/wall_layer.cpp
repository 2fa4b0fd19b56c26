#include "app/drawing/wall_layer.hpp"

#include <QFontMetricsF>
#include <algorithm>
#include <array>
#include <limits>

#include "app/drawing/dimensions.hpp"
#include "app/drawing/heat_layer.hpp"
#include "app/drawing/levels.hpp"
#include "app/words/verdicts.hpp"

namespace loam::drawing {

namespace {

constexpr std::array planes{climate::Plane::front, climate::Plane::back, climate::Plane::left, climate::Plane::right,
                            climate::Plane::ceiling};

bool is_side(climate::Plane plane)
{
    return plane == climate::Plane::left || plane == climate::Plane::right;
}

// A cell's corners, along the panel and as `on_panel` takes its height.
QRectF cell_rect(const Frame& frame, const climate::PanelField& panel, std::size_t cell)
{
    const bool top = panel.plane == climate::Plane::ceiling;
    const std::size_t row = cell / panel.columns;
    const double along_m = static_cast<double>(cell % panel.columns) * panel.along_m;
    const double up_m = (top ? 0.0 : panel.from_z_m) + static_cast<double>(row) * panel.up_m;
    return QRectF(on_panel(frame, panel.plane, along_m, up_m),
                  on_panel(frame, panel.plane, along_m + panel.along_m, up_m + panel.up_m))
        .normalized();
}

void paint_cells(QPainter& painter, const Frame& frame, const climate::PanelField& panel, const Span& colours)
{
    for (std::size_t cell = 0; cell < panel.closed.size(); ++cell) {
        if (panel.closed[cell] != 0) {
            painter.fillRect(cell_rect(frame, panel, cell), colour_at(colours.share(panel.inside_c[cell])));
        }
    }
}

void paint_lines(QPainter& painter, const Frame& frame, const climate::PanelField& panel, const Span& colours,
                 const Picture& picture)
{
    std::vector<double> inside = panel.inside_c;
    for (std::size_t cell = 0; cell < inside.size(); ++cell) {
        inside[cell] = panel.closed[cell] != 0 ? inside[cell] : std::numeric_limits<double>::quiet_NaN();
    }
    const double from_m = panel.plane == climate::Plane::ceiling ? 0.0 : panel.from_z_m;
    for (const double level_c : levels_c(colours, picture.formatter)) {
        painter.setPen(QPen(picture.colours ? ink_on(colour_at(colours.share(level_c))) : picture.inks.ink, 1.0));
        for (const Line& line : isolines(inside, {panel.columns, panel.rows, panel.along_m, panel.up_m}, level_c)) {
            QPolygonF path;
            for (const QPointF& point : line) {
                path << on_panel(frame, panel.plane, point.x(), from_m + point.y());
            }
            painter.drawPolyline(path);
        }
    }
}

QRectF label_box(const QPointF& centre, const QString& text, const QFontMetricsF& metrics)
{
    const QSizeF size(metrics.horizontalAdvance(text) + 8.0, metrics.height());
    return {centre - QPointF(size.width() / 2.0, size.height() / 2.0), size};
}

// In the corner that is farthest out.
QRectF name_box(const QRectF& wall, climate::Plane plane, const QString& name, const QFontMetricsF& metrics)
{
    QRectF box = label_box({}, name, metrics);
    const bool low = plane == climate::Plane::front;
    box.moveTopLeft(QPointF(wall.left() + 3.0, low ? wall.bottom() - box.height() - 3.0 : wall.top() + 3.0));
    return box;
}

// Beside its mark, inside the wall, clear of the wall's name.
QPointF figure_place(const QPointF& mark, const QRectF& wall, const QString& text, const QRectF& name,
                     const QFontMetricsF& metrics)
{
    const QRectF size = label_box({}, text, metrics);
    const double down = metrics.height() / 2.0 + 7.0;
    const double aside = size.width() / 2.0 + 8.0;
    QPointF first;
    for (const QPointF& step : {QPointF(aside, 0.0), QPointF(-aside, 0.0), QPointF(0.0, -down), QPointF(0.0, down)}) {
        const QRectF box = label_box(mark + step, text, metrics);
        if (wall.contains(box) && !name.intersects(box)) {
            return box.center();
        }
        first = first.isNull() ? box.center() : first;
    }
    return first;
}

void paint_hottest(QPainter& painter, const Frame& frame, const climate::PanelField& panel, const Picture& picture,
                   const QRectF& wall, const QRectF& name)
{
    const auto cell = hottest_cell(panel);
    if (!cell) {
        return;
    }
    constexpr double arm_px = 4.5;
    const QPointF mark = cell_rect(frame, panel, *cell).center();
    for (const auto& [ink, width] : {std::pair{picture.inks.paper, 4.0}, std::pair{picture.inks.ink, 1.8}}) {
        painter.setPen(QPen(ink, width));
        painter.drawLine(mark - QPointF(arm_px, 0.0), mark + QPointF(arm_px, 0.0));
        painter.drawLine(mark - QPointF(0.0, arm_px), mark + QPointF(0.0, arm_px));
    }
    const QString figure = whole_degrees(panel.inside_c[*cell], picture.formatter);
    paint_label(painter, figure_place(mark, wall, figure, name, QFontMetricsF(painter.font())), figure,
                picture.inks.ink, picture.inks.paper);
}

// What of a wall stands in the bed.
void paint_buried(QPainter& painter, const Frame& frame, const climate::PanelField& panel, const plan::Shell& shell,
                  const Inks& inks)
{
    if (panel.plane == climate::Plane::ceiling || panel.from_z_m <= 0.0) {
        return;
    }
    const double along_m = is_side(panel.plane) ? shell.width_m : shell.length_m;
    painter.fillRect(
        QRectF(on_panel(frame, panel.plane, 0.0, 0.0), on_panel(frame, panel.plane, along_m, panel.from_z_m))
            .normalized(),
        QBrush(inks.line, Qt::Dense6Pattern));
}

void paint_panel(QPainter& painter, const Frame& frame, const climate::PanelField& panel, const Picture& picture,
                 const Span& colours)
{
    const plan::Shell& shell = picture.enclosure.shell;
    const QRectF wall = panel_rect(frame, shell, panel.plane);
    painter.save();
    painter.setClipRect(wall);
    painter.setRenderHint(QPainter::Antialiasing, false); // smoothed edges would show as a grid
    paint_buried(painter, frame, panel, shell, picture.inks);
    if (picture.colours) {
        painter.setOpacity(is_stale(picture) ? 0.45 : 0.85);
        paint_cells(painter, frame, panel, colours);
        painter.setOpacity(1.0);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    paint_lines(painter, frame, panel, colours, picture);
    painter.restore();
    const QString name = words::panel(panel.plane);
    const QRectF box = name_box(wall, panel.plane, name, QFontMetricsF(painter.font()));
    paint_label(painter, box.center(), name, picture.inks.faint, picture.inks.paper);
    paint_hottest(painter, frame, panel, picture, wall, box);
    if (!hottest_cell(panel)) {
        paint_label(painter, wall.center(), QObject::tr("nothing closed"), picture.inks.faint, picture.inks.paper);
    }
}

} // namespace

const std::vector<climate::PanelField>& panels_in_view(const Picture& picture)
{
    static const std::vector<climate::PanelField> none;
    const assess::HeatCase* heat = heat_in_view(picture);
    return heat != nullptr ? heat->detail.panels : none;
}

std::optional<Span> wall_span(const Picture& picture)
{
    std::optional<Span> span;
    for (const climate::PanelField& panel : panels_in_view(picture)) {
        for (std::size_t cell = 0; cell < panel.closed.size(); ++cell) {
            if (panel.closed[cell] == 0 || panel.plane == climate::Plane::ceiling) {
                continue; // a top close to a lamp is so hot that the rest would be one colour
            }
            const double here_c = panel.inside_c[cell];
            span = span ? Span{std::min(span->low, here_c), std::max(span->high, here_c)} : Span{here_c, here_c};
        }
    }
    return span;
}

std::optional<std::size_t> hottest_cell(const climate::PanelField& panel)
{
    std::optional<std::size_t> hottest;
    for (std::size_t cell = 0; cell < panel.closed.size(); ++cell) {
        if (panel.closed[cell] != 0 && (!hottest || panel.inside_c[cell] > panel.inside_c[*hottest])) {
            hottest = cell;
        }
    }
    return hottest;
}

QPointF on_panel(const Frame& frame, climate::Plane plane, double along_m, double up_m)
{
    const double along = along_m * frame.pixels_per_m;
    const double up = up_m * frame.pixels_per_m;
    switch (plane) {
    case climate::Plane::front:
        return {frame.plan.left() + along, frame.plan.bottom() + frame.fold + up};
    case climate::Plane::back:
        return {frame.plan.left() + along, frame.plan.top() - frame.fold - up};
    case climate::Plane::left:
        return {frame.plan.left() - frame.fold - up, frame.plan.bottom() - along};
    case climate::Plane::right:
        return {frame.plan.right() + frame.fold + up, frame.plan.bottom() - along};
    case climate::Plane::floor:
    case climate::Plane::ceiling:
        break;
    }
    return {frame.top.left() + along, frame.top.bottom() - up};
}

QRectF panel_rect(const Frame& frame, const plan::Shell& shell, climate::Plane plane)
{
    const double along_m = is_side(plane) ? shell.width_m : shell.length_m;
    const double up_m = plane == climate::Plane::ceiling ? shell.width_m : shell.height_m;
    return QRectF(on_panel(frame, plane, 0.0, 0.0), on_panel(frame, plane, along_m, up_m)).normalized();
}

std::optional<PanelPlace> panel_at(const QPointF& point, const Frame& frame, const Picture& picture)
{
    if (!frame.unfolded) {
        return std::nullopt;
    }
    for (const climate::PanelField& panel : panels_in_view(picture)) {
        for (std::size_t cell = 0; cell < panel.closed.size(); ++cell) {
            if (cell_rect(frame, panel, cell).contains(point)) {
                return PanelPlace{&panel, cell};
            }
        }
    }
    return std::nullopt;
}

void paint_panels(QPainter& painter, const Frame& frame, const Picture& picture, const Span& colours)
{
    if (!frame.unfolded) {
        return;
    }
    for (const climate::PanelField& panel : panels_in_view(picture)) {
        paint_panel(painter, frame, panel, picture, colours);
    }
    painter.setBrush(Qt::NoBrush);
    for (const climate::Plane plane : planes) {
        QPen pen(picture.inks.glass, 1.4);
        pen.setStyle(plane == climate::Plane::ceiling && picture.enclosure.shell.top.kind == plan::TopKind::mesh
                         ? Qt::DotLine
                         : Qt::SolidLine);
        painter.setPen(pen);
        painter.drawRect(panel_rect(frame, picture.enclosure.shell, plane));
    }
}

} // namespace loam::drawing
