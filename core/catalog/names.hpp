// The names that the guidance files use for the enumerations, in the order of their values.
#pragma once

#include <array>
#include <string_view>

namespace loam::catalog {

inline constexpr std::array<std::string_view, 5> confidence_names{"confirmed", "derived", "secondary", "memory",
                                                                  "practice"};
inline constexpr std::array<std::string_view, 5> group_names{"land-turtle", "tortoise", "lizard", "snake", "frog"};
inline constexpr std::array<std::string_view, 3> habit_names{"ground", "burrowing", "climbing"};
inline constexpr std::array<std::string_view, 3> body_measure_names{"carapace", "snout-vent", "total"};
inline constexpr std::array<std::string_view, 4> rule_kind_names{"statutory", "welfare", "veterinary", "laboratory"};
inline constexpr std::array<std::string_view, 4> material_use_names{"panel", "cover", "substrate", "underlay"};
inline constexpr std::array<std::string_view, 4> load_kind_names{"resistive", "ballast", "electronic", "motor"};
inline constexpr std::array<std::string_view, 13> category_names{
    "enclosure",  "heat",      "light",   "control", "substrate", "furniture", "water",
    "electrical", "measuring", "hygiene", "food",    "health",    "other"};

// The kinds of device, as plans name them. The catalog may not include the plan's header; a test holds the two lists
// together.
inline constexpr std::array<std::string_view, 11> device_kinds{"flood-lamp",
                                                               "uv-tube",
                                                               "uv-compact",
                                                               "mercury-vapour-lamp",
                                                               "metal-halide-lamp",
                                                               "led-strip",
                                                               "ceramic-heater",
                                                               "radiant-panel",
                                                               "heat-mat",
                                                               "mister",
                                                               "fan"};

} // namespace loam::catalog
