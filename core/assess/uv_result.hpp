// What we conclude of the UV in one enclosure.
#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"
#include "core/light/uv_field.hpp"

namespace loam::assess {

// A place that a back can be at, and what it gets there from all lamps.
struct UvPlace {
    light::Point back;
    std::string standing;     // what it stands on: id of a fitting; empty: the bed
    std::optional<Range> uvi; // absent: not known
    friend bool operator==(const UvPlace&, const UvPlace&) = default;
};

struct UvLampResult {
    std::string id;
    std::optional<Range> uvi_at_basking;   // its own part; absent: not known
    UvPlace nearest;                       // where a back comes nearest to its face, and what all lamps give there
    double nearest_m = 0.0;                // how near
    std::optional<double> safe_distance_m; // nearer, its UV may pass the most that any animal was met in
    std::optional<light::Reach> reach;     // of its readings; absent: none
    std::optional<Range> life_left_h;      // hours of its usual life that are left; absent: told in months or not known
    friend bool operator==(const UvLampResult&, const UvLampResult&) = default;
};

// Heights of a lamp's face over the base pane that put the strongest UV of the basking place inside the target.
struct UvHeights {
    std::string lamp;
    double from_m = 0.0;
    double to_m = 0.0;
    bool whole_range = false; // with the whole range of the index; else with its likely value only
    friend bool operator==(const UvHeights&, const UvHeights&) = default;
};

// Hours of burning until the UV of the basking place falls below the target. Absent: not known, or it never does.
struct UvHours {
    std::optional<double> earliest_h; // by the low end of the range
    std::optional<double> likely_h;
    std::optional<double> latest_h;
    friend bool operator==(const UvHours&, const UvHours&) = default;
};

struct UvResult {
    bool needed = false;                 // some species here has a UV target
    std::optional<Range> uvi_at_basking; // the strongest on the basking place; absent: not known
    std::int64_t ferguson_zone = 0;
    Target target_uvi;
    std::string species; // whose target it is
    Source sheet;        // where that species' zone comes from
    Judgement judgement;
    std::optional<double> replace_after_hours;

    // These are empty or absent where no lamp gives UV.
    UvPlace basking; // where on the basking place it is strongest
    light::UvMap map;
    std::optional<UvPlace> strongest; // of the map
    std::optional<light::FloorShare> dark;
    std::vector<UvLampResult> lamps;
    std::optional<UvHeights> heights; // of the lamp that gives the basking place most; absent: none does it
    UvHours left;                     // from today
    UvHours from_new;                 // with new lamps
    std::optional<std::chrono::year_month_day> falls_out_on; // by the likely hours and those a day
    std::optional<std::chrono::year_month_day> falls_out_earliest;
    friend bool operator==(const UvResult&, const UvResult&) = default;
};

} // namespace loam::assess
