// When a fault grows dangerous.
#include <cmath>

#include "core/assess/courses.hpp"

namespace loam::assess {

namespace {

// The first hour at which a reading, shifted, is past a limit: straight between the points of the course.
std::optional<double> hour_past(const climate::Course& course, double climate::CoursePoint::*reading, double shift_k,
                                const TimeToLimit& limit)
{
    const double sign = limit.direction == Direction::above ? 1.0 : -1.0;
    const auto past_k = [&](const climate::CoursePoint& at) { return sign * (at.*reading + shift_k - limit.limit_c); };
    for (std::size_t i = 0; i < course.points.size(); ++i) {
        const double here_k = past_k(course.points[i]);
        if (here_k <= 0.0) {
            continue;
        }
        if (i == 0) {
            return course.points[0].hour;
        }
        const double before_k = past_k(course.points[i - 1]);
        return std::lerp(course.points[i - 1].hour, course.points[i].hour, -before_k / (here_k - before_k));
    }
    return std::nullopt;
}

} // namespace

std::vector<TimeToLimit> times_to_limits(const CourseResult& course,
                                         const std::vector<const catalog::Species*>& species)
{
    std::vector<TimeToLimit> times;
    for (const catalog::Species* one : species) {
        const auto& harmful = one->temperatures.harmful_c;
        if (!harmful) {
            continue;
        }
        if (harmful->max) {
            TimeToLimit limit{.species = one->id,
                              .direction = Direction::above,
                              .limit_c = *harmful->max,
                              .earliest_h = {},
                              .likely_h = {},
                              .source = harmful->source};
            limit.earliest_h =
                hour_past(course.course, &climate::CoursePoint::cool_c, course.cool_spread_k.high, limit);
            limit.likely_h = hour_past(course.course, &climate::CoursePoint::cool_c, 0.0, limit);
            times.push_back(std::move(limit));
        }
        if (harmful->min) {
            TimeToLimit limit{.species = one->id,
                              .direction = Direction::below,
                              .limit_c = *harmful->min,
                              .earliest_h = {},
                              .likely_h = {},
                              .source = harmful->source};
            limit.earliest_h = hour_past(course.course, &climate::CoursePoint::warm_c, course.warm_spread_k.low, limit);
            limit.likely_h = hour_past(course.course, &climate::CoursePoint::warm_c, 0.0, limit);
            times.push_back(std::move(limit));
        }
    }
    return times;
}

// What is likely to be passed in the time that the fault is likely to last is a danger; what might be, a warning.
void report_drill(Notes& notes, const Housed& housed, const CourseResult& drill, const CoursePlan& plan)
{
    for (const TimeToLimit& limit : drill.limits) {
        if (!limit.earliest_h) {
            continue;
        }
        const bool likely = limit.likely_h && *limit.likely_h <= plan.likely_h;
        const Judgement judgement{likely ? Verdict::danger : Verdict::tight, limit.direction};
        std::vector<Input> inputs{{"limit", limit.limit_c, "degC"}, {"earliest", *limit.earliest_h, "h"}};
        if (limit.likely_h) {
            inputs.push_back({"likely", *limit.likely_h, "h"});
        }
        const std::vector<Input> within{{"within", *limit.earliest_h, "h"}};
        Finding& finding = report(notes, "danger.drill", judgement, housed.at(),
                                  because("rule.body-limit", std::move(inputs),
                                          {{"case", drill.id}, {"species", limit.species}}, limit.source));
        finding.remedy = limit.direction == Direction::above ? remedy("remedy.carry-to-cool", within)
                                                             : remedy("remedy.carry-to-warmth", within);
    }
}

} // namespace loam::assess
