// How a year goes in one enclosure: hours of light, a rest in the cold, how far each day is from winter.
#pragma once

#include <vector>

#include "core/assess/context.hpp"
#include "core/power/year.hpp"

namespace loam::assess {

struct YearStage {
    std::vector<LightDay> light;
    bool with_the_sky = false;
    bool hemisphere_known = false;
    std::vector<CoolSeasonResult> cool_seasons;
    power::YearCourse course;
    Notes notes;
    friend bool operator==(const YearStage&, const YearStage&) = default;
};

YearStage assess_year(const Context& context, const Housed& housed);

} // namespace loam::assess
