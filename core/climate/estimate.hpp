// The most probable inputs, given what was read: the linear step of a calibration. Numbers only.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace loam::climate {

// Inputs in their own standard deviations from where they were thought to be.
struct Observed {
    std::size_t inputs = 0;
    std::vector<double> misfit; // per reading: its value less what the inputs at nought give
    std::vector<double> slopes; // reading by reading, per standard deviation of each input
    std::vector<double> noise;  // covariance of the readings' own errors, row by row
};

struct Estimate {
    std::vector<double> shift;      // of the inputs
    std::vector<double> covariance; // that remains, row by row
    std::vector<double> surprise;   // per reading: how far it lies from what all others make expected, standardised
    double chi_square = 0.0;        // of all misfits together; as many degrees as readings
};

// Method: S = J J' + R; shift = J' S^-1 d; covariance = 1 - J' S^-1 J; chi-square = d' S^-1 d; the surprise of a
// reading is (S^-1 d)_j / sqrt((S^-1)_jj), its standardised error when it is left out.
// Source: Tarantola 2005, Inverse Problem Theory, section 3.2 (linear Gaussian case); leaving out: Dubrule 1983, Math.
// Geology 15 (both from memory).
// nullopt where two readings contradict each other without any error allowed: S is not positive definite.
std::optional<Estimate> estimate_inputs(const Observed& observed);

// r' R^-1 r, the size of residuals against their own errors. nullopt where R is not positive definite.
std::optional<double> weighed_square(const std::vector<double>& residual, const std::vector<double>& noise);

} // namespace loam::climate
