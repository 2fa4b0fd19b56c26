// Older versions of the plan file, brought up to the present one step by step.
//
// Version 0 differs from version 1 in this:
//   - it has no `jurisdiction`, which becomes "none";
//   - `room_temp_c` at the top, one temperature of the room in degC, becomes `site.room.winter.day_c` and
//     `site.room.summer.day_c`; the nights stay unknown;
//   - `depth_cm` of a substrate layer becomes `depth_m`;
//   - `lamps` of an enclosure ({id, watts, x_m, y_m, height_m}) become entries of `equipment`: flood lamps without
//     control.
#pragma once

#include <cstdint>

#include "core/json/node.hpp"

namespace loam::plan {

// Changes `document` of version `from` in place into one of the current version; `from` must be 0 or more and at most
// the current one. A member of a type that no version had stays as it is, for the reader to refuse.
void migrate(json::Node& document, std::int64_t from);

} // namespace loam::plan
