// From what each uncertain input does to the figures to the ranges of the figures.
#pragma once

#include <string>
#include <vector>

#include "core/climate/box.hpp"
#include "core/climate/quantities.hpp"

namespace loam::climate {

struct QuantityRange {
    Range range;
    std::string limited_by;
    double limited_share = 0.0;
};

// How every figure changes with one input at either end of its range.
struct InputEffect {
    std::string name;
    std::vector<double> at_low;
    std::vector<double> at_high;
};

// Method: ends combine as the root of the sum of squares, those that lower a figure apart from those that raise it;
// temperatures add 1.645 times the model's own standard deviation. Inputs count as independent but for those that the
// box has tied: their squares are scaled by what the double sum over their correlations leaves of the plain one.
// A tie narrows no temperature below the thermometer's accuracy.
// Source: JCGM 100:2008 (GUM) equations 10 and 16, law of propagation (from memory).
std::vector<QuantityRange> combine(const Quantities& quantities, const std::vector<double>& likely,
                                   const std::vector<InputEffect>& inputs, const Box& box);

} // namespace loam::climate
