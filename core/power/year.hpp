// Kilowatt-hours by month, from a winter and a summer day.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/explain.hpp"
#include "core/power/energy.hpp"

namespace loam::power {

inline constexpr int days_of_year = 365;
using DailyShare = std::array<double, days_of_year>; // by day of the year, from 1 January

// How the year goes.
struct YearCourse {
    // Weight of the winter day on each day, 0..1: the likely one first, then others that may hold instead.
    std::vector<DailyShare> winter_share;
    DailyShare light_h{};       // that timed devices are on
    DailyShare running_share{}; // of usual hours and heat: less while the animals rest in the cold
    friend bool operator==(const YearCourse&, const YearCourse&) = default;
};

struct DeviceYear {
    std::string id;
    std::array<Range, 12> month_kwh;
    Range year_kwh;
    friend bool operator==(const DeviceYear&, const DeviceYear&) = default;
};

// What: energy of one device by month and year (kWh), 28 days in February.
// Method: each day W * h * run * (w * winter duty + (1 - w) * summer duty) / 1000, with the day's own hours for timed
//   devices and 24 for the rest. Winter and summer join end to end, since they share the device's watts and the box's
//   errors. Each way that the year may go gives a range; the ends are the outermost of them, the likely value is that
//   of the first.
// Range: at least one course of the year, otherwise all zero; shares 0..1. Source: closed form.
DeviceYear year_of(const Device& device, const YearCourse& course);

struct Year {
    std::array<Range, 12> month_kwh{};
    Range year_kwh;
    friend bool operator==(const Year&, const Year&) = default;
};

// The sum over devices, their spreads independent.
Year year_together(const std::vector<DeviceYear>& devices);

// The month (0..11) that a day of the year (0..364) belongs to.
int month_of(int day);

} // namespace loam::power
