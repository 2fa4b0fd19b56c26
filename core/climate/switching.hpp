// A thermostat that switches on and off, as it switches.
#pragma once

#include <optional>
#include <stop_token>
#include <string>

#include "core/climate/steady.hpp"

namespace loam::climate {

struct Swing {
    double low = 0.0;
    double high = 0.0;
    friend bool operator==(const Swing&, const Swing&) = default;
};

// Likely values, over the last whole cycles.
struct Switching {
    bool switches = false;  // false: within the time followed it stayed as it was
    double period_h = 0.0;  // from one switching on to the next
    double on_share = 0.0;  // of the time
    double per_day = 0.0;   // times it switches on
    Swing probe_c;          // at the probe
    Swing warm_c;           // ground level of the warm side
    Swing basking_c;        // surface
    double hottest_c = 0.0; // touchable from above, highest in a cycle
    double digging_c = 0.0; // down to the base pane, highest in a cycle
    friend bool operator==(const Switching&, const Switching&) = default;
};

// What: the cycle of one thermostat (`device`, a lamp's or mat's id) in a room that stays as it is; all others count
// as the power they need on average.
// Method: from the steady state with averaged power, the balance in time with the device at full or off; it goes on at
// the set temperature less half the hysteresis and off at half above it, the moment found by straight line within a
// step. The last of four cycles counts; at most 36 hours are followed. The probe lags three minutes behind.
// Range: a device with a placed probe and hysteresis > 0; else nullopt, as where `stop` was requested or the case has
// no solution.
std::optional<Switching> follow_switching(const Box& box, const Case& now, const std::string& device,
                                          double hysteresis_k, Workspace& workspace, std::stop_token stop = {},
                                          const Resolution& resolution = {});

} // namespace loam::climate
