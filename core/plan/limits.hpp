// Bounds that several structures share. They mark what is physically sensible for one household, so that a slip of
// the decimal point is caught; a value inside them may still be unsound, which the assessment says.
#pragma once

#include "core/json/archive.hpp"

namespace loam::plan::limits {

inline constexpr json::Bounds length_m{.min = 0.0, .max = 10.0, .exclusive_min = true};
inline constexpr json::Bounds position_m{.min = -10.0, .max = 10.0}; // left of or below the box is below zero
inline constexpr json::Bounds pane_thickness_m{.min = 0.0, .max = 0.2, .exclusive_min = true};
inline constexpr json::Bounds air_c{.min = -40.0, .max = 60.0};
inline constexpr json::Bounds fraction{.min = 0.0, .max = 1.0};

inline constexpr json::TextRule id{.min_length = 1, .max_length = 40, .pattern = json::element_id};
inline constexpr json::TextRule material{.min_length = 1, .max_length = 60, .pattern = json::kebab_id};
inline constexpr json::Key id_key{"id", "Stable name of this element, unique in the whole plan."};

} // namespace loam::plan::limits
