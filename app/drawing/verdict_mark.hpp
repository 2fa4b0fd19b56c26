// A verdict's shape and colour. The word always stands beside it, so that nothing depends on colour alone.
// Colours: Okabe & Ito 2008, "Color universal design" (published colour-blind safe set, from memory).
#pragma once

#include <QColor>
#include <QIcon>
#include <QPainter>

#include "core/explain.hpp"

namespace loam::drawing {

// On dark paper the colours are lightened to keep their contrast.
QColor verdict_colour(Verdict verdict, bool on_dark);

// Disc: fits. Half disc: tight. Square: falls short. Triangle with a bar: danger. Open ring: not known.
void paint_verdict_mark(QPainter& painter, const QRectF& box, Verdict verdict, bool on_dark);

QIcon verdict_icon(Verdict verdict, bool on_dark);

} // namespace loam::drawing
