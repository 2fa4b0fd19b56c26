// What the first day costs: the lines of the order, as printed.
#pragma once

#include <vector>

#include "core/explain.hpp"
#include "core/money.hpp"

namespace loam::cost {

struct Startup {
    MoneyRange lines;       // sum of the line totals
    MoneyRange contingency; // a share of it, rounded once; zero where none is asked for
    MoneyRange total;
    friend bool operator==(const Startup&, const Startup&) = default;
};

// `contingency_share` 0..1 of the sum of the lines; its low end goes with the low prices, its high end with the high.
Startup startup(const std::vector<MoneyRange>& line_totals, const Range& contingency_share, const Currency& currency);

} // namespace loam::cost
