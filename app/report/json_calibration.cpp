#include <array>

#include "app/report/json_parts.hpp"
#include "app/report/json_values.hpp"

namespace loam::report {

namespace {

std::string use_id(assess::ReadingUse use)
{
    static constexpr std::array ids{"used",        "inconsistent",     "not-fitted",
                                    "outside-box", "lamps-not-stated", "dimmer-not-stated"};
    return ids[static_cast<std::size_t>(use)];
}

std::string measure_id(climate::Measure measure)
{
    static constexpr std::array ids{"surface", "ground", "operative"};
    return ids[static_cast<std::size_t>(measure)];
}

json::Node reading_node(const assess::ReadingResult& reading)
{
    json::Node node = json::Node::object();
    node.add("id", text(reading.id)).add("use", text(use_id(reading.use)));
    node.add("measure", text(measure_id(reading.measure))).add("value_c", number(reading.value_c));
    node.add("accuracy_k", number(reading.accuracy_k));
    node.add("predicted_before_c", range(reading.before_c)).add("predicted_after_c", range(reading.after_c));
    node.add("residual_k", number(reading.residual_k));
    node.add("residual_in_deviations", number(reading.residual_in_deviations));
    node.add("surprise", number(reading.surprise));
    node.add("consistent",
             reading.surprise ? json::Node::of(reading.use != assess::ReadingUse::inconsistent) : json::Node());
    return node;
}

json::Node input_node(const climate::UpdatedInput& input)
{
    json::Node node = json::Node::object();
    node.add("input", text(input.name)).add("before", range(input.before)).add("after", range(input.after));
    node.add("shift_in_deviations", number(input.shift_in_deviations));
    return node;
}

} // namespace

json::Node calibration_node(const std::optional<assess::CalibrationResult>& calibration)
{
    if (!calibration) {
        return {};
    }
    json::Node readings = json::Node::array();
    for (const assess::ReadingResult& reading : calibration->readings) {
        readings.add(reading_node(reading));
    }
    json::Node inputs = json::Node::array();
    for (const climate::UpdatedInput& input : calibration->moved) {
        inputs.add(input_node(input));
    }
    json::Node node = json::Node::object();
    node.add("applied", json::Node::of(calibration->applied)).add("used", integer(calibration->used));
    node.add("chi_square", number(calibration->chi_square)).add("chance", number(calibration->chance));
    node.add("cases", texts(calibration->cases)).add("readings", std::move(readings));
    node.add("inputs", std::move(inputs));
    return node;
}

} // namespace loam::report
