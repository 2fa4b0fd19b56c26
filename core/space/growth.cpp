#include "core/space/growth.hpp"

#include <algorithm>
#include <cmath>

namespace loam::space {

namespace {

constexpr double no_gap_years = 1e-9;

// The length that a path can't pass: an animal that is longer already keeps what it has.
double capped(double length_m, double today_m, const std::optional<double>& cap_m)
{
    return cap_m ? std::min(length_m, std::max(today_m, *cap_m)) : length_m;
}

double slow_length_m(const GrowingGroup& group, double years)
{
    double length_m = *group.body_m;
    if (group.age_years) {
        const double last_age = *group.age_years + years;
        for (const GrowthRate& rate : group.rates) {
            const double from = std::max(rate.from_age_years, *group.age_years);
            const double to = rate.to_age_years ? std::min(*rate.to_age_years, last_age) : last_age;
            length_m *= std::pow(1.0 + rate.slow_per_year, std::max(0.0, to - from));
        }
    }
    return capped(length_m, *group.body_m, group.adult_min_m ? group.adult_min_m : group.adult_max_m);
}

// The length on the fast path as far as published rates reach, and whether they reach all the way.
struct Reached {
    double length_m = 0.0;
    bool all_the_way = false;
};

Reached by_fast_rates(const GrowingGroup& group, double years)
{
    double length_m = *group.body_m;
    if (!group.age_years || group.rates.empty()) {
        return {length_m, years <= 0.0};
    }
    double age = *group.age_years;
    const double last_age = age + years;
    for (const GrowthRate& rate : group.rates) {
        if (age >= last_age || rate.from_age_years > age + no_gap_years) {
            break; // done, or a span of ages without a rate begins here
        }
        const double to = rate.to_age_years ? std::min(*rate.to_age_years, last_age) : last_age;
        if (to > age) {
            length_m *= std::pow(1.0 + rate.fast_per_year, to - age);
            age = to;
        }
    }
    const GrowthRate& last = group.rates.back();
    if (age < last_age && last.to_age_years && age + no_gap_years >= *last.to_age_years) {
        length_m *= std::pow(1.0 + last.fast_per_year, last_age - age);
        age = last_age;
    }
    return {length_m, age >= last_age};
}

std::optional<std::vector<BodyGroup>> on_fast_path(const std::vector<GrowingGroup>& groups, double years)
{
    std::vector<BodyGroup> bodies;
    for (const GrowingGroup& group : groups) {
        const std::optional<LengthBounds> length = length_after(group, years);
        if (!length || !length->fast_m) {
            return std::nullopt;
        }
        bodies.push_back({group.count, *length->fast_m});
    }
    return bodies;
}

} // namespace

std::optional<LengthBounds> length_after(const GrowingGroup& group, double years)
{
    if (!group.body_m || !(*group.body_m > 0.0) || years < 0.0) {
        return std::nullopt;
    }
    const double today_m = *group.body_m;
    LengthBounds bounds;
    bounds.slow_m = slow_length_m(group, years);
    const Reached reached = by_fast_rates(group, years);
    const bool full_grown = group.adult_max_m && reached.length_m >= *group.adult_max_m;
    bounds.fast_from_rates = reached.all_the_way || full_grown;
    if (bounds.fast_from_rates) {
        bounds.fast_m = capped(reached.length_m, today_m, group.adult_max_m);
    } else {
        bounds.fast_m = group.adult_max_m; // above what was reached, or it would be full-grown
    }
    return bounds;
}

std::optional<Demand> demand_after(const AreaFormula& formula, BodyMeasure measure,
                                   const std::vector<GrowingGroup>& groups, double years)
{
    const auto bodies = on_fast_path(groups, years);
    return bodies ? demand(formula, measure, *bodies) : std::nullopt;
}

std::optional<Demand> demand_grown(const AreaFormula& formula, BodyMeasure measure,
                                   const std::vector<GrowingGroup>& groups)
{
    std::vector<BodyGroup> bodies;
    for (const GrowingGroup& group : groups) {
        if (!group.adult_max_m) {
            return std::nullopt;
        }
        bodies.push_back({group.count, std::max(*group.adult_max_m, group.body_m.value_or(0.0))});
    }
    return demand(formula, measure, bodies);
}

} // namespace loam::space
