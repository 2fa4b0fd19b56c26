// Outfits that bring every zone of one enclosure into its target, as far as likely values tell.
#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/suggest/tuning.hpp"

namespace loam::suggest {

// One for each way to heat (a plain or a dimmed lamp where the animals bask; no heater, a radiant panel, a ceramic
// heater or a mat on the wall) and share of cover, in that order; families whose climate can't be computed are left
// out. nullopt: stopped.
//
// Method: lamp and heater are sized together for the winter room from the slopes of their readings, and bought as sold
// with a reserve; set-points follow the zone's reading; misting is the least that holds the humidity; then the four
// rooms are looked at. Those that strain least are refined choice by choice.
std::optional<std::vector<Found>> search(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place,
                                         std::stop_token stop);

} // namespace loam::suggest
