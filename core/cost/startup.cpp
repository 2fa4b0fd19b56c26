#include "core/cost/startup.hpp"

#include <cassert>

namespace loam::cost {

Startup startup(const std::vector<MoneyRange>& line_totals, const Range& contingency_share, const Currency& currency)
{
    assert(contingency_share.low >= 0.0 && contingency_share.high <= 1.0);
    Startup result;
    result.lines = MoneyRange::zero(currency);
    for (const MoneyRange& line : line_totals) {
        result.lines += line;
    }
    result.contingency = {result.lines.low.scaled(contingency_share.low),
                          result.lines.typical.scaled(contingency_share.likely),
                          result.lines.high.scaled(contingency_share.high)};
    result.total = result.lines;
    result.total += result.contingency;
    return result;
}

} // namespace loam::cost
