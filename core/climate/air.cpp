#include "core/climate/air.hpp"

#include <algorithm>
#include <array>

#include "core/climate/psychrometrics.hpp"
#include "core/units.hpp"

namespace loam::climate {

namespace {

struct Row {
    double celsius;
    Air air;
};

constexpr std::array<Row, 18> table{{
    {-20, {1.394, 0.02211, 1.169e-5, 0.7408}},
    {-10, {1.341, 0.02288, 1.252e-5, 0.7387}},
    {0, {1.292, 0.02364, 1.338e-5, 0.7362}},
    {10, {1.246, 0.02439, 1.426e-5, 0.7336}},
    {20, {1.204, 0.02514, 1.516e-5, 0.7309}},
    {25, {1.184, 0.02551, 1.562e-5, 0.7296}},
    {30, {1.164, 0.02588, 1.608e-5, 0.7282}},
    {35, {1.145, 0.02625, 1.655e-5, 0.7268}},
    {40, {1.127, 0.02662, 1.702e-5, 0.7255}},
    {50, {1.092, 0.02735, 1.798e-5, 0.7228}},
    {60, {1.059, 0.02808, 1.896e-5, 0.7202}},
    {80, {0.9994, 0.02953, 2.097e-5, 0.7154}},
    {100, {0.9458, 0.03095, 2.306e-5, 0.7111}},
    {120, {0.8977, 0.03235, 2.522e-5, 0.7073}},
    {140, {0.8542, 0.03374, 2.745e-5, 0.7041}},
    {160, {0.8148, 0.03511, 2.975e-5, 0.7014}},
    {180, {0.7788, 0.03646, 3.212e-5, 0.6992}},
    {200, {0.7459, 0.03779, 3.455e-5, 0.6974}},
}};

} // namespace

std::optional<Air> air_at(double celsius)
{
    if (!(celsius >= table.front().celsius && celsius <= table.back().celsius))
        return std::nullopt;
    const auto upper = std::upper_bound(table.begin() + 1, table.end() - 1, celsius,
                                        [](double value, const Row& row) { return value < row.celsius; });
    const Row& a = *(upper - 1);
    const Row& b = *upper;
    const double share = (celsius - a.celsius) / (b.celsius - a.celsius);
    const auto mix = [share](double from, double to) { return from + share * (to - from); };
    return Air{.density_kg_m3 = mix(a.air.density_kg_m3, b.air.density_kg_m3),
               .conductivity_w_mk = mix(a.air.conductivity_w_mk, b.air.conductivity_w_mk),
               .viscosity_m2_s = mix(a.air.viscosity_m2_s, b.air.viscosity_m2_s),
               .prandtl = mix(a.air.prandtl, b.air.prandtl)};
}

double air_density_kg_m3(double celsius)
{
    return units::standard_pressure_pa / (dry_air_gas_constant * units::kelvin_from_celsius(celsius));
}

} // namespace loam::climate
