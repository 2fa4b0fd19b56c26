// What water a day an enclosure loses to the air, by its solved climate.
#pragma once

#include <optional>
#include <vector>

#include "core/assess/assessment.hpp"

namespace loam::assess {

struct WaterLosses {
    Range bowls_l_per_day;
    // What the bed loses beyond what is misted and what drips and runs back into it: so much has to be poured in to
    // keep it as damp as it is planned. Below nought it gains, and gets wetter.
    Range bed_l_per_day;
};

// Method: the winter's and the summer's day and night by their hours; the least and the most of both seasons, and
// their mean as what is likely. nullopt where a case did not converge or the hours of light are not known.
std::optional<WaterLosses> water_losses(const std::vector<HeatCase>& heat, const std::optional<Range>& lit_h,
                                        const Range& misting_l_per_day);

} // namespace loam::assess
