#include "core/climate/films.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/air.hpp"
#include "core/units.hpp"

namespace loam::climate {

namespace {
constexpr double rest_k = 0.25;
} // namespace

std::optional<double> vertical_nusselt(double rayleigh, double prandtl)
{
    if (!(rayleigh >= 0.0 && rayleigh <= 1e12 && prandtl > 0.0))
        return std::nullopt;
    const double denominator = std::pow(1.0 + std::pow(0.492 / prandtl, 9.0 / 16.0), 8.0 / 27.0);
    const double root = 0.825 + 0.387 * std::cbrt(std::sqrt(rayleigh)) / denominator;
    return root * root;
}

std::optional<double> buoyant_nusselt(double rayleigh)
{
    if (!(rayleigh >= 0.0 && rayleigh <= 1e11))
        return std::nullopt;
    const double quarter = 0.54 * std::sqrt(std::sqrt(rayleigh));
    constexpr double below_crossing = 4.6e6; // spares the cube root where it is the lesser one
    return rayleigh < below_crossing ? quarter : std::max(quarter, 0.15 * std::cbrt(rayleigh));
}

std::optional<double> layered_nusselt(double rayleigh)
{
    if (!(rayleigh >= 0.0 && rayleigh <= 1e11))
        return std::nullopt;
    return 0.27 * std::sqrt(std::sqrt(rayleigh));
}

std::optional<double> film_w_m2k(const Film& film, double face_c, double air_c)
{
    const double mean_c = 0.5 * (face_c + air_c);
    const auto air = air_at(mean_c);
    if (!air)
        return std::nullopt;
    const double rise_k = face_c - air_c;
    const double rounded_k = std::sqrt(rise_k * rise_k + rest_k * rest_k);
    const double rayleigh = units::standard_gravity_m_s2 * rounded_k / units::kelvin_from_celsius(mean_c) *
                            film.length_m * film.length_m * film.length_m * air->prandtl /
                            (air->viscosity_m2_s * air->viscosity_m2_s);
    std::optional<double> nusselt;
    if (film.facing == Facing::vertical) {
        nusselt = vertical_nusselt(rayleigh, air->prandtl);
    } else {
        const double up = film.facing == Facing::up ? rise_k : -rise_k;
        const double buoyant = 0.5 * (1.0 + up / rounded_k); // share of the buoyant regime
        const auto rising = buoyant_nusselt(rayleigh);
        const auto layered = layered_nusselt(rayleigh);
        if (rising && layered)
            nusselt = buoyant * *rising + (1.0 - buoyant) * *layered;
    }
    return nusselt ? std::optional(film.factor * *nusselt * air->conductivity_w_mk / film.length_m) : std::nullopt;
}

// The film depends on the rise and on the mean, so two small steps give both slopes.
std::optional<FilmValue> film_value(const Film& film, double face_c, double air_c)
{
    constexpr double step_k = 1e-4;
    const auto at = film_w_m2k(film, face_c, air_c);
    const auto more_rise = film_w_m2k(film, face_c + 0.5 * step_k, air_c - 0.5 * step_k);
    const auto more_mean = film_w_m2k(film, face_c + step_k, air_c + step_k);
    if (!at || !more_rise || !more_mean)
        return std::nullopt;
    const double per_rise_k = (*more_rise - *at) / step_k;
    const double per_mean_k = (*more_mean - *at) / step_k;
    return FilmValue{
        .w_m2k = *at, .per_face_k = per_rise_k + 0.5 * per_mean_k, .per_air_k = -per_rise_k + 0.5 * per_mean_k};
}

} // namespace loam::climate
