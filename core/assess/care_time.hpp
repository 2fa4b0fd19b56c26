// Hours of care that an enclosure takes.
#pragma once

#include <optional>
#include <vector>

#include "core/assess/assessment.hpp"
#include "core/catalog/catalog.hpp"
#include "core/plan/plan.hpp"

namespace loam::assess {

enum class CareKind { look, feeding, water_change, misting, weekly, monthly };

struct CareTime {
    CareKind kind = CareKind::look;
    Range times_per_week;
    Range minutes_each;
    Range hours_per_week;
    friend bool operator==(const CareTime&, const CareTime&) = default;
};

// What: the tasks that this enclosure brings, with how often and how long. Empty without animals. A task whose minutes
//   the catalog does not know is left out.
// Method: times a week (changes of water as planned or assumed times the bowls, mistings as planned unless a mister
//   does them, feedings by the groups that live here, each group of species by itself) times minutes each, low with
//   low and high with high: whoever is slow at one task is slow at all.
// Source: minutes and feedings are brackets of resources/assumptions (common practice, no source).
std::vector<CareTime> care_times(const plan::Enclosure& enclosure, const WaterResult& water,
                                 const catalog::Catalog& catalog);

// Their sum, low with low and high with high; nullopt where there is none.
std::optional<Range> hours_per_week(const std::vector<CareTime>& times);

} // namespace loam::assess
