// Fittings and bodies as several domains need them: heights, what can be stood on, the height of a back.
#pragma once

#include <optional>

#include "core/assess/context.hpp"

namespace loam::assess {

std::optional<Range> fitting_height(const Context& context, const Housed& housed, std::size_t index, Notes& notes);
std::optional<Range> bowl_water_depth(const Context& context, const Housed& housed, std::size_t index, Notes& notes);

bool can_be_stood_on(plan::FittingKind kind);
bool is_hide(plan::FittingKind kind);

// The body length of one entry: as given, else the sheet's adult band (upper end likely unfavourable), written down as
// assumed. nullopt where the species is unknown.
std::optional<Range> body_length(const Context& context, const Housed& housed, std::size_t index, Notes& notes);

struct Bodies {
    double longest_m = 0.0;
    double highest_back_m = 0.0;
    bool climbs = false;
};
// Of the largest animal, at the unfavourable end. nullopt where no animal's size is known.
std::optional<Bodies> largest_bodies(const Context& context, const Housed& housed, Notes& notes);

} // namespace loam::assess
