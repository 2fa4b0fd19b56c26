// Evaporation from bowls and damp surfaces.
#pragma once

#include <optional>

namespace loam::climate {

// Mass flow per area and vapour pressure difference over undisturbed water, kg/(s m2 Pa); the flow is this times
// (p_water - p_air). Method: 0.089 W/(m2 Pa) over the latent heat, times an activity factor of 0.5 for water that
// nobody swims in. Range: still air, 0 to 60 degC. Shah 2014 gives 1.06 of it at
// 26 degC and half-saturated air, Smith, Lof & Jones 1994 1.43.
// Source: ASHRAE HVAC Applications, natatoriums.
double still_water_kg_s_m2_pa();

// Evaporation over undisturbed water, kg/(m2 h), for comparison: the greater of 35 rho_w (rho_r - rho_w)^(1/3)
// (W_w - W_r) and 5e-5 (p_w - p_r), densities in kg of dry air per m3 of mixture. Range: 0 to 60 degC, else nullopt.
// Source: Shah 2014, ASHRAE Trans. 120(2) (from memory; reproduces a published table to 0.2 %).
struct ShahState {
    double water_c = 0.0;
    double air_c = 0.0;
    double air_relative_humidity = 0.0;
};
std::optional<double> shah_kg_m2_h(const ShahState& state);

// Mass transfer coefficient beside a convective film, kg/(s m2), the flow is this times (W_surface - W_air).
// Method: Lewis relation for air and water, h / cp. Range: low mass flows. Source: ASHRAE Fundamentals, mass transfer
// (from memory).
double lewis_kg_s_m2(double film_w_m2k);

// What: misted water on the part of a surface that is not damp by itself, kg/s or kg/(s m2): as much as that part can
// give off, as far as the supply lasts. Method: supply (1 - exp(-bare / supply)), smooth between the two limits.
// Range: supply > 0, bare >= 0. `lasting` is the share of `bare` that one more unit of it would still give.
struct MistFlow {
    double flow = 0.0;
    double lasting = 0.0;
};
MistFlow mist_flow(double supply, double bare);

// Share of a damp surface that evaporates like open water once the model's factor stretches it: 1 - (1 - w)^f, which
// is f w for small w and never passes 1, so that no surface outdoes the wet bulb. Range: w 0..1, f >= 0.
double stretched_wetness(double wetness, double factor);

} // namespace loam::climate
