#include "app/drawing/colour_map.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace loam::drawing {

namespace {

struct Oklab {
    double lightness, a, b;
};

// Lightness rises in equal steps; hue goes from blue over grey-green to straw, which red-green blindness keeps apart.
constexpr std::array<Oklab, 4> stops{Oklab{0.30, -0.015, -0.085}, Oklab{0.50, -0.030, -0.045},
                                     Oklab{0.70, -0.020, 0.055}, Oklab{0.90, 0.005, 0.130}};

double to_srgb(double linear)
{
    const double held = std::clamp(linear, 0.0, 1.0);
    return held <= 0.0031308 ? 12.92 * held : 1.055 * std::pow(held, 1.0 / 2.4) - 0.055;
}

QColor to_colour(const Oklab& lab)
{
    const double l = std::pow(lab.lightness + 0.3963377774 * lab.a + 0.2158037573 * lab.b, 3);
    const double m = std::pow(lab.lightness - 0.1055613458 * lab.a - 0.0638541728 * lab.b, 3);
    const double s = std::pow(lab.lightness - 0.0894841775 * lab.a - 1.2914855480 * lab.b, 3);
    return QColor::fromRgbF(static_cast<float>(to_srgb(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s)),
                            static_cast<float>(to_srgb(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s)),
                            static_cast<float>(to_srgb(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s)));
}

} // namespace

QColor colour_at(double share)
{
    const double place = std::clamp(std::isfinite(share) ? share : 0.5, 0.0, 1.0) * (stops.size() - 1);
    const std::size_t below = std::min(static_cast<std::size_t>(place), stops.size() - 2);
    const double part = place - static_cast<double>(below);
    const Oklab& from = stops.at(below);
    const Oklab& to = stops.at(below + 1);
    return to_colour(
        {std::lerp(from.lightness, to.lightness, part), std::lerp(from.a, to.a, part), std::lerp(from.b, to.b, part)});
}

QColor ink_on(const QColor& colour)
{
    // Relative luminance after WCAG 2.1; 0.18 is where black and white contrast equally.
    const auto linear = [](double part) {
        return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    const double luminance =
        0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
    return luminance > 0.18 ? QColor(0x14, 0x14, 0x12) : QColor(0xff, 0xff, 0xff);
}

QImage field_image(const std::vector<double>& values, std::size_t columns, std::size_t rows, const Span& span)
{
    QImage image(static_cast<int>(columns), static_cast<int>(rows), QImage::Format_ARGB32);
    for (std::size_t row = 0; row < rows; ++row) {
        for (std::size_t column = 0; column < columns; ++column) {
            const double value = values.at(row * columns + column);
            const QColor colour = std::isnan(value) ? QColor(Qt::transparent) : colour_at(span.share(value));
            image.setPixelColor(static_cast<int>(column), static_cast<int>(rows - 1 - row), colour);
        }
    }
    return image;
}

} // namespace loam::drawing
