// Zones of UV exposure.
#pragma once

#include <optional>

#include "core/explain.hpp"

namespace loam::light {

struct FergusonZone {
    int number = 1;
    Target average_uvi; // daily mean of exposure: for light over a large part of the box
    Target maximum_uvi; // the most that was met: for a bright basking patch that fades to none
    friend bool operator==(const FergusonZone&, const FergusonZone&) = default;
};

// What: UV index bands of a zone, 1 to 4; otherwise nullopt.
// Source: Ferguson et al. 2010, Zoo Biology 29:317-334, as used in Baines et al. 2016, J Zoo Aquar Res 4(1):42-63
//   (secondary: identical in three pages). One page prints 8.0 for zone 4's maximum instead of 9.5.
std::optional<FergusonZone> ferguson_zone(int number);

} // namespace loam::light
