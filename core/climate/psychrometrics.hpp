// Moist air at standard pressure: saturation, humidity ratio, dew point, wet bulb.
#pragma once

#include <optional>

#include "core/units.hpp"

namespace loam::climate {

inline constexpr double latent_heat_j_kg = 2.4417e6;  // of water at 25 degC, IAPWS-IF97; 1 % less at 35, 1 % more at 15
inline constexpr double dry_air_heat_j_kgk = 1007.0;  // Cengel, Heat Transfer, Table A-15, 20 to 60 degC
inline constexpr double vapour_mass_ratio = 0.621945; // molar mass of water over that of dry air
inline constexpr double dry_air_gas_constant = 287.042; // J/(kg K)

// Saturation pressure of water vapour, Pa, over ice below 0 degC.
// Method: ln p as a polynomial in T plus a ln T term. Range: -100 to 200 degC, else nullopt.
// Source: Hyland & Wexler 1983, in ASHRAE Fundamentals (2017) ch. 1 eqs 5 and 6 (from memory, checked against the
// printed table).
std::optional<double> saturation_pressure_pa(double celsius);

// Humidity ratio of saturated air, kg water per kg dry air, and its derivative per kelvin.
// Method: W = 0.621945 p / (P - p). Range: -100 to 95 degC, nullopt where the water would boil.
// Source: ASHRAE Fundamentals (2017) ch. 1.
struct Saturation {
    double humidity_ratio = 0.0;
    double per_kelvin = 0.0;
};
std::optional<Saturation> saturation(double celsius, double pressure_pa = units::standard_pressure_pa);

// W = 0.621945 pv / (P - pv) and back. Range: 0 <= pv < P. Source: ASHRAE Fundamentals (2017) ch. 1.
std::optional<double> humidity_ratio(double vapour_pressure_pa, double pressure_pa = units::standard_pressure_pa);
double vapour_pressure_pa(double humidity_ratio, double pressure_pa = units::standard_pressure_pa);

// Relative humidity 0..1 may exceed 1 in supersaturated (foggy) air.
std::optional<double> relative_humidity(double celsius, double humidity_ratio);
// What a hygrometer shows, 0..1: the surplus of supersaturated air has dropped; 0 outside the range of the equation.
double hygrometer_reading(double celsius, double humidity_ratio);
std::optional<double> humidity_ratio_at(double celsius, double relative_humidity);

// Temperature at which air of this humidity ratio is saturated, degC.
// Method: Newton on the saturation curve. Range: -60 to 90 degC, else nullopt.
std::optional<double> dew_point_c(double humidity_ratio);

// Thermodynamic wet-bulb temperature, degC.
// Method: bisection on W = [(2501 - 2.326 t*) Ws* - 1.006 (t - t*)] / (2501 + 1.86 t - 4.186 t*).
// Range: t from 0 to 90 degC and t* >= 0 degC, else nullopt. Source: ASHRAE Fundamentals (2017) ch. 1.
std::optional<double> wet_bulb_c(double celsius, double humidity_ratio);

} // namespace loam::climate
