#include "core/climate/films.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/air.hpp"
#include "core/units.hpp"

namespace loam::climate {

std::optional<double> vertical_nusselt(double rayleigh, double prandtl)
{
    if (!(rayleigh >= 0.0 && rayleigh <= 1e12 && prandtl > 0.0))
        return std::nullopt;
    const double denominator = std::pow(1.0 + std::pow(0.492 / prandtl, 9.0 / 16.0), 8.0 / 27.0);
    const double root = 0.825 + 0.387 * std::pow(rayleigh, 1.0 / 6.0) / denominator;
    return root * root;
}

std::optional<double> buoyant_nusselt(double rayleigh)
{
    if (!(rayleigh >= 0.0 && rayleigh <= 1e11))
        return std::nullopt;
    return std::max(0.54 * std::sqrt(std::sqrt(rayleigh)), 0.15 * std::cbrt(rayleigh));
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
    const double rayleigh = units::standard_gravity_m_s2 * std::abs(rise_k) / units::kelvin_from_celsius(mean_c) *
                            film.length_m * film.length_m * film.length_m * air->prandtl /
                            (air->viscosity_m2_s * air->viscosity_m2_s);
    const bool buoyant = (film.facing == Facing::up) == (rise_k >= 0.0);
    const auto nusselt = film.facing == Facing::vertical ? vertical_nusselt(rayleigh, air->prandtl)
                         : buoyant                       ? buoyant_nusselt(rayleigh)
                                                         : layered_nusselt(rayleigh);
    if (!nusselt)
        return std::nullopt;
    const double free_w_m2k = *nusselt * air->conductivity_w_mk / film.length_m;
    if (film.facing == Facing::vertical)
        return film.factor * free_w_m2k;
    const double square = free_w_m2k * free_w_m2k;
    constexpr double still_fourth = 0.7 * 0.7 * 0.7 * 0.7;
    return film.factor * std::sqrt(std::sqrt(square * square + still_fourth));
}

std::optional<FilmValue> film_value(const Film& film, double face_c, double air_c)
{
    constexpr double step_k = 1e-3;
    const auto at = film_w_m2k(film, face_c, air_c);
    const auto face_up = film_w_m2k(film, face_c + step_k, air_c);
    const auto face_down = film_w_m2k(film, face_c - step_k, air_c);
    const auto air_up = film_w_m2k(film, face_c, air_c + step_k);
    const auto air_down = film_w_m2k(film, face_c, air_c - step_k);
    if (!at || !face_up || !face_down || !air_up || !air_down)
        return std::nullopt;
    return FilmValue{.w_m2k = *at,
                     .per_face_k = (*face_up - *face_down) / (2.0 * step_k),
                     .per_air_k = (*air_up - *air_down) / (2.0 * step_k)};
}

} // namespace loam::climate
