// View factors between axis-parallel rectangles.
#pragma once

namespace loam::climate {

struct Span {
    double from = 0.0;
    double to = 0.0;
};

// Share of what the first rectangle sends out that reaches the second, both parallel and `distance` apart, spans in
// the shared axes. Method: closed form over the 16 corner pairs. Range: distance > 0.
// Source: Howell, A Catalog of Radiation Heat Transfer Configuration Factors, C-13 (from memory; checked against the
// printed values of C-11).
double parallel_view(Span x1, Span y1, Span x2, Span y2, double distance);

// The same for perpendicular planes that meet in the line x = z = 0: the first rectangle lies at distances x from that
// line, the second at distances z, both with spans along it. Range: distances >= 0.
// Source: Howell C-16 (from memory; checked against the printed values of C-14).
double perpendicular_view(Span x1, Span along1, Span z2, Span along2);

} // namespace loam::climate
