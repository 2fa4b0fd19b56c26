// Length over time as bounds from published rates and the keeper's own measurement, never an invented curve.
#pragma once

#include <optional>
#include <vector>

#include "core/space/demand.hpp"

namespace loam::space {

// Growth in length a year as a share of the length at the year's start, for animals of an age.
struct GrowthRate {
    double from_age_years = 0.0;
    std::optional<double> to_age_years;
    double slow_per_year = 0.0;
    double fast_per_year = 0.0;
    friend bool operator==(const GrowthRate&, const GrowthRate&) = default;
};

// Animals of one species and size as they are today.
struct GrowingGroup {
    int count = 1;
    std::optional<double> body_m;    // measured
    std::optional<double> age_years; // absent: not known
    std::vector<GrowthRate> rates;   // ascending in age, not overlapping; empty: none published
    std::optional<double> adult_min_m;
    std::optional<double> adult_max_m;
    friend bool operator==(const GrowingGroup&, const GrowingGroup&) = default;
};

struct LengthBounds {
    double slow_m = 0.0;
    std::optional<double> fast_m; // absent: no rate and no adult length bounds it
    bool fast_from_rates = false; // no year without a published rate matters to fast_m
    friend bool operator==(const LengthBounds&, const LengthBounds&) = default;
};

// What: least and greatest body length (m) after some years.
// Method: length grows by (1 + rate)^years through each span of ages that has a published rate. Slow path: slow rates,
//   none where no rate is published, not past the lower adult length (an animal longer than that keeps its length).
//   Fast path: fast rates, not past the upper adult length; from the first moment without a rate it counts as fully
//   grown. After the last span, where that one has an end, its fast rate goes on as a bound: the share that reptiles
//   add a year falls with age.
// Range: years >= 0. nullopt: the length today is not known. An age that is not known is a moment without a rate.
// Source: form of the rates from Stickel & Bunck 1989, J Herpetol 23:216-223 (relative growth by age).
std::optional<LengthBounds> length_after(const GrowingGroup& group, double years);

// When growth first breaks a rule.
struct Outgrown {
    bool known = false;                   // false: a length or a rate that decides earliest_years is missing
    std::optional<double> earliest_years; // 0: broken today; absent where known: not within the horizon
    std::optional<double> latest_years;   // absent: the slow path does not break it within the horizon
    friend bool operator==(const Outgrown&, const Outgrown&) = default;
};

// What: the years until the box no longer meets the rule, on the fast and on the slow path.
// Method: demands rise with length and lengths with time, so each time is bisected to within a day.
// Range: horizon >= 0. Not known where a body length is missing, where the rule says nothing for the animals as they
//   are, or where only the jump to the adult length (no published rate) breaks it. A body that grows beyond the
//   rule's last class counts as breaking it.
// Source: length_after and demand.
Outgrown outgrown(const AreaFormula& formula, BodyMeasure measure, const std::vector<GrowingGroup>& groups,
                  const Offer& offer, double horizon_years);

// What: what the rule asks once the horizon is reached, on the fast path: the box to buy once.
// nullopt: a length is missing or unbounded, or the rule does not cover it.
std::optional<Demand> demand_after(const AreaFormula& formula, BodyMeasure measure,
                                   const std::vector<GrowingGroup>& groups, double years);

// What: what the rule asks for all animals at their upper adult length, or their present one where that is longer.
std::optional<Demand> demand_grown(const AreaFormula& formula, BodyMeasure measure,
                                   const std::vector<GrowingGroup>& groups);

} // namespace loam::space
