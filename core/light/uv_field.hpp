// UV over the places that an animal can reach: the strongest it can come to, and how much floor is left dark.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/light/uv.hpp"

namespace loam::light {

// A flat place an animal can stand on: the bed, a rock, a hide's roof.
struct Standing {
    std::string id;
    Patch area;
    double height_m = 0.0; // over the base pane
    friend bool operator==(const Standing&, const Standing&) = default;
};

struct Nearest {
    std::string lamp;
    std::string standing;
    Point back;               // of the animal when it is nearest to the lamp's face
    double distance_m = 0.0;  // from the face (of a tube: from its nearest point)
    std::optional<Range> uvi; // from all lamps there; absent: not known
    friend bool operator==(const Nearest&, const Nearest&) = default;
};

// What: for each lamp, the nearest that the animal's back comes to it. Empty where there is nothing to stand on.
// Method: nearest point of each rectangle raised by the back's height. Range: standing places below the lamp.
std::vector<Nearest> nearest_to_lamps(const std::vector<UvLamp>& lamps, const Top& top,
                                      const std::vector<Standing>& places, double back_height_m);

struct FloorShare {
    double surely = 0.0;  // share of the floor where the index is below the limit even at its upper bound
    double at_most = 0.0; // everywhere but where it surely reaches the limit
    friend bool operator==(const FloorShare&, const FloorShare&) = default;
};

// What: share of the floor where the UV index stays under `limit_uvi`: the retreat that every animal needs.
// Method: upper bounds at the back's height over a grid of cells of at most 25 mm; a spot under a roof counts as dark.
// Range: a floor with sides > 0. Source: the need of a UV-free retreat from Baines et al. 2016, J Zoo Aquar Res
//   4(1):42-63 (secondary). `back_m` is the back's height over the base pane.
FloorShare dark_share(const std::vector<UvLamp>& lamps, const Top& top, const Patch& floor, double back_m,
                      const std::vector<Patch>& roofs, double limit_uvi);

} // namespace loam::light
