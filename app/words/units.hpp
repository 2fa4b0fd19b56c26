// Which units the reader sees. A preference: nothing stored depends on it.
#pragma once

namespace loam::words {

enum class UnitSystem { metric, us };

} // namespace loam::words
