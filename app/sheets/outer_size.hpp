// The box as it is carried: how large it is outside.
#pragma once

#include <optional>

#include "core/plan/shell.hpp"

namespace loam::sheets {

// In metres; without lid, lamps and frame of a mesh top, with a top that is a pane.
struct OuterSize {
    double length_m = 0.0;
    double width_m = 0.0;
    double height_m = 0.0;
};

// nullopt where a thickness that counts is not stated: then it has to be measured.
std::optional<OuterSize> outer_size(const plan::Shell& shell);

// Its sides in order.
struct Sides {
    double least_m = 0.0;
    double middle_m = 0.0;
    double longest_m = 0.0;
};
Sides sides_of(const OuterSize& size);

// How high a ceiling has to be to turn it on end: the diagonal of its longest and its least side (Pythagoras).
double height_to_turn_m(const Sides& sides);

} // namespace loam::sheets
