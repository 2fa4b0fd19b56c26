#include "core/light/erythema.hpp"

#include <cmath>

namespace loam::light {

std::optional<double> erythemal_weight(double wavelength_nm)
{
    if (!(wavelength_nm >= 250.0)) {
        return std::nullopt;
    }
    if (wavelength_nm <= 298.0) {
        return 1.0;
    }
    if (wavelength_nm <= 328.0) {
        return std::pow(10.0, 0.094 * (298.0 - wavelength_nm));
    }
    return wavelength_nm <= 400.0 ? std::pow(10.0, 0.015 * (140.0 - wavelength_nm)) : 0.0;
}

double uv_index_of_effective(double effective_w_m2)
{
    constexpr double index_per_w_m2 = 40.0;
    return index_per_w_m2 * effective_w_m2;
}

UviBounds uv_index_of_unweighted(double uvb_w_m2)
{
    constexpr double longest_uvb_nm = 315.0;
    constexpr double shortest_uvb_nm = 280.0;
    return {uv_index_of_effective(uvb_w_m2 * *erythemal_weight(longest_uvb_nm)),
            uv_index_of_effective(uvb_w_m2 * *erythemal_weight(shortest_uvb_nm))};
}

} // namespace loam::light
