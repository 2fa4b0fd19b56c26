// Kilowatt-hours by schedule and duty.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"

namespace loam::power {

// Something with a plug.
struct Device {
    std::string id;
    Range connected_w;                // at full power
    double hours_per_day = 24.0;      // that its outlet is on
    Range duty_winter = exactly(1.0); // mean power over connected power while its outlet is on, 0..1
    Range duty_summer = exactly(1.0);
    bool timed = false;               // on the timer; otherwise always on
    std::optional<std::string> strip; // it is plugged into; absent: not known
    friend bool operator==(const Device&, const Device&) = default;
};

struct Energy {
    std::string id;
    Range winter_kwh_per_day;
    Range summer_kwh_per_day;
    Range kwh_per_year; // half the year each
    friend bool operator==(const Energy&, const Energy&) = default;
};

// What: energy of one device (kWh). Method: W * h * duty / 1000, spreads independent; a year is 365 days, half winter
//   and half summer. Range: hours 0..24, duty 0..1. Source: closed form.
Energy energy(const Device& device);

struct Together {
    Range connected_w;
    Range winter_kwh_per_day;
    Range summer_kwh_per_day;
    Range mean_kwh_per_day;
    Range kwh_per_year;
    int timed_outlets = 0;
    int always_on_outlets = 0;
    friend bool operator==(const Together&, const Together&) = default;
};

// What: the sum over devices, their spreads independent, and the outlets they need: one each.
Together together(const std::vector<Device>& devices);

} // namespace loam::power
