#include "core/water/water.hpp"

#include "core/independent.hpp"

namespace loam::water {

Range bowl_l(const Bowl& bowl)
{
    return scaled(product_of_independent({bowl.depth_m, bowl.fullness}), bowl.length_m * bowl.width_m * 1000.0);
}

Daily daily_water(const Use& use)
{
    Daily daily;
    for (const Bowl& bowl : use.bowls) {
        const Range one_l = bowl_l(bowl);
        daily.bowls_l.low += one_l.low;
        daily.bowls_l.likely += one_l.likely;
        daily.bowls_l.high += one_l.high;
    }
    daily.changed_l = product_of_independent({daily.bowls_l, use.changes_per_day});
    daily.top_up_l = use.bowls.empty() ? Range{} : use.bowl_evaporation_l_per_day;
    daily.misted_l = use.misting_l_per_day;
    daily.total_l = sum_of_independent({daily.changed_l, daily.top_up_l, daily.misted_l});
    daily.treated_l = use.misting_treated ? daily.total_l : sum_of_independent({daily.changed_l, daily.top_up_l});
    if (use.conditioner_ml_per_l) {
        daily.conditioner_ml = product_of_independent({daily.treated_l, *use.conditioner_ml_per_l});
    }
    return daily;
}

std::optional<Range> days_lasting(double capacity_l, const Range& treated_l_per_day)
{
    if (!(treated_l_per_day.low > 0.0)) {
        return std::nullopt;
    }
    return scaled(reciprocal(treated_l_per_day), capacity_l);
}

} // namespace loam::water
