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
    std::chrono::year_month_day earliest; // if every life were the short one
    std::chrono::year_month_day due;      // by the likely life
    MoneyRange price;
    friend bool operator==(const Due&, const Due&) = default;
};

// Every replacement due in [from, until), by date, then by `where` and `item`. One that is past its life already is
// due on `from`, and the next a life later. Empty where a life is not above zero: line() has refused it by then.
std::vector<Due> due_dates(const std::vector<Renewal>& renewals, std::chrono::year_month_day from,
                           std::chrono::year_month_day until);

} // namespace loam::cost
