#include <algorithm>

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

Frame lay_out(const plan::Shell& shell, const QRectF& area, const QFont& font)
{
    const double text = QFontMetricsF(font).height();
    // Room for dimension lines (left and below), captions above each view, lamps above the section, and the legend.
    const double left = 3.2 * text;
    const double right = 1.2 * text;
    const double caption = 1.5 * text;
    const double between = caption + 2.2 * text;
    const double above_section = 2.6 * text;
    const double below = 2.4 * text;
    const double legend = 2.6 * text;
    const double wide = area.width() - left - right;
    const double tall = area.height() - caption - between - above_section - below - legend;
    const double scale = std::max(1.0, std::min(wide / shell.length_m, tall / (shell.width_m + shell.height_m)));

    Frame frame;
    frame.pixels_per_m = scale;
    const double x = area.left() + left + (wide - scale * shell.length_m) / 2.0;
    double y = area.top() + caption;
    frame.plan = QRectF(x, y, scale * shell.length_m, scale * shell.width_m);
    y = frame.plan.bottom() + between + above_section;
    frame.section = QRectF(x, y, scale * shell.length_m, scale * shell.height_m);
    frame.legend = QRectF(area.left() + left, area.bottom() - legend, wide, legend);
    return frame;
}

} // namespace loam::drawing
