// Of the remedies that were found one by one, those that can be followed together; and what is left where no device
// cures a miss.
#pragma once

#include <string>
#include <vector>

#include "core/assess/heat_search.hpp"

namespace loam::assess {

struct Choice {
    Direction direction = Direction::none;
    std::string case_id;
    std::optional<Remedy> remedy;
    bool burns = false; // it is a surface that burns
    std::vector<HeatSource> heaters;
};

// One device gets one new value: of several in one direction the farthest, which cures the nearer misses too. Where it
// is too weak in one case and too strong in another, it is to be turned by the case, or a thermostat that suits it is
// to do so.
void agree(std::vector<Choice>& choices);

// Another room where people could live in it and no zone is worse off; else, where only an end of the range misses,
// measuring; else the word that no single change does it.
Remedy without_devices(const Search& search, const Finding& finding);

} // namespace loam::assess
