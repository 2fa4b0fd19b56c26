#include "core/climate/view_factors.hpp"

#include <array>
#include <cmath>
#include <numbers>

namespace loam::climate {

namespace {

double parallel_term(double dx, double dy, double z)
{
    const double rx = std::hypot(dx, z);
    const double ry = std::hypot(dy, z);
    return dy * rx * std::atan(dy / rx) + dx * ry * std::atan(dx / ry) -
           0.5 * z * z * std::log(dx * dx + dy * dy + z * z);
}

double perpendicular_term(double x, double z, double along)
{
    const double square = x * x + z * z;
    const double all = square + along * along;
    if (all <= 0.0)
        return 0.0; // the limit of both terms
    const double r = std::sqrt(square);
    const double arc = r > 0.0 ? along * r * std::atan(along / r) : 0.0;
    return arc - 0.25 * (square - along * along) * std::log(all);
}

// Sum over the corners of four spans, alternating in sign; `term` sees one end of each.
template <class Term> double corner_sum(const std::array<Span, 4>& spans, const Term& term)
{
    double sum = 0.0;
    for (unsigned corner = 0; corner < 16; ++corner) {
        std::array<double, 4> at{};
        double sign = 1.0;
        for (unsigned axis = 0; axis < 4; ++axis) {
            const bool end = (corner >> axis & 1U) != 0;
            at[axis] = end ? spans[axis].to : spans[axis].from;
            sign = end ? -sign : sign;
        }
        sum += sign * term(at);
    }
    return sum;
}

double area(Span a, Span b)
{
    return (a.to - a.from) * (b.to - b.from);
}

} // namespace

double parallel_view(Span x1, Span y1, Span x2, Span y2, double distance)
{
    const double sum = corner_sum({x1, y1, x2, y2}, [distance](const std::array<double, 4>& at) {
        return parallel_term(at[0] - at[2], at[1] - at[3], distance);
    });
    return sum / (2.0 * std::numbers::pi * area(x1, y1));
}

double perpendicular_view(Span x1, Span along1, Span z2, Span along2)
{
    const double sum = corner_sum({x1, along1, z2, along2}, [](const std::array<double, 4>& at) {
        return perpendicular_term(at[0], at[2], at[1] - at[3]);
    });
    return sum / (2.0 * std::numbers::pi * area(x1, along1));
}

} // namespace loam::climate
