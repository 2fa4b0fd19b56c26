// When one renewal after the other is due, in months from a day.
#pragma once

#include <chrono>
#include <vector>

namespace loam::cost {

// Months from now at which something of this life and age is replaced, in [0, until_months): the first at life - age,
// or now where that is past, and each a life after the one before. Empty unless life_months is at least
// shortest_life_months.
std::vector<double> renewal_months(double life_months, double age_months, double until_months);

// The day that lies `months` after `day`: whole months by the calendar (a day that a month lacks becomes its last),
// the rest as the share of the days to the next whole month, rounded down.
std::chrono::year_month_day months_after(std::chrono::year_month_day day, double months);

} // namespace loam::cost
