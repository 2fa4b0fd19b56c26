#include "core/climate/evaporation.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/psychrometrics.hpp"
#include "core/units.hpp"

namespace loam::climate {

double still_water_kg_s_m2_pa()
{
    return 0.5 * 0.089 / latent_heat_j_kg;
}

std::optional<double> shah_kg_m2_h(const ShahState& state)
{
    const bool inside = state.water_c >= 0.0 && state.water_c <= 60.0 && state.air_c >= 0.0 && state.air_c <= 60.0;
    if (!inside)
        return std::nullopt;
    const double water_pa = *saturation_pressure_pa(state.water_c);
    const double air_pa = state.air_relative_humidity * *saturation_pressure_pa(state.air_c);
    const auto dry_density = [](double celsius, double vapour_pa) {
        return (units::standard_pressure_pa - vapour_pa) / (dry_air_gas_constant * units::kelvin_from_celsius(celsius));
    };
    const double water_density = dry_density(state.water_c, water_pa);
    const double lift = std::max(0.0, dry_density(state.air_c, air_pa) - water_density);
    const double buoyant =
        35.0 * water_density * std::cbrt(lift) * (*humidity_ratio(water_pa) - *humidity_ratio(air_pa));
    return std::max(buoyant, 5e-5 * (water_pa - air_pa));
}

double lewis_kg_s_m2(double film_w_m2k)
{
    return film_w_m2k / dry_air_heat_j_kgk;
}

double stretched_wetness(double wetness, double factor)
{
    return 1.0 - std::pow(1.0 - wetness, factor);
}

MistFlow mist_flow(double supply, double bare)
{
    const double lasting = std::exp(-bare / supply);
    return {supply * (1.0 - lasting), lasting};
}

} // namespace loam::climate
