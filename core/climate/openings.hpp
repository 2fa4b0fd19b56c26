// Air exchange through a mesh top and through vents, driven by buoyancy.
#pragma once

#include <optional>
#include <vector>

namespace loam::climate {

// A horizontal opening with heavier air above it.
struct Lid {
    double area_m2 = 0.0;
    double hydraulic_diameter_m = 0.0;
    double open_fraction = 1.0; // of the mesh; 1 has no screen
    double wire_m = 0.28e-3;    // fine insect mesh; coarser wire resists less
};

// Volume flow each way through an open lid, m3/s, `density_ratio` the difference over the mean.
// Method: Q = 0.055 sqrt(g (drho/rho) D^5) at no net pressure. Range: density_ratio >= 0, else nullopt.
// Source: Epstein 1988, J. Heat Transfer 110:885, as used by Cooper (NIST 1989) and in EnergyPlus.
std::optional<double> open_lid_m3_s(double hydraulic_diameter_m, double density_ratio);

// Loss coefficient F of a wire screen at face velocity w, dP = F rho w^2 / 2.
// Method: [18/Re + 0.75/log10(Re + 1.25) + 0.055 log10 Re] (1 - b^2) / b^2. Range: 0 < b < 1, w > 0, else nullopt.
// Source: Bailey et al. 2003 (constants from memory); measurements scatter by 50 to 70 % about it.
std::optional<double> screen_loss(double open_fraction, double wire_m, double face_velocity_m_s);

// Flow each way through a meshed lid, m3/s.
// Method: the open exchange is an equivalent head loss K0 = 102 at v = 2 Q / A; a screen crossed once each way adds
// 2 F, so Q = Q0 sqrt(K0 / (K0 + 2 F(v))). Our own combination, not validated: `exchange_factor` carries its spread.
// Range: as above.
std::optional<double> lid_exchange_m3_s(const Lid& lid, double density_ratio);

// An opening in a wall, or a lid as seen by the draught through it.
struct Opening {
    double area_m2 = 0.0;
    double height_m = 0.0;
};

// Draught through openings at several heights: flow in m3/s is `stack_coefficient` times sqrt(drho/rho).
// Method: Q = Cd A sqrt(2 g |z - zn| drho/rho) in each; the neutral height zn balances in and out. For two openings
// this is Q = Cd Aeff sqrt(2 g H dT/T), 1/Aeff^2 = 1/A1^2 + 1/A2^2. Cd = 0.61. Range: fewer than two heights give 0.
// Source: ASHRAE Fundamentals, ventilation and infiltration (from memory).
double stack_coefficient(const std::vector<Opening>& openings);

// Flow each way through one upright opening, again per sqrt(drho/rho), as high as it is wide.
// Method: Q = (1/3) Cd A sqrt(g h dT/T), Cd = 0.61. Range: area > 0.
// Source: Brown & Solvason 1962, as in the Modelica Buildings library.
double doorway_coefficient(double area_m2);

} // namespace loam::climate
