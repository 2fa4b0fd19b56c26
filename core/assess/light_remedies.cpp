#include "core/assess/light_remedies.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/reach.hpp"
#include "core/assess/uv_heights.hpp"

namespace loam::assess {

namespace {

bool new_lamps_do(const UvScene& scene, const UvMiss& miss)
{
    std::vector<light::UvLamp> renewed = scene.lamps;
    for (light::UvLamp& one : renewed) {
        one.burnt_h = exactly(-one.read_at_h);
    }
    const auto fresh = light::uvi_at(renewed, scene.top, miss.result.basking.back);
    return renewed[miss.lamp].burnt_h.likely < scene.lamps[miss.lamp].burnt_h.likely && fresh &&
           judge(*fresh, miss.result.target_uvi).direction != Direction::below;
}

std::size_t warnings_of(const Context& context, const Housed& housed)
{
    Notes notes = judge_reach(context, housed);
    append(notes, judge_clearances(context, housed));
    return notes.findings.size();
}

// Whether a lamp at that height brings neither fire nor burns nearer than they are.
bool is_harmless(const Context& context, const Housed& housed, std::size_t device, double z_m)
{
    plan::Plan trial = context.plan;
    trial.enclosures[housed.index].equipment[device].height_above_base_m = z_m;
    const Context tried{trial, context.catalog, context.today};
    return warnings_of(tried, {trial.enclosures[housed.index], housed.index}) <= warnings_of(context, housed);
}

std::optional<Remedy> other_height(const Context& context, const Housed& housed, const UvScene& scene,
                                   const UvMiss& miss)
{
    constexpr double inside_m = 0.01; // not on the very edge, where rounding would undo it
    const auto& heights = miss.result.heights;
    const light::UvLamp& lamp = scene.lamps[miss.lamp];
    if (!heights || (miss.judgement.verdict == Verdict::tight && !heights->whole_range)) {
        return std::nullopt;
    }
    const double margin_m = std::min(inside_m, (heights->to_m - heights->from_m) / 2.0);
    const double to_m = std::clamp(lamp.at.z_m, heights->from_m + margin_m, heights->to_m - margin_m);
    if (!is_harmless(context, housed, scene.devices[miss.lamp].index, to_m)) {
        return std::nullopt;
    }
    const std::vector<Input> amounts{{"by", std::abs(to_m - lamp.at.z_m), "m"}, {"to", to_m, "m"}};
    if (to_m < lamp.at.z_m) {
        return remedy("remedy.lower-lamp", amounts, {{"device", lamp.id}});
    }
    return remedy("remedy.raise-lamp", amounts, {{"device", lamp.id}});
}

// In the middle of the band, by ratio.
double wanted_uvi(const Target& target)
{
    if (!target.max) {
        return 1.5 * target.min.value_or(0.0);
    }
    return target.min.value_or(0.0) > 0.0 ? std::sqrt(*target.min * *target.max) : *target.max / 2.0;
}

} // namespace

double slant_m(const light::UvLamp& lamp, const light::Point& point)
{
    return std::hypot(lamp.at.x_m - point.x_m, lamp.at.y_m - point.y_m, lamp.at.z_m - point.z_m);
}

std::optional<Remedy> uv_level_remedy(const Context& context, const Housed& housed, const UvScene& scene,
                                      const UvMiss& miss)
{
    const light::UvLamp& lamp = scene.lamps[miss.lamp];
    if (miss.judgement.direction == Direction::below && new_lamps_do(scene, miss)) {
        return remedy("remedy.replace-lamp", {}, {{"device", lamp.id}});
    }
    if (auto height = other_height(context, housed, scene, miss)) {
        return height;
    }
    const double likely = miss.result.uvi_at_basking->likely;
    if (miss.judgement.verdict == Verdict::falls_short && likely > 0.0) {
        const double times = wanted_uvi(miss.result.target_uvi) / likely;
        return remedy("remedy.other-uv-lamp", {{"times", times, "1"}}, {{"device", lamp.id}});
    }
    if (likely > 0.0) {
        return remedy("remedy.measure-uv", {{"distance", slant_m(lamp, miss.result.basking.back), "m"}},
                      {{"device", lamp.id}});
    }
    return std::nullopt; // what blocks it is a finding of its own
}

std::optional<Remedy> raised_above(const Housed& housed, const UvScene& scene, std::size_t lamp, double limit)
{
    const auto to_m = height_under_limit(scene, housed.enclosure.shell, lamp, limit);
    if (!to_m) {
        return std::nullopt;
    }
    return remedy("remedy.raise-lamp", {{"by", *to_m - scene.lamps[lamp].at.z_m, "m"}, {"to", *to_m, "m"}},
                  {{"device", scene.lamps[lamp].id}});
}

} // namespace loam::assess
