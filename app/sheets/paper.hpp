// Paper sizes that the sheets are made for, and which sheets there are.
#pragma once

namespace loam::sheets {

enum class Paper { a4, letter };
// In the order in which they are printed, which is that of the work.
enum class Sheet { decision, shopping, budget, build, proving, running, year, holiday, winter_rest };

} // namespace loam::sheets
