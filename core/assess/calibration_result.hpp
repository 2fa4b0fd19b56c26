// What a keeper's readings say of one enclosure: data only.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/climate/calibration.hpp"

namespace loam::assess {

enum class ReadingUse {
    used,
    inconsistent,     // the rest makes it improbable, so it was left out
    not_fitted,       // the readings together fit no box within the stated spreads, or nothing could be computed
    outside_box,      // its place is not on the floor
    lamps_not_stated, // whether they were on
    dimmer_not_stated // a dimmer that was on, and no level to compute with
};

struct ReadingResult {
    std::string id;
    ReadingUse use = ReadingUse::used;
    climate::Measure measure = climate::Measure::ground;
    bool lamps_on = true;
    double room_c = 0.0;           // then, as stated or assumed
    bool other_conditions = false; // no case is like those it was taken in, so it narrows none
    double value_c = 0.0;
    double accuracy_k = 0.0;
    // Absent where nothing was computed for it. Before: by the plan alone; after: by the readings that were used too.
    std::optional<Range> before_c = std::nullopt;
    std::optional<Range> after_c = std::nullopt;
    std::optional<double> residual_k = std::nullopt;             // what was read less what is likely after
    std::optional<double> residual_in_deviations = std::nullopt; // of the thermometer's and the model's own error
    std::optional<double> surprise = std::nullopt;               // the same against what all the others make expected
    friend bool operator==(const ReadingResult&, const ReadingResult&) = default;
};

struct CalibrationResult {
    bool applied = false;                     // some reading was used
    std::vector<ReadingResult> readings;      // in the order of the plan
    std::vector<climate::UpdatedInput> moved; // inputs that moved or narrowed, the most first
    std::int64_t used = 0;                    // readings
    std::optional<double> chi_square;         // of those that were not left out, as many degrees
    std::optional<double> chance;             // of a worse fit if all is as assumed
    std::vector<std::string> cases;           // whose ranges the readings narrow: those alike enough
    friend bool operator==(const CalibrationResult&, const CalibrationResult&) = default;
};

} // namespace loam::assess
