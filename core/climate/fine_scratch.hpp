// Room for the solver of the fine balance, kept between its steps and calls: made anew each time, it would go back to
// the system and be fetched again at every step, which costs an eighth of the time.
#pragma once

#include "core/climate/balance.hpp"
#include "core/climate/krylov.hpp"

namespace loam::climate {

struct FineScratch {
    Slopes slopes;
    KrylovScratch krylov;
};

} // namespace loam::climate
