// What animals use up while they live in an enclosure: for the first purchase and for the running costs alike.
#pragma once

#include <string>
#include <vector>

#include "core/assess/context.hpp"

namespace loam::assess {

// Of one group of animals of the plan, all of them together. Absent: the sheets or the catalog do not say.
struct Upkeep {
    std::string animal;
    std::string food_item;
    std::optional<Range> food_per_month; // in the units of the food's kind
    std::optional<Range> calcium_g_per_month;
    std::optional<Range> vet_visits_per_year;
};

// In the order of the plan; animals of unknown species are left out.
std::vector<Upkeep> upkeep_of(const Context& context, const plan::Enclosure& enclosure);

// The unit of a food's kind, as resources/prices/README.md has them: "kg", "g" or "each".
std::string food_unit(const std::string& food_item);

} // namespace loam::assess
