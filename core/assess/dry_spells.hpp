// How long an enclosure holds its humidity while nobody waters its bed or mists it.
#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/assess/climate_stage.hpp"

namespace loam::assess {

// Winter and summer, where day and night are solved and the hours of light are known; none for a bed that is not
// damp. nullopt only where `stop` was requested.
std::optional<std::vector<DrySpellResult>> dry_spells(const Context& context, const Housed& housed,
                                                      const std::vector<SolvedCase>& solved,
                                                      const climate::Workspace& workspace, std::stop_token stop);

// Days until the humidity by day falls under `least`, in the likely course shifted by `shift`; nullopt: not within it.
std::optional<double> days_until_below(const climate::DrySpell& spell, double least, double shift);

} // namespace loam::assess
