// The hottest hour of a day: while the bed is still cool, a thermostat drives its lamp harder than in the steady case.
#include <algorithm>

#include "core/assess/burn_limits.hpp"
#include "core/assess/courses.hpp"
#include "core/independent.hpp"

namespace loam::assess {

void report_day_peak(Notes& notes, const Housed& housed, const CourseResult& day, const CoursePlan& plan)
{
    const auto& points = day.course.points;
    if (points.empty() || plan.from->box.lamps.empty()) {
        return;
    }
    const auto hottest = std::max_element(points.begin(), points.end(), [](const auto& left, const auto& right) {
        return left.hottest_c < right.hottest_c;
    });
    const Range& steady = plan.from->result.hottest_surface_c;
    const Range peak = moved_to(steady, hottest->hottest_c);
    // What the steady case crosses as well is told there.
    for (const double limit_c : {ten_minutes_c, long_contact_c}) {
        if (peak.high > limit_c && steady.high <= limit_c) {
            std::vector<Input> inputs = inputs_over(peak, limit_c, "degC");
            inputs.push_back({"hour", hottest->hour, "h"});
            const Verdict verdict = limit_c == ten_minutes_c ? Verdict::danger : Verdict::tight;
            report(notes, "danger.day-peak", {verdict, Direction::above}, housed.at(),
                   because("rule.burn-threshold", inputs, {{"course", day.id}}, burn_source))
                .remedy = remedy("remedy.weaker-lamp-or-probe");
            return;
        }
    }
}

} // namespace loam::assess
