// One case balanced on the cells of the field.
#pragma once

#include <stop_token>
#include <variant>

#include "core/climate/case_ranges.hpp"

namespace loam::climate {

struct Balanced {
    Scene scene;
    Model model;
    Solution solution;
};

// `box` is as in the case. The solution may not have converged.
std::variant<Balanced, Lack> field_balance(const Box& box, const Case& room, const Cells& cells,
                                           Workspace::Level& level, const std::stop_token& stop);

} // namespace loam::climate
