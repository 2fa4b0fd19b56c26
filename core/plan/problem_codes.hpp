// Codes of problems with a plan's meaning, which its JSON Schema can't state. Those of form stand in
// core/json/problem_codes.hpp. app/words keeps a sentence for each.
#pragma once

#include <array>
#include <string_view>

namespace loam::plan::problem {

inline constexpr std::string_view newer_version = "newer-version"; // {found, newest known}
inline constexpr std::string_view duplicate_id = "duplicate-id";   // {id, pointer of the first element that has it}
inline constexpr std::string_view unknown_reference =
    "unknown-reference"; // {"strip", "circuit", "stand" or "enclosure", id}
inline constexpr std::string_view replaces_itself = "replaces-itself"; // {id}
inline constexpr std::string_view feeding_cycle = "feeding-cycle"; // {ids joined by ", "}: strips that feed each other
// {key, why}: a heat mat without place, length_m or width_m, one on a wall without z_m, a device without x_m or y_m,
// a thermostat without setpoint_c. `why` names the kind, the place or the control that needs it.
inline constexpr std::string_view needed_here = "needed-here";
inline constexpr std::string_view not_for_control = "not-for-control"; // {key, control kind}
inline constexpr std::string_view distances_fall = "distances-fall";   // {distance, the one before it}
inline constexpr std::string_view outside_box = "outside-box";         // {id}: no part of it is within the box
inline constexpr std::string_view bed_fills_box = "bed-fills-box"; // {depth of the bed in m, height of the box in m}
inline constexpr std::string_view two_panels = "two-panels";       // {wall, id of the first panel}
inline constexpr std::string_view no_day_or_night = "no-day-or-night";   // {the time at which lights go on and off}
inline constexpr std::string_view unknown_currency = "unknown-currency"; // {code}

inline constexpr std::array all{newer_version,   duplicate_id,     unknown_reference, feeding_cycle, needed_here,
                                not_for_control, distances_fall,   outside_box,       bed_fills_box, two_panels,
                                no_day_or_night, unknown_currency, replaces_itself};

} // namespace loam::plan::problem
