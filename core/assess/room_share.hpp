// What all boxes together do to the room they stand in.
#pragma once

#include <optional>

#include "core/assess/context.hpp"

namespace loam::assess {

// What: by how much the boxes warm the room (K), lamps on or off. Method: electric power of all devices of all boxes
// over the room's loss per kelvin; a device behind a thermostat or a dimmer that is not set counts as anything from
// nothing to all of it, likely half; steady, as at the end of a hot day. Where nothing is stated the room's
// temperatures are taken as read with the boxes running: nullopt. Source: the room's own balance.
std::optional<Range> rise_by_boxes(const Context& context, bool lamps_on);

} // namespace loam::assess
