// What an animal can reach: the bed and everything it can stand on, raised by its own back.
#pragma once

#include <string>
#include <vector>

#include "core/assess/equipment.hpp"
#include "core/light/uv_field.hpp"

namespace loam::assess {

// The bed at its higher end first (id empty), then perches and hide roofs.
std::vector<light::Standing> standing_places(const Context& context, const Housed& housed, Notes& notes);

// The devices that hang from above, as core/light sees them: place, length, table, beam.
light::UvLamp as_lamp(const Context& context, const Housed& housed, Notes& notes, const KnownDevice& known);
light::Top as_top(const Context& context, const Housed& housed, Notes& notes);

// Burns, contact and clearance at the nearest point within reach: danger.climbing-reach, danger.unguarded-lamp,
// danger.cover-near-lamp, danger.shell-near-lamp.
Notes judge_reach(const Context& context, const Housed& housed);
Notes judge_clearances(const Context& context, const Housed& housed);

// How far what can burn keeps from a device: as stated, else what is usual for its kind. nullopt: neither is known.
struct Clearance {
    double needed_m = 0.0;
    Source source;
};
std::optional<Clearance> clearance_of(const KnownDevice& known);
// Whether a cover has to keep it: a pane may lie beside a tube of a few watts.
bool cover_keeps_clear(const KnownDevice& known, bool combustible);

} // namespace loam::assess
