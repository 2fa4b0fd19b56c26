// Solver for symmetric positive definite networks of conductances. Eigen stays in the .cpp.
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

#include "core/climate/bricks.hpp"

namespace loam::climate {

// The matrix is sum over links of w (e_a - e_b)(e_a - e_b)^T plus a diagonal.
class SpdSolver {
public:
    SpdSolver();
    ~SpdSolver();
    SpdSolver(SpdSolver&&) noexcept;
    SpdSolver& operator=(SpdSolver&&) noexcept;

    // Finds a fill-reducing order for the pattern; the conductances may change afterwards, the pairs not.
    void set_pattern(std::size_t unknowns, const std::vector<Link>& links);
    // False where the matrix is not positive definite.
    bool factor(const std::vector<Link>& links, std::span<const double> diagonal);
    // In place; `values` may hold several right-hand sides one after the other.
    void solve(std::span<double> values) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace loam::climate
