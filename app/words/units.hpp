// Which units the reader sees. A preference: nothing stored depends on it.
#pragma once

namespace loam::words {

// `both`: metric with US in square brackets, for paper whose reader is not known. What is typed counts as metric then.
enum class UnitSystem { metric, us, both };

} // namespace loam::words
