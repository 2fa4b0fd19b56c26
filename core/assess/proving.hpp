// A new box and the one whose place it takes, while the new one is proved and both run.
#pragma once

#include <string_view>

#include "core/assess/compose.hpp"

namespace loam::assess {

// Whether another enclosure takes its place. It stands there already and goes: nothing is bought for it, and it has no
// part in the running costs, but it draws its watts until the other one is proved.
bool is_replaced(const plan::Plan& plan, std::string_view enclosure);

// What running both costs, and what is overloaded only meanwhile. `with_both` holds the loads of all boxes.
Notes judge_proving(const Context& context, const std::vector<Part>& parts, const std::vector<Supplies>& supplies,
                    const Assessment& with_both);

} // namespace loam::assess
