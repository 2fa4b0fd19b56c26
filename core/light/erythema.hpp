// From what a UV meter may show to the UV index: by the definition where it can be done, and why not where it can't.
#pragma once

#include <optional>

namespace loam::light {

// What: how strongly light of a wavelength (nm) reddens human skin, 1 at 298 nm and below.
// Method: 1 up to 298; 10^(0.094 (298 - nm)) up to 328; 10^(0.015 (140 - nm)) up to 400; 0 above.
// Range: 250 nm and more; nullopt below.
// Source: ISO 17166:1999 / CIE S 007, by several public implementations (secondary). The 1987 original has 139 in
//   the last branch.
std::optional<double> erythemal_weight(double wavelength_nm);

// What: UV index of an irradiance (W/m2) that is already weighted with that spectrum.
// Method: 40 m2/W times it. Source: WHO, WMO, UNEP & ICNIRP 2002, Global Solar UV Index (from memory).
double uv_index_of_effective(double effective_w_m2);

// Between which UV indices a UV-B irradiance lies that was not weighted.
struct UviBounds {
    double least = 0.0;
    double most = 0.0;
    friend bool operator==(const UviBounds&, const UviBounds&) = default;
};

// What: the least and the greatest UV index that an unweighted irradiance (W/m2) of UV-B, 280 to 315 nm, can be: the
//   one if all of it lay at 315 nm, the other at 298 nm or below. It is no estimate; the lamp's spectrum decides.
// Source: derived from the two above; limits of UV-B by the CIE's vocabulary (from memory).
UviBounds uv_index_of_unweighted(double uvb_w_m2);

} // namespace loam::light
