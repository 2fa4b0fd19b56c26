// How big a bowl an animal needs.
#pragma once

#include <optional>

namespace loam::water {

// What: diameter (m) of the round that a snake lies in when it is coiled flat in a tight spiral.
// Method: the body as a cylinder of its length whose volume is its mass over 1000 kg/m3: its thickness is
//   d = sqrt(4 m / (1000 pi L)); a flat spiral covers L d, so the round is sqrt(4 L d / pi) wide.
// Range: length and mass > 0, otherwise nullopt. Real coils are looser, so that it is a lower bound.
// Source: closed form; the density of flesh near that of water is common knowledge, no source.
std::optional<double> coil_diameter_m(double length_m, double mass_kg);

// A bowl's inner sides against the least that is asked for: by how much the short or the long one misses it, m.
struct Sides {
    double long_m = 0.0;
    double short_m = 0.0;
    friend bool operator==(const Sides&, const Sides&) = default;
};
// In either direction; 0 where it is met.
Sides missing(const Sides& bowl, const Sides& least);

} // namespace loam::water
