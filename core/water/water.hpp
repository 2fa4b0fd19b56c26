// Water a day: changes, misting, what evaporates, and the conditioner it takes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"

namespace loam::water {

struct Bowl {
    std::string id;
    double length_m = 0.0; // outer, as on the plan
    double width_m = 0.0;
    Range depth_m; // of the water
    // Water over length * width * depth, for round corners and sloped sides; 0.8 is common practice, no source.
    Range fullness = {0.7, 0.8, 0.9};
    friend bool operator==(const Bowl&, const Bowl&) = default;
};

// What: water in a bowl when full (l). Method: length * width * depth * fullness, spreads independent.
// Range: sizes >= 0. Source: common practice, no source.
Range bowl_l(const Bowl& bowl);

struct Use {
    std::vector<Bowl> bowls;
    Range changes_per_day;
    Range bowl_evaporation_l_per_day = exactly(0.0);
    Range misting_l_per_day = exactly(0.0);
    std::optional<Range> conditioner_ml_per_l; // absent: none used, or its dose not known
    bool misting_treated = false;              // mist is made of treated water too
    friend bool operator==(const Use&, const Use&) = default;
};

struct Daily {
    Range bowls_l;   // all bowls filled once
    Range changed_l; // a day
    Range top_up_l;  // evaporated from the bowls a day
    Range misted_l;
    Range total_l;   // to carry a day
    Range treated_l; // of that, with conditioner
    std::optional<Range> conditioner_ml;
    friend bool operator==(const Daily&, const Daily&) = default;
};

// What: water a day (l) and conditioner a day (ml).
// Method: each change fills the bowls anew; what evaporates is topped up besides; all water for bowls is treated.
//   Bowls share the errors of one hand, so their volumes add end to end; the rest combines as independent.
// Range: all figures >= 0. Source: common practice, no source (bowl volume * changes + evaporation).
Daily daily_water(const Use& use);

// What: days that a bottle or filter lasts that is good for `capacity_l`. nullopt: no water is used (it lasts by age).
std::optional<Range> days_lasting(double capacity_l, const Range& treated_l_per_day);

} // namespace loam::water
