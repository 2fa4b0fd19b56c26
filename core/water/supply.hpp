// Where water comes from: what is drawn from the mains for it, and what its filters are good for.
#pragma once

#include <optional>

#include "core/explain.hpp"

namespace loam::water {

// What: litres drawn from the mains for litres used. Method: each litre made by reverse osmosis sends `reject_l_per_l`
//   to the drain besides. Range: both >= 0. Source: closed form (mass balance).
Range drawn_l(const Range& used_l, const Range& reject_l_per_l);

// What: cartridges a year. Method: litres a year over what one is good for. Range: capacity > 0, otherwise nullopt.
// Source: closed form. By volume alone: makers set a greatest age besides.
std::optional<Range> cartridges_per_year(const Range& filtered_l_per_day, double cartridge_l);

} // namespace loam::water
