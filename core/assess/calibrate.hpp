// From the plan's readings to boxes with narrowed inputs.
#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/assess/calibration_result.hpp"
#include "core/assess/climate_box.hpp"

namespace loam::assess {

struct Calibrated {
    climate::Calibration boxes;
    std::optional<CalibrationResult> result; // absent: the enclosure has no readings
    // The box for a case, with all else as it was.
    ClimateBox at(const ClimateBox& set_up, const climate::Case& room) const;
};

// nullopt only where `stop` was requested.
std::optional<Calibrated> calibrate_enclosure(const Context& context, const Housed& housed, const ClimateBox& set_up,
                                              const std::vector<climate::Case>& rooms, Notes& notes,
                                              std::stop_token stop);

// Findings on the readings and on how they fit.
void report_readings(Notes& notes, const Housed& housed, const CalibrationResult& result);

} // namespace loam::assess
