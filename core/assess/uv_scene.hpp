// The lamps that give UV, and the places where animals meet it.
#pragma once

#include <optional>
#include <vector>

#include "core/assess/equipment.hpp"
#include "core/assess/uv_result.hpp"

namespace loam::assess {

struct UvScene {
    std::vector<KnownDevice> devices; // those that give UV
    std::vector<light::UvLamp> lamps; // in their order
    light::Top top;
    std::vector<light::Standing> places;
    std::vector<light::Point> basking; // backs over the basking place: its middle first, then around it
    double back_m = 0.0;               // height of the highest back over where it stands
    double body_m = 0.0;               // length of the longest animal
};

// nullopt: no lamp gives UV.
std::optional<UvScene> uv_scene(const Context& context, const Housed& housed, Notes& notes);

// What stands at a place: height of its top over the base pane, and the fitting's id, empty for the bed.
struct StoodOn {
    double top_m = 0.0;
    std::string standing;
};
StoodOn stood_on(const plan::Enclosure& enclosure, const UvScene& scene, double x_m, double y_m);

// The strongest of these places by the likely index. nullopt: none is known, or one that is not may be stronger.
struct Strongest {
    std::size_t place = 0;
    Range uvi;
};
std::optional<Strongest> strongest_of(const std::vector<light::PreparedLamp>& lamps,
                                      const std::vector<light::Point>& places);

light::UvMap uv_map_of(const plan::Enclosure& enclosure, const UvScene& scene);

// The lamp that gives a place most; of those whose part is not known the first.
std::size_t main_lamp(const UvScene& scene, const light::Point& place);

} // namespace loam::assess
