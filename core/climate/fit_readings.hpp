// The search for the most probable inputs, and for readings that do not belong.
#pragma once

#include <optional>
#include <vector>

#include "core/climate/estimate.hpp"
#include "core/climate/reading_model.hpp"

namespace loam::climate {

struct Fit {
    std::vector<double> predicted_before; // per reading
    std::vector<double> slopes_before;
    std::vector<double> predicted_after;
    std::vector<double> slopes_after;
    std::vector<double> surprise;
    std::vector<bool> kept;
    std::vector<double> deviations; // of the inputs
    std::vector<double> covariance;
    double chi_square = 0.0;
    int iterations = 0;
};

// nullopt where it does not converge or a case has no balance (or the model was stopped).
std::optional<Fit> fit_readings(ReadingModel& model, const std::vector<TakenReading>& readings,
                                const std::vector<double>& noise);

} // namespace loam::climate
