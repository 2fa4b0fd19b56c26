// Money at different times made comparable.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/cost/horizon.hpp"
#include "core/money.hpp"

namespace loam::cost {

// Present value of a course of payments, in their unit; payments[0] is today's and not discounted, payments[t] is
// taken at the end of year t.
// Method: sum C_t / (1 + r)^t.
// Range: r > -1; nullopt otherwise or where the result is not finite.
// Source: textbook engineering economics, for example numpy-financial npv (same convention).
std::optional<double> present_value(double rate, const std::vector<double>& payments);

// Present value of 1 paid at the end of each of n periods, [1].
// Method: a = (1 - (1 + r)^-n) / r, and n where r = 0.
// Range: r > -1, n >= 1; nullopt otherwise.
// Source: as above.
std::optional<double> annuity_factor(double rate, std::int64_t periods);

// The level payment at the end of each period that repays `present` in n periods: present / a.
std::optional<double> level_payment(double present, double rate, std::int64_t periods);

// Of the typical course; year-end convention as above. nullopt for an empty course or a rate outside 0..1.
std::optional<Money> net_present_cost(const std::vector<Year>& course, double rate);

// The level amount a year that costs as much as the course. nullopt as above, and where the course has no year
// after the startup.
std::optional<Money> equivalent_annual_cost(const std::vector<Year>& course, double rate);

} // namespace loam::cost
