// The chance that a sum of squares of standard normal figures comes out larger.
#pragma once

#include <cstddef>

namespace loam::climate {

// Method: Q(n/2, x/2) by its recurrence from erfc (odd n) or exp (even n). Range: degrees >= 1, sum >= 0.
// Source: Abramowitz & Stegun 1964, 26.4.4 and 26.4.5 (from memory).
double chance_of_more(double sum_of_squares, std::size_t degrees);

} // namespace loam::climate
