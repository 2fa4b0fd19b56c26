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

namespace {

struct Known {
    double w_m2k = 0.0;
    double per_rise_k = 0.0; // at a fixed mean
};

// A Nusselt number and its slope against the Rayleigh number, times that.
struct Nusselt {
    double value = 0.0;
    double power = 0.0; // d ln Nu / d ln Ra
};

std::optional<Nusselt> vertical(double rayleigh, double prandtl)
{
    const auto value = vertical_nusselt(rayleigh, prandtl);
    if (!value)
        return std::nullopt;
    const double root = std::sqrt(*value); // 0.825 plus what goes with the sixth power
    return Nusselt{*value, (root - 0.825) / (3.0 * root)};
}

std::optional<Nusselt> buoyant(double rayleigh)
{
    const auto value = buoyant_nusselt(rayleigh);
    if (!value)
        return std::nullopt;
    constexpr double crossing = 4.665e6; // where both powers are equal
    return Nusselt{*value, rayleigh < crossing ? 0.25 : 1.0 / 3.0};
}

std::optional<Known> known_film(const Film& film, double face_c, double air_c)
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
    const double log_slope = rise_k / (rounded_k * rounded_k); // of the Rayleigh number
    double nusselt = 0.0;
    double slope = 0.0;
    if (film.facing == Facing::vertical) {
        const auto plate = vertical(rayleigh, air->prandtl);
        if (!plate)
            return std::nullopt;
        nusselt = plate->value;
        slope = plate->value * plate->power * log_slope;
    } else {
        const auto rising = buoyant(rayleigh);
        const auto layered = layered_nusselt(rayleigh);
        if (!rising || !layered)
            return std::nullopt;
        const double sign = film.facing == Facing::up ? 1.0 : -1.0;
        const double share = 0.5 * (1.0 + sign * rise_k / rounded_k); // of the buoyant regime
        const double share_slope = 0.5 * sign * rest_k * rest_k / (rounded_k * rounded_k * rounded_k);
        nusselt = share * rising->value + (1.0 - share) * *layered;
        slope = share_slope * (rising->value - *layered) +
                (share * rising->value * rising->power + (1.0 - share) * *layered * 0.25) * log_slope;
    }
    const double scale = film.factor * air->conductivity_w_mk / film.length_m;
    return Known{scale * nusselt, scale * slope};
}

} // namespace

std::optional<double> film_w_m2k(const Film& film, double face_c, double air_c)
{
    const auto known = known_film(film, face_c, air_c);
    return known ? std::optional(known->w_m2k) : std::nullopt;
}

// The slope against the rise is closed, that against the mean by a small step through the table of air.
std::optional<FilmValue> film_value(const Film& film, double face_c, double air_c)
{
    constexpr double step_k = 1e-4;
    const auto at = known_film(film, face_c, air_c);
    const auto more_mean = known_film(film, face_c + step_k, air_c + step_k);
    if (!at || !more_mean)
        return std::nullopt;
    const double per_mean_k = (more_mean->w_m2k - at->w_m2k) / step_k;
    return FilmValue{.w_m2k = at->w_m2k,
                     .per_face_k = at->per_rise_k + 0.5 * per_mean_k,
                     .per_air_k = -at->per_rise_k + 0.5 * per_mean_k};
}

} // namespace loam::climate
