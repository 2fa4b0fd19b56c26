// The bill of needs: everything a plan takes, before what is owned is set off and packs are chosen.
#pragma once

#include <vector>

#include "core/assess/context.hpp"
#include "core/assess/power.hpp"
#include "core/assess/water.hpp"
#include "core/buying/need.hpp"

namespace loam::assess {

struct EnclosureNeeds {
    const std::vector<SubstrateResult>& substrate;
    const WaterStage& water;
};

std::vector<buying::Need> enclosure_needs(const Context& context, const Housed& housed, const EnclosureNeeds& known);
// Shared by all enclosures of a site: stands, strips, timers, tools, hygiene.
std::vector<buying::Need> site_needs(const Context& context);

std::vector<buying::Need> device_needs(const Context& context, const Housed& housed);
std::vector<buying::Need> care_needs(const Context& context, const Housed& housed, const WaterStage& water);

buying::Need need(std::string kind, double amount, std::string unit, NeedCode why, Place place,
                  std::optional<double> fits_value = std::nullopt);

} // namespace loam::assess
