// Running costs as people read them: one line per thing, however many enclosures need it.
#pragma once

#include <vector>

#include "core/assess/assessment.hpp"

namespace loam::assess {

// Lines of the same kind and name become one, in the order of their first. Where they come round at different
// intervals, the merged line states none. The total does not change.
std::vector<CostLine> merged_by_name(const std::vector<CostLine>& lines);

// What the sums leave out, because its price is not known: "electricity", then kinds of need.
std::vector<std::string> not_included(const Costs& costs);

} // namespace loam::assess
