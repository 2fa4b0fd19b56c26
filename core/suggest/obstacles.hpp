// What stands in the way of a suggestion, and what no equipment settles.
#pragma once

#include <vector>

#include "core/assess/assessment.hpp"

namespace loam::suggest {

// Findings that fall short or are a danger, and that other equipment could settle: warmth, humidity, UV, burns,
// controls; and what is not known of warmth, humidity and UV, for no one can stand behind it.
std::vector<Finding> obstacles(const assess::Assessment& assessment);

// The other ones: a heat wave or a cold night in the room itself, the floor, the company, bowls and hides, strips.
std::vector<Finding> besides(const assess::Assessment& assessment);

} // namespace loam::suggest
