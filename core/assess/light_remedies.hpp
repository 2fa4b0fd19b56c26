// What cures too much or too little UV.
#pragma once

#include <optional>
#include <vector>

#include "core/explain.hpp"
#include "core/light/uv_field.hpp"

namespace loam::assess {

struct UvAt {
    const std::vector<light::UvLamp>& lamps; // the first is the one that is judged
    const light::Top& top;
    const light::Point& point;
};

// From the lamp to the point.
double slant_m(const light::UvLamp& lamp, const light::Point& point);

// Another height by the lamp's own table, in proportion to what comes through mesh and age today; an aged lamp that is
// too weak is replaced where a new one does it.
std::optional<Remedy> uv_level_remedy(const UvAt& scene, const Range& uvi, const Target& target, Judgement judgement);

// As high as the lamp's table reads the limit at the upper end of the range, which moves in proportion.
std::optional<Remedy> raised_above(const std::vector<light::UvLamp>& lamps, const light::Nearest& nearest,
                                   double limit);

} // namespace loam::assess
