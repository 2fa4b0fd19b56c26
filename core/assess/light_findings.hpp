// What is found in the UV of one enclosure.
#pragma once

#include "core/assess/light.hpp"
#include "core/assess/uv_scene.hpp"

namespace loam::assess {

// UV meters read tenths, so that less than one reads as none. Common practice, no source.
inline constexpr double dark_uvi = 0.1;

// The greatest index that the zones' authors met any animal in, of zone 4: the limit for every one.
double greatest_uvi();

void report_uv(const Context& context, const Housed& housed, const UvScene& scene, UvStage& stage);
void report_no_lamp(const Housed& housed, UvStage& stage);

} // namespace loam::assess
