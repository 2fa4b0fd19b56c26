// What the tab "What if" reads: which figures of which cases, as planned and as tried, and why.
#pragma once

#include <array>

#include "app/desk/document/trial_runner.hpp"
#include "app/desk/views/explanation.hpp"
#include "app/desk/views/reading_track.hpp"
#include "core/assess/assessment.hpp"

namespace loam::desk {

inline constexpr std::array trial_cases{"winter-day", "summer-day"};

enum TrialReading { trial_humidity, trial_warm_side, trial_cool_side, trial_readings };
QString trial_reading_name(int reading); // "warm side"

// What the assessment says of a reading, with its target; not known where `result` is null or has no such case.
TrackReading planned_reading(const assess::EnclosureResult* result, const char* case_id, int reading);
// nullopt: nothing was found.
std::optional<Range> tried_reading(const SharedTrialAnswer& answer, const char* case_id, int reading);

// What the "why?" pane says.
Explanation trial_explanation();

} // namespace loam::desk
