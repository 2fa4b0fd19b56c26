// What cures too much or too little UV.
#pragma once

#include <optional>

#include "core/assess/uv_scene.hpp"

namespace loam::assess {

// How one lamp's UV misses its target.
struct UvMiss {
    std::size_t lamp = 0; // the one that gives the basking place most
    const UvResult& result;
    Judgement judgement;
};

// From the lamp to the point.
double slant_m(const light::UvLamp& lamp, const light::Point& point);

// A new lamp where age alone is at fault; another height where one does it and brings no danger; a stronger or weaker
// lamp where none does; a measurement where only an end of the range misses.
std::optional<Remedy> uv_level_remedy(const Context& context, const Housed& housed, const UvScene& scene,
                                      const UvMiss& miss);

// As high as keeps every back within reach under the limit, even at the upper end of the range.
std::optional<Remedy> raised_above(const Housed& housed, const UvScene& scene, std::size_t lamp, double limit);

} // namespace loam::assess
