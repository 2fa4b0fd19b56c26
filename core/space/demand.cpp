#include "core/space/demand.hpp"

#include <algorithm>

namespace loam::space {

namespace {

struct Herd {
    int count = 0;
    double largest_m = 0.0;
};

std::optional<Herd> herd_of(const std::vector<BodyGroup>& animals)
{
    Herd herd;
    for (const BodyGroup& group : animals) {
        if (group.count < 0 || (group.count > 0 && !(group.body_m > 0.0))) {
            return std::nullopt;
        }
        if (group.count > 0) {
            herd.count += group.count;
            herd.largest_m = std::max(herd.largest_m, group.body_m);
        }
    }
    return herd.count > 0 ? std::optional(herd) : std::nullopt;
}

// Sum of the shares that the steps add for `count` animals; nullopt where an animal beyond `covers` is in no step.
std::optional<double> added_share(const std::vector<ShareStep>& steps, int covers, int count)
{
    double added = 0.0;
    for (int animal = 1; animal <= count; ++animal) {
        bool mentioned = animal <= covers;
        for (const ShareStep& step : steps) {
            if (animal >= step.from && (!step.to || animal <= *step.to)) {
                added += step.share;
                mentioned = true;
            }
        }
        if (!mentioned) {
            return std::nullopt;
        }
    }
    return added;
}

std::optional<Demand> asked_by(const SizeMultiple& rule, const Herd& herd)
{
    const std::optional<double> added = added_share(rule.further, rule.covers, herd.count);
    if (!added) {
        return std::nullopt;
    }
    Demand demand;
    demand.length_m = rule.length_factor * herd.largest_m;
    demand.width_m = rule.width_factor * herd.largest_m;
    demand.area_m2 = *demand.length_m * *demand.width_m * (1.0 + *added);
    if (rule.height_factor || rule.height_min_m) {
        demand.height_m = std::max(rule.height_factor.value_or(0.0) * herd.largest_m, rule.height_min_m.value_or(0.0));
    }
    return demand;
}

std::optional<Demand> asked_by(const SizeClasses& rule, const Herd& herd)
{
    const auto found = std::find_if(rule.classes.begin(), rule.classes.end(), [&](const SizeClass& size) {
        return !size.up_to_m || herd.largest_m <= *size.up_to_m;
    });
    if (found == rule.classes.end()) {
        return std::nullopt;
    }
    Demand demand;
    demand.length_m = found->length_m;
    demand.width_m = found->width_m;
    demand.height_m = found->height_m;
    if (!rule.further.empty() || (herd.count > rule.covers && found->each_further_m2 <= 0.0)) {
        const std::optional<double> added = added_share(rule.further, rule.covers, herd.count);
        if (!added) {
            return std::nullopt;
        }
        demand.area_m2 = found->area_m2 * (1.0 + *added);
    } else {
        demand.area_m2 = found->area_m2 + found->each_further_m2 * std::max(0, herd.count - rule.covers);
    }
    return demand;
}

} // namespace

std::optional<Demand> demand(const AreaFormula& formula, BodyMeasure measure, const std::vector<BodyGroup>& animals)
{
    const std::optional<Herd> herd = herd_of(animals);
    if (!herd) {
        return std::nullopt;
    }
    std::optional<Demand> asked = std::visit([&](const auto& rule) { return asked_by(rule, *herd); }, formula);
    if (asked) {
        asked->animals = herd->count;
        asked->largest_body_m = herd->largest_m;
        if (measure != BodyMeasure::total) {
            asked->every_side_m = herd->largest_m;
        }
    }
    return asked;
}

} // namespace loam::space
