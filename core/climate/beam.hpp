// Lamp beams as cosine powers.
#pragma once

#include <optional>

namespace loam::climate {

// Exponent n of I(theta) = Phi (n + 1) / (2 pi) cos^n theta from the full width at half maximum.
// Method: n = -ln 2 / ln cos(B / 2). Range: 1 to 175 degrees, else nullopt. Source: definition of the width.
std::optional<double> beam_exponent(double width_deg);

// Intensity per watt of beam at the cosine of the angle off the axis, 1/sr. Range: cosine 0..1.
double beam_intensity_per_sr(double exponent, double cosine);

// Share of the beam inside a cone with this cosine of its half angle: 1 - cos^(n + 1). Range: cosine 0..1.
double beam_share_within(double exponent, double cosine);

// Irradiance of a beam that shines straight down, W/m2 per watt, on a face at offset (dx, dy) and `drop_m` below the
// lamp, the face's unit normal pointing to (nx, ny, nz). Method: E = I cos i / d2, a point source; a tube is a row of
// them. Range: beyond about five diameters of the source; 0 behind the lamp or the face.
struct Offset {
    double dx_m = 0.0;
    double dy_m = 0.0;
    double drop_m = 0.0;
};
struct Normal {
    double x = 0.0;
    double y = 0.0;
    double z = 1.0;
};
double beam_irradiance_per_m2(double exponent, const Offset& offset, const Normal& normal);

} // namespace loam::climate
