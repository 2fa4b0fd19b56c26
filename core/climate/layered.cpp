#include "core/climate/layered.hpp"

#include <cassert>
#include <cmath>
#include <numbers>

#include <Eigen/Dense>

namespace loam::climate {

using Eigen::Index;
using Matrix = Eigen::MatrixXd;

struct LayeredSolver::Inside {
    Index nx = 0;
    Index ny = 0;
    Index nz = 0;
    Matrix waves_x; // row: wave, column: cell; orthonormal
    Matrix waves_y;
    // Of each wave's tridiagonal system, brick by brick from below: reciprocal pivots, and what a brick hands upwards.
    std::vector<double> reciprocal;
    std::vector<double> carried;

    void factor(const Layers& layers);
    void solve_waves(double* values) const;
};

namespace {

// Orthonormal cosine waves that are flat at both ends (DCT-II).
Matrix cosine_waves(Index cells)
{
    Matrix waves(cells, cells);
    const auto count = static_cast<double>(cells);
    for (Index wave = 0; wave < cells; ++wave)
        for (Index cell = 0; cell < cells; ++cell)
            waves(wave, cell) =
                std::sqrt((wave == 0 ? 1.0 : 2.0) / count) *
                std::cos(std::numbers::pi * static_cast<double>(wave) * (static_cast<double>(cell) + 0.5) / count);
    return waves;
}

// Of the chain of unit conductances with free ends.
double wave_conductance(Index wave, Index cells)
{
    return 2.0 - 2.0 * std::cos(std::numbers::pi * static_cast<double>(wave) / static_cast<double>(cells));
}

} // namespace

void LayeredSolver::Inside::factor(const Layers& layers)
{
    reciprocal.resize(static_cast<std::size_t>(nx * ny * nz));
    carried.resize(reciprocal.size());
    std::size_t at = 0;
    for (Index j = 0; j < ny; ++j)
        for (Index i = 0; i < nx; ++i) {
            double handed_w_k = 0.0; // by which the brick below lessens this one's pivot
            for (std::size_t k = 0; k < layers.nz; ++k, ++at) {
                const double below_w_k = k > 0 ? layers.up_w_k[k - 1] : 0.0;
                const double above_w_k = k + 1 < layers.nz ? layers.up_w_k[k] : 0.0;
                const double pivot = below_w_k + above_w_k + layers.ground_w_k[k] +
                                     layers.along_x_w_k[k] * wave_conductance(i, nx) +
                                     layers.along_y_w_k[k] * wave_conductance(j, ny) - handed_w_k;
                reciprocal[at] = 1.0 / pivot;
                carried[at] = above_w_k / pivot;
                handed_w_k = above_w_k * carried[at];
            }
        }
}

void LayeredSolver::Inside::solve_waves(double* values) const
{
    std::size_t at = 0;
    for (Index wave = 0; wave < nx * ny; ++wave) {
        double* column = values + wave * nz;
        const double* given = carried.data() + at;
        const double* scale = reciprocal.data() + at;
        for (Index k = 1; k < nz; ++k)
            column[k] += given[k - 1] * column[k - 1];
        column[nz - 1] *= scale[nz - 1];
        for (Index k = nz - 1; k-- > 0;)
            column[k] = column[k] * scale[k] + given[k] * column[k + 1];
        at += static_cast<std::size_t>(nz);
    }
}

LayeredSolver::LayeredSolver(const Layers& layers) : inside_(std::make_unique<Inside>())
{
    Inside& in = *inside_;
    in.nx = static_cast<Index>(layers.nx);
    in.ny = static_cast<Index>(layers.ny);
    in.nz = static_cast<Index>(layers.nz);
    in.waves_x = cosine_waves(in.nx);
    in.waves_y = cosine_waves(in.ny);
    in.factor(layers);
}

LayeredSolver::~LayeredSolver() = default;
LayeredSolver::LayeredSolver(LayeredSolver&&) noexcept = default;
LayeredSolver& LayeredSolver::operator=(LayeredSolver&&) noexcept = default;

void LayeredSolver::solve(std::span<double> values) const
{
    const Inside& in = *inside_;
    const Index block = in.nx * in.ny * in.nz;
    assert(static_cast<Index>(values.size()) % block == 0);
    Matrix waves(in.nz * in.nx, in.ny);
    for (std::size_t from = 0; from < values.size(); from += static_cast<std::size_t>(block)) {
        Eigen::Map<Matrix> field(values.data() + from, in.nz * in.nx, in.ny);
        waves.noalias() = field * in.waves_y.transpose();
        for (Index j = 0; j < in.ny; ++j) {
            Eigen::Map<Matrix> to(field.col(j).data(), in.nz, in.nx);
            const Eigen::Map<const Matrix> slice(waves.col(j).data(), in.nz, in.nx);
            to.noalias() = slice * in.waves_x.transpose();
        }
        in.solve_waves(values.data() + from);
        for (Index j = 0; j < in.ny; ++j) {
            Eigen::Map<Matrix> to(waves.col(j).data(), in.nz, in.nx);
            const Eigen::Map<const Matrix> slice(field.col(j).data(), in.nz, in.nx);
            to.noalias() = slice * in.waves_x;
        }
        field.noalias() = waves * in.waves_y;
    }
}

} // namespace loam::climate
