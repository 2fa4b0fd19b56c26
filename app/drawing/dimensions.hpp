// Dimension lines with end ticks (after ISO 129-1: thin line, oblique strokes, figure above), and a scale bar.
#pragma once

#include <QPainter>
#include <QPointF>
#include <QString>

#include "app/drawing/enclosure_drawing.hpp"

namespace loam::drawing {

// Along x, at `y`, from `left` to `right`; the figure stands above the line.
void paint_width_dimension(QPainter& painter, double left, double right, double y, const QString& figure,
                           const Inks& inks);
// Along y, at `x`, read from the right.
void paint_height_dimension(QPainter& painter, double top, double bottom, double x, const QString& figure,
                            const Inks& inks);
// A bar of a round length at the lower left of `box`.
// The longest round length that takes no more than a quarter of the width.
double scale_bar_m(double width_px, double pixels_per_m, const words::Formatter& formatter);
void paint_scale_bar(QPainter& painter, const QRectF& box, double pixels_per_m, const words::Formatter& formatter,
                     const Inks& inks);

// Text on a patch of paper, so that lines under it don't cross it.
void paint_label(QPainter& painter, const QPointF& centre, const QString& text, const QColor& ink,
                 const QColor& ground);

} // namespace loam::drawing
