// Linear solver for the balance's slopes: a large symmetric block of bricks bordered by the few shared places.
#pragma once

#include <memory>
#include <vector>

#include "core/climate/balance.hpp"

namespace loam::climate {

// Method: the bricks are eliminated (sparse LDL^T), the Schur complement of the shared places is dense (LU). One
// factorisation serves any number of right-hand sides, straight or transposed.
class BorderedSolver {
public:
    BorderedSolver(const Model& model,
                   const std::vector<std::size_t>& order); // of elimination, as `sparse_order` has it
    // For a model of the same layout, without factors: shares the order of elimination.
    BorderedSolver(const Model& model, const BorderedSolver& like);
    ~BorderedSolver();
    BorderedSolver(BorderedSolver&&) noexcept;
    BorderedSolver& operator=(BorderedSolver&&) noexcept;

    // False where the matrix is singular.
    bool factor(const Model& model, const Slopes& slopes);
    std::vector<double> solve(const std::vector<double>& right) const;
    std::vector<double> solve_transposed(const std::vector<double>& right) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace loam::climate
