// Finite-volume conduction through a block of bricks in columns.
#pragma once

#include <cstddef>
#include <vector>

namespace loam::climate {

// nx by ny columns of nz bricks, counted from the bottom up within a column; a brick of no thickness is a face whose
// temperature is wanted. The columns may differ in thickness brick by brick, as a sloped bed does.
struct Bricks {
    std::size_t nx = 0;
    std::size_t ny = 0;
    std::size_t nz = 0;
    std::vector<double> dx_m; // nx widths
    std::vector<double> dy_m; // ny widths
    std::vector<double> thickness_m;
    std::vector<double> conductivity_w_mk;
    std::vector<double> joint_m2k_w; // extra resistance between a brick and the one above it; empty: none

    std::size_t count() const { return nx * ny * nz; }
    std::size_t at(std::size_t i, std::size_t j, std::size_t k) const { return (j * nx + i) * nz + k; }
};

struct Link {
    std::size_t a = 0;
    std::size_t b = 0;
    double w_k = 0.0;
};

// Conductances between neighbours, W/K.
// Method: two half bricks in series per face (harmonic mean); between columns of unlike thickness the contact is their
// mean. Second order on even grids. Range: positive sizes and conductivities.
// Source: Patankar 1980, Numerical Heat Transfer and Fluid Flow, ch. 4 (from memory).
std::vector<Link> conduction_links(const Bricks& bricks);

enum class Side { left, right, front, back };

// Conductance from a brick's centre through its outer side and a resistance beyond it, W/K.
double side_conductance_w_k(const Bricks& bricks, std::size_t i, std::size_t j, std::size_t k, Side side,
                            double beyond_m2k_w);

} // namespace loam::climate
