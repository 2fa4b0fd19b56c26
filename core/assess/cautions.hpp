// What no figure shows and every keeper has to be told: health, law, quarantine, the test run, the species' own.
#pragma once

#include "core/assess/context.hpp"

namespace loam::assess {

Notes enclosure_cautions(const Context& context, const Housed& housed);
Notes site_cautions(const Context& context);

// danger.sun-through-glass: yes is danger; unknown and unstated are not known, never harmless.
Notes judge_sun(const Context& context);

} // namespace loam::assess
