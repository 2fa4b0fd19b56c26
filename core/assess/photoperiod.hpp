// Hours of light: planned, wanted, and what the sky gives at the site.
#pragma once

#include "core/assess/context.hpp"

namespace loam::assess {

struct PhotoperiodStage {
    PhotoperiodResult result;
    Notes notes;
    friend bool operator==(const PhotoperiodStage&, const PhotoperiodStage&) = default;
};

PhotoperiodStage assess_photoperiod(const Context& context, const Housed& housed);

// Hours a day that timed devices of the enclosure are on; the bracket of all its species where the plan is silent.
std::optional<Range> timed_hours(const Context& context, const Housed& housed, Notes& notes);

} // namespace loam::assess
