// Steps of Newton's method that are sure to go downhill.
#pragma once

#include <cmath>
#include <optional>
#include <vector>

#include "core/climate/balance.hpp"

namespace loam::climate {

double largest(const std::vector<double>& residual_w); // infinite where any is not finite
double sum_of_sizes(const std::vector<double>& residual_w);
double norm(const std::vector<double>& residual_w);

struct Trial {
    std::vector<double> values;
    Balance balance;
    double norm = INFINITY;
};

// The longest of a few halved steps that lowers the residual; nullopt if none does. `slopes`, where given, are filled
// for it.
std::optional<Trial> step_along(const Model& model, const std::vector<double>& from, const std::vector<double>& step,
                                double norm_now, int most_halvings, Slopes* slopes = nullptr);

// The longest step that can be evaluated, whatever it does to the residual: over a kink where a thermostat or a dew
// point switches.
std::optional<Trial> leap(const Model& model, const std::vector<double>& from, const std::vector<double>& step,
                          Slopes* slopes = nullptr);

} // namespace loam::climate
