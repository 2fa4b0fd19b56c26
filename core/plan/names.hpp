// The names that the plan file uses for the enumerations, in the order of their values.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "core/plan/plan.hpp"

namespace loam::plan {

inline constexpr std::array<std::string_view, 3> sun_reaches_names{"no", "yes", "unknown"};
inline constexpr std::array<std::string_view, 4> top_kind_names{"mesh", "glass", "board", "open"};
inline constexpr std::array<std::string_view, 4> wall_names{"front", "back", "left", "right"};
inline constexpr std::array<std::string_view, 2> side_names{"inside", "outside"};
inline constexpr std::array<std::string_view, 3> sex_names{"unknown", "female", "male"};
inline constexpr std::array<std::string_view, 7> fitting_kind_names{"water-bowl", "hide",  "humid-hide",  "rock",
                                                                    "log",        "plant", "feeding-dish"};
inline constexpr std::array<std::string_view, 3> measure_names{"surface", "ground", "operative"};
inline constexpr std::array<std::string_view, 2> lamp_state_names{"on", "off"};
inline constexpr std::array<std::string_view, 11> device_kind_names{"flood-lamp",
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
inline constexpr std::array<std::string_view, 7> place_names{"overhead",   "under-base", "in-bed",    "back-wall",
                                                             "front-wall", "left-wall",  "right-wall"};
inline constexpr std::array<std::string_view, 2> supply_names{"timed", "always-on"};
inline constexpr std::array<std::string_view, 3> control_kind_names{"none", "dimmer", "thermostat"};
inline constexpr std::array<std::string_view, 3> thermostat_method_names{"on-off", "pulse", "dimming"};
inline constexpr std::array<std::string_view, 3> condition_names{"well", "underweight", "ill"};
inline constexpr std::array<std::string_view, 3> water_source_names{"tap", "filtered", "reverse-osmosis"};
inline constexpr std::array<std::string_view, 2> light_year_names{"same", "with-the-sky"};
inline constexpr std::array<std::string_view, 3> price_level_names{"low", "typical", "high"};
inline constexpr std::array<std::string_view, 3> pack_aim_names{"cheapest", "fewest-packs", "least-left-over"};

constexpr std::string_view name_of(FittingKind kind)
{
    return fitting_kind_names[static_cast<std::size_t>(kind)];
}
constexpr std::string_view name_of(DeviceKind kind)
{
    return device_kind_names[static_cast<std::size_t>(kind)];
}
constexpr std::string_view name_of(TopKind kind)
{
    return top_kind_names[static_cast<std::size_t>(kind)];
}
constexpr std::string_view name_of(Wall wall)
{
    return wall_names[static_cast<std::size_t>(wall)];
}
constexpr std::string_view name_of(Place place)
{
    return place_names[static_cast<std::size_t>(place)];
}
constexpr std::string_view name_of(Sex sex)
{
    return sex_names[static_cast<std::size_t>(sex)];
}

} // namespace loam::plan
