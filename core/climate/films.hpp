// Natural-convection films on the faces of the box.
#pragma once

#include <optional>

namespace loam::climate {

// Nusselt number of a vertical plate, length its height.
// Method: Churchill & Chu over all Ra. Range: Ra <= 1e12, else nullopt.
// Source: Churchill & Chu 1975, as Cengel, Heat Transfer, Table 9-1 eq. 9-21.
std::optional<double> vertical_nusselt(double rayleigh, double prandtl);

// Horizontal plate, length A/P, hot face up or cold face down (buoyant).
// Method: the greater of 0.54 Ra^(1/4) (printed for 1e4..1e7) and 0.15 Ra^(1/3) (1e7..1e11); they cross at 4.7e6, and
// the greater one avoids the 6 % step that the printed limits would make. Below Ra = 1e4 the quarter power is carried
// on: a plate there is nearly at the air's temperature. Range: Ra <= 1e11, else nullopt.
// Source: McAdams; Lloyd & Moran 1974; Incropera 9.30 and 9.31 (from memory), as the `ht` library has them.
std::optional<double> buoyant_nusselt(double rayleigh);

// Horizontal plate, length A/P, hot face down or cold face up (layered).
// Method: 0.27 Ra^(1/4). Range: printed for 1e5..1e10, carried on below; Ra <= 1e11, else nullopt.
// Source: Cengel, Heat Transfer, eq. 9-24.
std::optional<double> layered_nusselt(double rayleigh);

enum class Facing { vertical, up, down };

// One film: which way the face looks, its characteristic length (height, or A/P), and the model's factor on it.
struct Film {
    Facing facing = Facing::vertical;
    double length_m = 0.0;
    double factor = 1.0;
};

// Heat transfer coefficient between a face and the air, W/(m2 K), and its slopes against both temperatures.
// Method: the Nusselt number at the mean temperature. Differences below 0.25 K are rounded off (root of the sum of
// squares) and the two horizontal regimes join over the same width: air in a room is never still enough for the
// correlations' limit of no film at no difference, and the balance needs slopes there.
// Range: that of air_at and of the correlation, else nullopt.
struct FilmValue {
    double w_m2k = 0.0;
    double per_face_k = 0.0;
    double per_air_k = 0.0;
};
std::optional<double> film_w_m2k(const Film& film, double face_c, double air_c);
std::optional<FilmValue> film_value(const Film& film, double face_c, double air_c);

} // namespace loam::climate
