#include "core/assess/water_losses.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace loam::assess {

namespace {

struct Season {
    const climate::CaseResult* day = nullptr;
    const climate::CaseResult* night = nullptr;
};

const climate::CaseResult* solved(const std::vector<HeatCase>& heat, const std::string& id)
{
    const auto found = std::find_if(heat.begin(), heat.end(), [&](const HeatCase& one) { return one.id == id; });
    return found == heat.end() || !found->known ? nullptr : &found->detail;
}

Range over_the_day(const Range& day, const Range& night, double lit_share)
{
    return {std::lerp(night.low, day.low, lit_share), std::lerp(night.likely, day.likely, lit_share),
            std::lerp(night.high, day.high, lit_share)};
}

// Bed and mist: what evaporates besides the bowls, less what comes back as drops.
Range of_bed(const climate::CaseResult& result)
{
    const Range& all = result.evaporation_l_per_day;
    const Range& bowls = result.bowl_evaporation_l_per_day;
    const double back = result.condensation_l_per_day;
    return {all.low - bowls.low - back, all.likely - bowls.likely - back, all.high - bowls.high - back};
}

Range over_the_year(const Range& winter, const Range& summer)
{
    return {std::min(winter.low, summer.low), 0.5 * (winter.likely + summer.likely),
            std::max(winter.high, summer.high)};
}

} // namespace

std::optional<WaterLosses> water_losses(const std::vector<HeatCase>& heat, const std::optional<Range>& lit_h,
                                        const Range& misting_l_per_day)
{
    const Season winter{solved(heat, "winter-day"), solved(heat, "winter-night")};
    const Season summer{solved(heat, "summer-day"), solved(heat, "summer-night")};
    if (!lit_h || !winter.day || !winter.night || !summer.day || !summer.night) {
        return std::nullopt;
    }
    const double share = std::clamp(lit_h->likely / 24.0, 0.0, 1.0);
    const auto bowls = [&](const Season& season) {
        return over_the_day(season.day->bowl_evaporation_l_per_day, season.night->bowl_evaporation_l_per_day, share);
    };
    const auto bed = [&](const Season& season) {
        return over_the_day(of_bed(*season.day), of_bed(*season.night), share);
    };
    WaterLosses losses{over_the_year(bowls(winter), bowls(summer)), over_the_year(bed(winter), bed(summer))};
    Range& net = losses.bed_l_per_day;
    net = {net.low - misting_l_per_day.high, net.likely - misting_l_per_day.likely, net.high - misting_l_per_day.low};
    return losses;
}

} // namespace loam::assess
