// What the keeper's measurements of an animal tell over time.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "core/explain.hpp"
#include "core/space/growth.hpp"

namespace loam::assess {

struct RecordPoint {
    std::chrono::sys_days on;
    std::optional<double> length_m;
    std::optional<double> mass_kg;
    // What the first length makes expected on that day; absent: before it, or no length was measured.
    std::optional<space::LengthBounds> expected;
    friend bool operator==(const RecordPoint&, const RecordPoint&) = default;
};

// The least and greatest length on a day to come, from the newest length.
struct LengthAhead {
    std::chrono::sys_days on;
    space::LengthBounds length;
    friend bool operator==(const LengthAhead&, const LengthAhead&) = default;
};

struct RecordResult {
    std::string animal;
    std::string species;
    std::vector<RecordPoint> points; // by day
    std::vector<LengthAhead> ahead;  // year by year; empty: no length was measured
    Judgement growth{Verdict::not_known, Direction::none};
    std::optional<Range> growth_per_year; // share of the length; absent: fewer than two lengths, or too close together
    Judgement mass{Verdict::not_known, Direction::none};
    std::optional<double> lost; // share of the greatest mass in the year before the newest; absent: fewer than two
    std::chrono::sys_days heaviest_on;
    double heaviest_kg = 0.0;
    friend bool operator==(const RecordResult&, const RecordResult&) = default;
};

} // namespace loam::assess
