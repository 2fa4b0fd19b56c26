// Lengths and weights over time: growth against what is published, and weight that is lost.
#pragma once

#include <chrono>
#include <optional>
#include <vector>

#include "core/assess/context.hpp"
#include "core/assess/record_result.hpp"

namespace loam::assess {

// Growth a year of a species without published rates, from the animal's own lengths: between nothing and the high end
// of what was measured, since the share that reptiles add a year falls with age. nullopt: not measured well enough.
std::optional<space::GrowthRate> measured_rate(const Context& context, const plan::Animal& animal);

struct RecordStage {
    std::vector<RecordResult> results; // of the animals that were measured
    Notes notes;
    friend bool operator==(const RecordStage&, const RecordStage&) = default;
};

RecordStage assess_records(const Context& context, const Housed& housed);

} // namespace loam::assess
