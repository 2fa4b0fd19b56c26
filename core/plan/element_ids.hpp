// A walk over every element of a plan that has an id.
#pragma once

#include <functional>
#include <string>

#include "core/plan/plan.hpp"

namespace loam::plan {

// Calls `visit` with each id and the JSON Pointer of the element that has it, in the order of the file.
void for_each_id(const Plan& plan, const std::function<void(const std::string& id, const std::string& where)>& visit);

} // namespace loam::plan
