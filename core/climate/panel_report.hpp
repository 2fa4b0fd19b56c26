// The fields of walls and top in a case's result.
#pragma once

#include "core/climate/field_balance.hpp"
#include "core/climate/steady.hpp"

namespace loam::climate {

// After the ranges: those of the hottest places follow from that of the warmest wall, as rises over the room.
void report_panels(const Box& box, const Balanced& at, double cell_m, CaseResult& result);

} // namespace loam::climate
