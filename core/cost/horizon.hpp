// What is spent year by year, with replacements when they happen and not as a share.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/cost/running.hpp"
#include "core/money.hpp"

namespace loam::cost {

struct Year {
    std::int64_t year = 0; // 0: the startup, today; k: from k-1 years from now until just before k years from now
    MoneyRange spent;      // of three courses; things are replaced at other times in each, so in a single year the
                           // low course may spend more than the typical one
    MoneyRange cumulative; // always low <= typical <= high
    friend bool operator==(const Year&, const Year&) = default;
};

// `years` 0..100. The low course takes the long lives and low prices, the high one the short lives and high prices.
// nullopt outside that range, where a line or a renewal is refused (see line()), or where money does not fit.
std::optional<std::vector<Year>> horizon(const MoneyRange& startup, const std::vector<Consumption>& consumptions,
                                         const std::vector<Renewal>& renewals, std::int64_t years,
                                         const Currency& currency);

} // namespace loam::cost
