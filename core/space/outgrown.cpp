#include <algorithm>

#include "core/space/growth.hpp"

namespace loam::space {

namespace {

constexpr double one_day_years = 1.0 / 365.25;

// A rule against a box as lengths change.
class Trial {
public:
    Trial(const AreaFormula& formula, BodyMeasure measure, const std::vector<GrowingGroup>& groups, const Offer& offer)
        : formula_(formula), measure_(measure), groups_(groups), offer_(offer)
    {
    }

    bool broken_on_slow_path(double years) const
    {
        return broken(years, [](const LengthBounds& length) { return std::optional(length.slow_m); });
    }

    bool broken_on_fast_path(double years) const
    {
        return broken(years, [](const LengthBounds& length) { return length.fast_m; });
    }

    // With the groups whose rates are missing kept on their slow path.
    bool broken_by_rates(double years) const
    {
        return broken(years, [](const LengthBounds& length) {
            return length.fast_from_rates ? length.fast_m : std::optional(length.slow_m);
        });
    }

private:
    // Lengths that nothing bounds break every rule, and so do bodies beyond the last class.
    template <typename Pick> bool broken(double years, Pick pick) const
    {
        std::vector<BodyGroup> bodies;
        for (const GrowingGroup& group : groups_) {
            const std::optional<LengthBounds> length = length_after(group, years);
            const std::optional<double> body_m = length ? pick(*length) : std::nullopt;
            if (!body_m) {
                return true;
            }
            bodies.push_back({group.count, *body_m});
        }
        const std::optional<Demand> asked = demand(formula_, measure_, bodies);
        return !asked || !meets(offer_, *asked);
    }

    const AreaFormula& formula_;
    BodyMeasure measure_;
    const std::vector<GrowingGroup>& groups_;
    const Offer& offer_;
};

// The first time, to within a day, at which `broken` holds; it must hold at the horizon and not before it once not.
template <typename Broken> double first_time(double horizon_years, Broken broken)
{
    double sound = 0.0;
    double failed = horizon_years;
    while (failed - sound > one_day_years) {
        const double middle = (sound + failed) / 2.0;
        (broken(middle) ? failed : sound) = middle;
    }
    return failed;
}

bool can_be_judged_today(const AreaFormula& formula, BodyMeasure measure, const std::vector<GrowingGroup>& groups)
{
    std::vector<BodyGroup> bodies;
    for (const GrowingGroup& group : groups) {
        if (!group.body_m) {
            return false;
        }
        bodies.push_back({group.count, *group.body_m});
    }
    return demand(formula, measure, bodies).has_value();
}

} // namespace

Outgrown outgrown(const AreaFormula& formula, BodyMeasure measure, const std::vector<GrowingGroup>& groups,
                  const Offer& offer, double horizon_years)
{
    if (!can_be_judged_today(formula, measure, groups)) {
        return {};
    }
    const Trial trial(formula, measure, groups, offer);
    if (trial.broken_on_slow_path(0.0)) {
        return {.known = true, .earliest_years = 0.0, .latest_years = 0.0};
    }
    Outgrown result;
    result.known = true;
    if (trial.broken_on_slow_path(horizon_years)) {
        result.latest_years = first_time(horizon_years, [&](double years) { return trial.broken_on_slow_path(years); });
    }
    if (trial.broken_on_fast_path(horizon_years)) {
        const double earliest =
            first_time(horizon_years, [&](double years) { return trial.broken_on_fast_path(years); });
        result.known = trial.broken_by_rates(earliest);
        if (result.known) {
            result.earliest_years = earliest;
        }
    }
    return result;
}

} // namespace loam::space
