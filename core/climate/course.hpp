// How a box's temperatures run over hours: the day that repeats itself, the first warming up, and what follows a fault.
#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/climate/steady.hpp"

namespace loam::climate {

// What is read at one moment; likely values. The places are those of the steady day.
struct CoursePoint {
    double hour = 0.0; // since the beginning
    bool lamps_on = false;
    double room_c = 0.0;
    double basking_c = 0.0; // surface
    double warm_c = 0.0;    // ground
    double cool_c = 0.0;    // ground
    double hottest_c = 0.0; // touchable from above
    double coldest_c = 0.0; // of the floor's surface
    double digging_c = 0.0; // hottest down to the base pane
    double humidity = 0.0;  // 0..1, at ground level on the cool side
    double power_w = 0.0;
    friend bool operator==(const CoursePoint&, const CoursePoint&) = default;
};

// A time under one set of devices, in which the room goes straight to another temperature.
struct Stretch {
    Case now; // its room's temperature is not used
    double hours = 0.0;
    double room_to_c = 0.0;
    double mist_kg_m2 = 0.0; // at its beginning, where the box is misted in pulses
    friend bool operator==(const Stretch&, const Stretch&) = default;
};

struct Course {
    bool complete = false;        // every step had a solution
    double unrest_k = 0.0;        // of a periodic day: by how much it fails to repeat itself
    double energy_kwh = 0.0;      // drawn meanwhile
    std::vector<double> misted_h; // when it was misted in a pulse; empty where mist is spread evenly
    std::vector<CoursePoint> points;
    friend bool operator==(const Course&, const Course&) = default;
};

// What goes on in it: from the steady state of a case through the stretches. nullopt where `stop` was requested, the
// box is not physical, or the case has no steady state.
struct Event {
    Case from;
    std::vector<Stretch> stretches;
};
std::optional<Course> follow(const Box& box, const Event& event, Workspace& workspace, std::stop_token stop = {},
                             const Resolution& resolution = {});

// From a box that is as warm as the room all through.
std::optional<Course> warm_up(const Box& box, const Case& now, double hours, Workspace& workspace,
                              std::stop_token stop = {}, const Resolution& resolution = {});

// The day that repeats itself, from switching on to the next switching on. The room is at its day's temperature while
// the lamps are on, and takes `ramp_h` of them to get there from the night's and as long to go back.
// Method: days are run through until one ends as it began within 0.02 K, each begun where the last two point to
// (Aitken's extrapolation along the slowest of what is still settling).
struct DayPlan {
    Case day;
    Case night;
    double lit_h = 12.0;
    double ramp_h = 2.0;
};
std::optional<Course> periodic_day(const Box& box, const DayPlan& plan, Workspace& workspace, std::stop_token stop = {},
                                   const Resolution& resolution = {});

} // namespace loam::climate
