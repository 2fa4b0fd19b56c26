// Independent pieces of work on all cores.
#pragma once

#include <cstddef>
#include <functional>

namespace loam::assess {

// Calls `work` once for every index below `count`, several at a time, and returns when all are done; what one throws is
// thrown here. Each piece must depend on nothing that another writes, so that how they are scheduled cannot show in the
// results.
void side_by_side(std::size_t count, const std::function<void(std::size_t)>& work);

} // namespace loam::assess
