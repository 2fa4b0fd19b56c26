// A year's costs put on the calendar.
#pragma once

#include <array>
#include <chrono>
#include <optional>
#include <vector>

#include "core/cost/running.hpp"
#include "core/money.hpp"

namespace loam::cost {

struct Month {
    std::chrono::year_month month;
    MoneyRange electricity;
    MoneyRange replaced; // whole prices, in the month in which the likely life ends
    MoneyRange others;   // used up evenly, day by day
    MoneyRange spent;    // the three together
    friend bool operator==(const Month&, const Month&) = default;
};

// Twelve calendar months, the one of `from` counted whole. What the lines of `running` say of a year is shared out to
// the minor unit: over the twelve months electricity and the others add up to exactly those lines. Replacements do not:
// their lines spread a price over a life, here it falls due once or not at all.
// `month_kwh`: of January to December, at or above zero; where all are zero, electricity is spread by days.
std::vector<Month> months(const Running& running, const std::vector<Renewal>& renewals,
                          const std::array<Range, 12>& month_kwh, std::chrono::year_month_day from,
                          const Currency& currency);

} // namespace loam::cost
