// The hours of light through a year: what the timer is set to, on any day.
#pragma once

#include <optional>

namespace loam::light {

// What a species' sheet asks for, in hours a day; all species' sheets where they agree.
struct HoursAsked {
    double least_h = 0.0;
    double most_h = 24.0;
    friend bool operator==(const HoursAsked&, const HoursAsked&) = default;
};

// What: hours of light (h) that follow the sky. Method: the day's length at the latitude, held within what the sheets
//   ask for: a stated rule, since a box turtle in the far north is not to live through a polar night.
// Range: as day_length_h; least <= most, otherwise nullopt. Source: the rule is our own; day length as day_length_h.
std::optional<double> hours_with_the_sky(double latitude_deg, int day_of_year, const HoursAsked& asked);

struct OnOff { // minutes after midnight
    int on = 0;
    int off = 0;
    friend bool operator==(const OnOff&, const OnOff&) = default;
};

// What: on and off for so many hours about the middle of a given pair of times. Method: half before and half after,
// each
//   rounded to five minutes, which a mechanical or digital timer can be set to; over midnight where needed.
// Range: hours over 0 and under 24 and the pair's own hours known, otherwise nullopt. Source: closed form.
std::optional<OnOff> about_the_same_middle(const OnOff& planned, double hours);

} // namespace loam::light
