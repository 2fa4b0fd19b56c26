// Hours of light: by the sky and by the timer.
#pragma once

#include <chrono>
#include <optional>
#include <string_view>

namespace loam::light {

// What: day length (h) at a latitude on a day of the year (1 = 1 January).
// Method: the CBM model with sunrise and sunset at the sun's upper limb with refraction (0.8333 degrees below the
//   horizon); polar day is 24 h, polar night 0 h.
// Range: |latitude| <= 90, day 1 to 366; otherwise nullopt. Against full astronomical sunrise and sunset within
//   0.14 h for |latitude| <= 60; nearer the poles, where a day grows by up to 1.4 h from one to the next but one, right
//   to within two days of the date.
// Source: Forsythe, Rykiel, Stahl, Wu & Schoolfield 1995, Ecological Modelling 80:87-95, equations 1 to 3.
std::optional<double> day_length_h(double latitude_deg, int day_of_year, double sun_below_horizon_deg = 0.8333);

// The day of the year, 1 for 1 January. nullopt: no such date.
std::optional<int> day_of_year(std::chrono::year_month_day date);

// Longest and shortest day of the year at a latitude, whichever hemisphere. nullopt as day_length_h.
struct YearOfLight {
    double longest_h = 0.0;
    double shortest_h = 0.0;
    friend bool operator==(const YearOfLight&, const YearOfLight&) = default;
};
std::optional<YearOfLight> year_of_light(double latitude_deg);

// Minutes after midnight of "HH:MM", 00:00 to 23:59. nullopt: not of that form.
std::optional<int> minutes_of_clock(std::string_view hh_mm);

// What: hours from one clock time to the next, over midnight where needed. nullopt: a time is malformed, or both are
// the same, which may mean never or always.
std::optional<double> hours_between(std::string_view on, std::string_view off);

} // namespace loam::light
