// When things are due to be replaced.
#pragma once

#include <chrono>
#include <string>
#include <vector>

#include "core/cost/running.hpp"
#include "core/money.hpp"

namespace loam::cost {

struct Due {
    std::string item;
    std::string name;
    std::string where;
    std::chrono::year_month_day earliest; // if this one lasts only the short life, and is as old as it may be
    std::chrono::year_month_day due;      // by the likely life and age
    MoneyRange price;
    friend bool operator==(const Due&, const Due&) = default;
};

// Every replacement due in [from, until), by date, then by `where` and `item`. One that is past its life already is
// due on `from`, and the next a life later. Renewals that are not valid() give no date; line() refuses them. An
// `until` that a month lacks (29 February plus a year) is that month's last day.
std::vector<Due> due_dates(const std::vector<Renewal>& renewals, std::chrono::year_month_day from,
                           std::chrono::year_month_day until);

} // namespace loam::cost
