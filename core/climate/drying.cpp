#include "core/climate/drying.hpp"

#include <algorithm>
#include <cmath>

namespace loam::climate {

double drying_share(const BedStore& store, double lost_mm)
{
    if (store.total_mm <= 0.0)
        return 0.0;
    if (lost_mm <= store.readily_mm)
        return 1.0;
    return std::clamp((store.total_mm - lost_mm) / (store.total_mm - store.readily_mm), 0.0, 1.0);
}

double lost_after(const BedStore& store, double lost_mm, double wet_rate_mm_d, double days)
{
    if (wet_rate_mm_d <= 0.0)
        return std::max(0.0, lost_mm + wet_rate_mm_d * days);
    double left_d = days;
    if (lost_mm < store.readily_mm) {
        const double until_d = (store.readily_mm - lost_mm) / wet_rate_mm_d;
        if (until_d >= left_d)
            return lost_mm + wet_rate_mm_d * left_d;
        lost_mm = store.readily_mm;
        left_d -= until_d;
    }
    const double fading_mm = store.total_mm - store.readily_mm;
    if (fading_mm <= 0.0)
        return store.total_mm;
    const double remaining_mm = std::max(0.0, store.total_mm - lost_mm) * std::exp(-wet_rate_mm_d * left_d / fading_mm);
    return store.total_mm - remaining_mm;
}

} // namespace loam::climate
