// A solved balance as the result that others read.
#pragma once

#include <vector>

#include "core/climate/ranges.hpp"
#include "core/climate/steady.hpp"

namespace loam::climate {

// Everything that a solution says by itself, but for the fields.
CaseResult report_solution(const Case& now, const Model& model, const Solution& solution);

// Adds zones, extremes and ranges.
void report_ranges(const Solved& solved, const std::vector<QuantityRange>& ranges, CaseResult& result);

FloorField floor_field(const Box& box, const Scene& scene, const Model& model, const std::vector<double>& solution);
SectionField section_field(const Scene& scene, const Model& model, const std::vector<double>& solution,
                           std::size_t row);

} // namespace loam::climate
