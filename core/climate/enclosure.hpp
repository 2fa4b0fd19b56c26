// Diffuse exchange between the inner faces of the air space: long-wave, and lamp light after its first bounce.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "core/climate/view_factors.hpp"

namespace loam::climate {

enum class Plane { floor, ceiling, front, back, left, right };

// An axis-parallel rectangle on one of the six planes of a box; the span across its plane is a point.
struct Patch {
    Plane plane = Plane::floor;
    std::array<Span, 3> at; // along x, y, z
    double area_m2() const;
    double centre_m(std::size_t axis) const { return 0.5 * (at[axis].from + at[axis].to); }
};

// Square matrix, row by row.
struct Square {
    std::size_t size = 0;
    std::vector<double> values;
    double& operator()(std::size_t row, std::size_t column) { return values[row * size + column]; }
    double operator()(std::size_t row, std::size_t column) const { return values[row * size + column]; }
};

// The patches of a box's six planes. The walls are two bands high.
struct Patching {
    double length_m = 0.0;
    double width_m = 0.0;
    double height_m = 0.0;
    std::size_t along_x = 1;
    std::size_t along_y = 1;
};
std::vector<Patch> box_patches(const Patching& patching);

// View factors from each patch (row) to each other one. Rows sum to 1 in a closed box.
Square view_matrix(const std::vector<Patch>& patches);

// What falls on each patch per unit that each one sends out by itself, after all reflections:
// H = (I - F diag(reflectance))^-1 F e. Method: radiosity of gray diffuse patches, evenly lit each.
// Source: Howell, Siegel & Menguc, Thermal Radiation Heat Transfer, net-radiation method (from memory).
Square interreflection(const Square& views, const std::vector<double>& reflectance);

} // namespace loam::climate
