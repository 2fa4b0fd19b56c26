#include "core/climate/beam.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace loam::climate {

std::optional<double> beam_exponent(double width_deg)
{
    if (!(width_deg >= 1.0 && width_deg <= 175.0))
        return std::nullopt;
    return -std::numbers::ln2 / std::log(std::cos(0.5 * width_deg * std::numbers::pi / 180.0));
}

double beam_intensity_per_sr(double exponent, double cosine)
{
    return (exponent + 1.0) / (2.0 * std::numbers::pi) * std::pow(cosine, exponent);
}

double beam_share_within(double exponent, double cosine)
{
    return 1.0 - std::pow(cosine, exponent + 1.0);
}

double beam_irradiance_per_m2(double exponent, const Offset& offset, const Normal& normal)
{
    if (offset.drop_m <= 0.0)
        return 0.0;
    const double square = offset.dx_m * offset.dx_m + offset.dy_m * offset.dy_m + offset.drop_m * offset.drop_m;
    const double distance_m = std::sqrt(square);
    const double incidence = (-offset.dx_m * normal.x - offset.dy_m * normal.y + offset.drop_m * normal.z) / distance_m;
    if (incidence <= 0.0)
        return 0.0;
    return beam_intensity_per_sr(exponent, offset.drop_m / distance_m) * incidence / square;
}

} // namespace loam::climate
