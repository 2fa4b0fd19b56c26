// The parts of the assessment's JSON. Internal to app/report.
#pragma once

#include "core/assess/assessment.hpp"
#include "core/json/node.hpp"

namespace loam::report {

json::Node enclosure_node(const assess::EnclosureResult& enclosure);
// What readings say; null where there are none.
json::Node calibration_node(const std::optional<assess::CalibrationResult>& calibration);
// Adds "days", "drills" and "warm_up".
void add_courses(json::Node& node, const assess::EnclosureResult& enclosure);
json::Node costs_node(const assess::Costs& costs);

} // namespace loam::report
