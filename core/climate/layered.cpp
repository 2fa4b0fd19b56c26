#include "core/climate/layered.hpp"

#include <cassert>
#include <cmath>
#include <numbers>

#include <Eigen/Dense>

namespace loam::climate {

using Eigen::Index;
using Matrix = Eigen::MatrixXd;

namespace {

// Orthonormal cosine waves over cells in a row, flat at both ends (DCT-II). Every other wave is even about the middle
// and the rest are odd, so that each kind needs to see only half of the cells: half the work.
class Waves {
public:
    explicit Waves(Index cells);
    Index cells() const { return cells_; }
    // The wave that the transform puts in a place: first the even ones.
    Index wave_at(Index place) const { return place < evens() ? 2 * place : 2 * (place - evens()) + 1; }
    // Of the unit chain of conductances with free ends.
    double conductance(Index place) const;

    // Along the columns' index of a matrix with a column per cell; the other way transposed.
    // `room` is as large as what is transformed.
    template <class From, class To> void analyse(const From& from, To& to, double* room) const;
    template <class From, class To> void compose(const From& from, To& to, double* room) const;

private:
    Index evens() const { return cells_ - cells_ / 2; }
    Index cells_ = 0;
    Matrix even_; // half of the cells x waves
    Matrix odd_;
};

Waves::Waves(Index cells) : cells_(cells), even_(evens(), evens()), odd_(cells / 2, cells / 2)
{
    const auto count = static_cast<double>(cells);
    const auto value = [count](Index wave, Index cell) {
        return std::sqrt((wave == 0 ? 1.0 : 2.0) / count) *
               std::cos(std::numbers::pi * static_cast<double>(wave) * (static_cast<double>(cell) + 0.5) / count);
    };
    for (Index cell = 0; cell < evens(); ++cell)
        for (Index place = 0; place < evens(); ++place)
            even_(cell, place) = value(2 * place, cell);
    for (Index cell = 0; cell < cells / 2; ++cell)
        for (Index place = 0; place < cells / 2; ++place)
            odd_(cell, place) = value(2 * place + 1, cell);
}

double Waves::conductance(Index place) const
{
    return 2.0 - 2.0 * std::cos(std::numbers::pi * static_cast<double>(wave_at(place)) / static_cast<double>(cells_));
}

template <class From, class To> void Waves::analyse(const From& from, To& to, double* room) const
{
    const Index half = cells_ / 2;
    Eigen::Map<Matrix> scratch(room, from.rows(), cells_);
    for (Index cell = 0; cell < half; ++cell) {
        scratch.col(cell) = from.col(cell) + from.col(cells_ - 1 - cell);
        scratch.col(evens() + cell) = from.col(cell) - from.col(cells_ - 1 - cell);
    }
    if (evens() > half)
        scratch.col(half) = from.col(half);
    to.leftCols(evens()).noalias() = scratch.leftCols(evens()) * even_;
    to.rightCols(half).noalias() = scratch.rightCols(half) * odd_;
}

template <class From, class To> void Waves::compose(const From& from, To& to, double* room) const
{
    const Index half = cells_ / 2;
    Eigen::Map<Matrix> scratch(room, from.rows(), cells_);
    scratch.leftCols(evens()).noalias() = from.leftCols(evens()) * even_.transpose();
    scratch.rightCols(half).noalias() = from.rightCols(half) * odd_.transpose();
    for (Index cell = 0; cell < half; ++cell) {
        to.col(cell) = scratch.col(cell) + scratch.col(evens() + cell);
        to.col(cells_ - 1 - cell) = scratch.col(cell) - scratch.col(evens() + cell);
    }
    if (evens() > half)
        to.col(half) = scratch.col(half);
}

} // namespace

struct LayeredSolver::Inside {
    Index nz = 0;
    Waves x;
    Waves y;
    // Of each wave's tridiagonal system, brick by brick from below: reciprocal pivots, and what a brick hands upwards.
    std::vector<double> reciprocal;
    std::vector<double> carried;

    void factor(const Layers& layers);
    void solve_waves(double* values) const;
};

void LayeredSolver::Inside::factor(const Layers& layers)
{
    reciprocal.resize(static_cast<std::size_t>(x.cells() * y.cells() * nz));
    carried.resize(reciprocal.size());
    std::size_t at = 0;
    for (Index j = 0; j < y.cells(); ++j)
        for (Index i = 0; i < x.cells(); ++i) {
            double handed_w_k = 0.0; // by which the brick below lessens this one's pivot
            for (std::size_t k = 0; k < layers.nz; ++k, ++at) {
                const double below_w_k = k > 0 ? layers.up_w_k[k - 1] : 0.0;
                const double above_w_k = k + 1 < layers.nz ? layers.up_w_k[k] : 0.0;
                const double pivot = below_w_k + above_w_k + layers.ground_w_k[k] +
                                     layers.along_x_w_k[k] * x.conductance(i) +
                                     layers.along_y_w_k[k] * y.conductance(j) - handed_w_k;
                reciprocal[at] = 1.0 / pivot;
                carried[at] = above_w_k / pivot;
                handed_w_k = above_w_k * carried[at];
            }
        }
}

void LayeredSolver::Inside::solve_waves(double* values) const
{
    std::size_t at = 0;
    for (Index wave = 0; wave < x.cells() * y.cells(); ++wave) {
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

LayeredSolver::LayeredSolver(const Layers& layers)
    : inside_(new Inside{.nz = static_cast<Index>(layers.nz),
                         .x = Waves(static_cast<Index>(layers.nx)),
                         .y = Waves(static_cast<Index>(layers.ny)),
                         .reciprocal = {},
                         .carried = {}})
{
    inside_->factor(layers);
}

LayeredSolver::~LayeredSolver() = default;
LayeredSolver::LayeredSolver(LayeredSolver&&) noexcept = default;
LayeredSolver& LayeredSolver::operator=(LayeredSolver&&) noexcept = default;

void LayeredSolver::solve(std::span<double> values) const
{
    std::vector<double> scratch;
    solve(values, scratch);
}

void LayeredSolver::solve(std::span<double> values, std::vector<double>& scratch) const
{
    const Inside& in = *inside_;
    const Index slice = in.nz * in.x.cells();
    const Index block = slice * in.y.cells();
    assert(static_cast<Index>(values.size()) % block == 0);
    const auto size = static_cast<std::size_t>(block);
    if (scratch.size() < 2 * size)
        scratch.resize(2 * size);
    Eigen::Map<Matrix> waves(scratch.data(), slice, in.y.cells());
    double* room = scratch.data() + size;
    for (std::size_t from = 0; from < values.size(); from += size) {
        Eigen::Map<Matrix> field(values.data() + from, slice, in.y.cells());
        in.y.analyse(field, waves, room);
        for (Index j = 0; j < in.y.cells(); ++j) {
            const Eigen::Map<const Matrix> row(waves.col(j).data(), in.nz, in.x.cells());
            Eigen::Map<Matrix> to(field.col(j).data(), in.nz, in.x.cells());
            in.x.analyse(row, to, room);
        }
        in.solve_waves(values.data() + from);
        for (Index j = 0; j < in.y.cells(); ++j) {
            const Eigen::Map<const Matrix> row(field.col(j).data(), in.nz, in.x.cells());
            Eigen::Map<Matrix> to(waves.col(j).data(), in.nz, in.x.cells());
            in.x.compose(row, to, room);
        }
        in.y.compose(waves, field, room);
    }
}

} // namespace loam::climate
