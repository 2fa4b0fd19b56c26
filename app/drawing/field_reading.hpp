// What the fields of a case say at one place. Between cell centres values are linear; in the outer half of an outermost
// cell they stay as at its centre.
#pragma once

#include <functional>
#include <optional>

#include "core/climate/steady.hpp"

namespace loam::drawing {

struct FloorReading {
    double surface_c = 0.0;
    double ground_c = 0.0;
    double operative_c = 0.0;
    double humidity = 0.0; // 0..1
    double beam_w_m2 = 0.0;
};

// nullopt outside the field, which may be that of an older box with other sides.
std::optional<FloorReading> read_floor(const climate::FloorField& floor, double x_m, double y_m);

using BedTop = std::function<double(double x_m)>; // height of the bed's surface over the base pane

// Distance of the section's columns, which are those of the floor.
double section_step_m(const climate::CaseResult& detail);

// In the bed, at a height over the base pane; nullopt over the bed and outside the field.
std::optional<double> read_bed_c(const climate::CaseResult& detail, const BedTop& bed_top_m, double x_m, double z_m);

} // namespace loam::drawing
