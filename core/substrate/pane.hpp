// Whether a base pane bears an even load where nothing supports it but its edges. An optional figure: a pane that lies
// flat on its stand does not bend.
#pragma once

#include <optional>

namespace loam::substrate {

struct PaneBending {
    double stress_pa = 0.0;    // greatest, at the centre
    double deflection_m = 0.0; // at the centre
    friend bool operator==(const PaneBending&, const PaneBending&) = default;
};

struct EvenlyLoadedPane {
    double long_side_m = 0.0;
    double short_side_m = 0.0;
    double thickness_m = 0.0;
    double pressure_pa = 0.0;
    double youngs_modulus_pa = 70e9; // soda-lime glass, EN 572
    friend bool operator==(const EvenlyLoadedPane&, const EvenlyLoadedPane&) = default;
};

// What: greatest bending stress (Pa) and deflection (m) of a rectangular pane simply supported on all four edges.
// Method: sigma = beta q b^2/t^2, w = alpha q b^4/(E t^3); beta and alpha by side ratio a/b from the table (Poisson
//   ratio 0.3), linear in b/a between its rows, which meets the infinite strip in its last one.
// Range: sides and thickness > 0, t <= b/10 (thin plate), and w <= t/2 (small deflection); otherwise nullopt. Sides may
//   be given in either order.
// Source: Roark's Formulas for Stress and Strain, table 11.4 case 1a.
std::optional<PaneBending> bending(const EvenlyLoadedPane& pane);

// Allowable bending stress of annealed float glass under permanent load: 0.29 * 45 MPa / 1.8.
// Source: EN 16612 (from memory).
inline constexpr double annealed_glass_permanent_pa = 7.25e6;

} // namespace loam::substrate
