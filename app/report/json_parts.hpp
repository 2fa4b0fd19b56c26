// The parts of the assessment's JSON. Internal to app/report.
#pragma once

#include "app/words/speaker.hpp"
#include "core/assess/assessment.hpp"
#include "core/json/node.hpp"

namespace loam::report {

std::string zone_id(assess::Zone zone);
std::string measure_id(climate::Measure measure);
json::Node enclosure_node(const assess::EnclosureResult& enclosure);
// By case, with the map of each over the floor of `enclosure`.
json::Node humidity_node(const assess::EnclosureResult& enclosure);
json::Node uv_node(const assess::UvResult& uv);
// What readings say; null where there are none.
json::Node calibration_node(const std::optional<assess::CalibrationResult>& calibration);
// Adds "days", "drills" and "warm_up".
void add_courses(json::Node& node, const assess::EnclosureResult& enclosure);
json::Node water_node(const assess::WaterResult& water);
json::Node cool_seasons_node(const std::vector<assess::CoolSeasonResult>& rests);
// Lengths and weights over time, of the animals that were measured.
json::Node records_node(const std::vector<assess::RecordResult>& records);
json::Node light_year_node(const assess::EnclosureResult& enclosure);
void add_months(json::Node& power_node, const assess::EnclosureResult& enclosure);
void add_device_year(json::Node& device_node, const assess::DevicePower& device);
json::Node costs_node(const assess::Costs& costs);
json::Node deliveries_node(const std::vector<assess::DeliveryCost>& deliveries);
json::Node findings_node(const std::vector<Finding>& findings, const words::Speaker& speaker);

} // namespace loam::report
