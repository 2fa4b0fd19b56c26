// Two plans side by side, for programs and for people: `loamstead-cli compare`.
#pragma once

#include <QString>
#include <chrono>
#include <string>

#include "app/words/speaker.hpp"
#include "core/assess/compare.hpp"

namespace loam::report {

struct TwoPlans {
    assess::Sides<const assess::Assessment*> sides; // both of the same day
    const assess::Comparison& comparison;
};

std::string comparison_json(const TwoPlans& plans);
// The speaker's own plan is not asked for names: what stands in both plans by one id may differ.
QString text_comparison(const TwoPlans& plans, const words::Speaker& speaker);

} // namespace loam::report
