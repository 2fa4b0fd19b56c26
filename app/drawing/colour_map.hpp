// Temperature to colour: blue-black to straw, evenly stepped in perceived lightness so that it prints in grey too.
// Interpolated in Oklab (Ottosson 2020, "A perceptual color space for image processing", from memory).
#pragma once

#include <QColor>
#include <QImage>
#include <vector>

namespace loam::drawing {

QColor colour_at(double share); // 0 cold .. 1 warm; values outside take the end's colour

// The readable ink on that colour.
QColor ink_on(const QColor& colour);

struct Span {
    double low = 0.0;
    double high = 1.0;
    bool falling = false; // the lowest value has the warm end's colour: dry straw, damp blue
    double share(double value) const
    {
        const double rising = high > low ? (value - low) / (high - low) : 0.5;
        return falling ? 1.0 - rising : rising;
    }
};

// A field, row by row from the front-left, as a picture with the back row on top. What is not a number stays clear.
QImage field_image(const std::vector<double>& values, std::size_t columns, std::size_t rows, const Span& span);

} // namespace loam::drawing
