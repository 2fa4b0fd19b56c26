#include "core/assess/light_remedies.hpp"

#include <cmath>

#include "core/assess/notes.hpp"

namespace loam::assess {

double slant_m(const light::UvLamp& lamp, const light::Point& point)
{
    return std::hypot(lamp.at.x_m - point.x_m, lamp.at.y_m - point.y_m, lamp.at.z_m - point.z_m);
}

std::optional<Remedy> uv_level_remedy(const UvAt& scene, const Range& uvi, const Target& target, Judgement judgement)
{
    const light::UvLamp& lamp = scene.lamps.front();
    const bool weak = judgement.direction == Direction::below;
    if (weak) {
        std::vector<light::UvLamp> renewed = scene.lamps;
        for (light::UvLamp& one : renewed) {
            one.burnt_h = exactly(0.0);
        }
        const auto fresh = light::uvi_at(renewed, scene.top, scene.point);
        if (lamp.burnt_h.likely > 0.0 && fresh && judge(*fresh, target).direction != Direction::below) {
            return remedy("remedy.replace-lamp", {}, {{"device", lamp.id}});
        }
    }
    const double now_m = slant_m(lamp, scene.point);
    const auto in_table = light::uvi_below(lamp.table, now_m);
    const double wanted = weak ? target.min.value_or(0.0) : target.max.value_or(0.0);
    const auto to_m = in_table && uvi.likely > 0.0 ? light::distance_of_uvi(lamp.table, wanted * *in_table / uvi.likely)
                                                   : std::nullopt;
    if (!to_m || (*to_m < now_m) != weak) { // only an end of the range misses, or the table does not reach so far
        return remedy("remedy.measure-uv", {{"distance", now_m, "m"}}, {{"device", lamp.id}});
    }
    const double by_m = std::abs(*to_m - now_m);
    const double to_z_m = weak ? lamp.at.z_m - by_m : lamp.at.z_m + by_m;
    const std::vector<Input> amounts{{"by", by_m, "m"}, {"to", to_z_m, "m"}};
    if (weak) {
        return remedy("remedy.lower-lamp", amounts, {{"device", lamp.id}});
    }
    return remedy("remedy.raise-lamp", amounts, {{"device", lamp.id}});
}

std::optional<Remedy> raised_above(const std::vector<light::UvLamp>& lamps, const light::Nearest& nearest, double limit)
{
    for (const light::UvLamp& lamp : lamps) {
        if (lamp.id != nearest.lamp || nearest.uvi->likely <= 0.0) {
            continue;
        }
        const auto to_m = light::distance_of_uvi(lamp.table, limit * nearest.uvi->likely / nearest.uvi->high);
        if (to_m && *to_m > nearest.distance_m) {
            const double by_m = *to_m - nearest.distance_m;
            return remedy("remedy.raise-lamp", {{"by", by_m, "m"}, {"to", lamp.at.z_m + by_m, "m"}},
                          {{"device", lamp.id}});
        }
    }
    return std::nullopt;
}

} // namespace loam::assess
