// A verdict's shape and colour. The word always stands beside it, so that nothing depends on colour alone.
// Colours: Okabe & Ito 2008, "Color universal design" (published colour-blind safe set, from memory).
#pragma once

#include <QColor>
#include <QIcon>
#include <QPainter>
#include <array>

#include "core/explain.hpp"

namespace loam::drawing {

// On dark paper the colours are lightened to keep their contrast.
QColor verdict_colour(Verdict verdict, bool on_dark);

// Disc: fits. Half disc: tight. Square: falls short. Triangle with a bar: danger. Open ring: not known.
void paint_verdict_mark(QPainter& painter, const QRectF& box, Verdict verdict, bool on_dark);

QIcon verdict_icon(Verdict verdict, bool on_dark);

// All of them, for a table whose rows share them: to draw one takes longer than the rest of a row.
class VerdictIcons {
public:
    explicit VerdictIcons(bool on_dark);
    const QIcon& operator[](Verdict verdict) const { return icons_[static_cast<std::size_t>(verdict)]; }

private:
    std::array<QIcon, 5> icons_;
};

} // namespace loam::drawing
