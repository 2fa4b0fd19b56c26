// Direct solver for a block whose layers are even: what a real bed is close to, and so what its balance is
// conditioned with. Eigen stays in the .cpp.
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

namespace loam::climate {

// nx by ny columns of nz bricks, counted as in `Bricks`. Conductances in W/K may differ from layer to layer, not along
// one; the edges are adiabatic.
struct Layers {
    std::size_t nx = 0;
    std::size_t ny = 0;
    std::size_t nz = 0;
    std::vector<double> up_w_k;      // nz - 1, from a brick to the one above it
    std::vector<double> along_x_w_k; // nz, to the next brick along x
    std::vector<double> along_y_w_k;
    std::vector<double> ground_w_k; // nz, to what is held fixed: at least one is positive
};

// Method: cosine transforms along x and y take the block apart into columns, one per wave, each of them tridiagonal;
// Buzbee, Golub & Nielson 1970, "On direct methods for solving Poisson's equations", SIAM J. Numer. Anal. 7 (matrix
// decomposition; from memory). The transforms are dense products, which beat a fast transform up to some hundred cells
// a side.
class LayeredSolver {
public:
    explicit LayeredSolver(const Layers& layers);
    ~LayeredSolver();
    LayeredSolver(LayeredSolver&&) noexcept;
    LayeredSolver& operator=(LayeredSolver&&) noexcept;

    // In place; `values` may hold several right-hand sides one after the other. `scratch` may be anything, and is best
    // kept for the next call.
    void solve(std::span<double> values, std::vector<double>& scratch) const;
    void solve(std::span<double> values) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace loam::climate
