// Solver for symmetric positive definite networks of conductances. Eigen stays in the .cpp.
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

#include "core/climate/bricks.hpp"

namespace loam::climate {

// An order of elimination that keeps the factors sparse. Method: approximate minimum degree, Amestoy, Davis & Duff
// 1996, as Eigen has it. Half a millisecond for a thousand unknowns: worth keeping.
std::vector<std::size_t> sparse_order(std::size_t unknowns, const std::vector<Link>& links);

// The matrix is sum over links of w (e_a - e_b)(e_a - e_b)^T plus a diagonal.
class SpdSolver {
public:
    SpdSolver();
    ~SpdSolver();
    SpdSolver(SpdSolver&&) noexcept;
    SpdSolver& operator=(SpdSolver&&) noexcept;

    // `order` lists the unknowns as they are eliminated. The conductances may change afterwards, the pairs not.
    void set_pattern(const std::vector<std::size_t>& order, const std::vector<Link>& links);
    // False where the matrix is not positive definite.
    bool factor(const std::vector<Link>& links, std::span<const double> diagonal);
    // In place; `values` may hold several right-hand sides one after the other.
    void solve(std::span<double> values) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace loam::climate
