// Properties of dry air at 1 atm.
#pragma once

#include <optional>

namespace loam::climate {

struct Air {
    double density_kg_m3 = 0.0;
    double conductivity_w_mk = 0.0;
    double viscosity_m2_s = 0.0; // kinematic
    double prandtl = 0.0;
};

// Method: linear between the rows of the table. Range: -20 to 200 degC, else nullopt.
// Source: Cengel, Heat Transfer, Table A-15 (rows from 0 to 100 degC seen; those outside from memory).
std::optional<Air> air_at(double celsius);

// Density of dry air at 1 atm as an ideal gas, kg/m3, as flows through openings need it. Range: above -100 degC.
double air_density_kg_m3(double celsius);

} // namespace loam::climate
