// Paper sizes that the sheets are made for, and which sheets there are.
#pragma once

namespace loam::sheets {

enum class Paper { a4, letter };
enum class Sheet { shopping, budget, winter_rest, running, year };

} // namespace loam::sheets
