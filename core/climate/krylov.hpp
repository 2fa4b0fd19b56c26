// Iterative solver for the slopes of a fine balance.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/climate/conditioner.hpp"

namespace loam::climate {

// Room to work in, best kept for the next solution; what is in it does not matter.
struct KrylovScratch {
    std::vector<std::vector<double>> basis;
    std::vector<std::vector<double>> directions;
    std::vector<double> layered;
};

// Method: flexible GMRES (Saad 1993, SIAM J. Sci. Comput. 14; from memory), conditioned with even layers for the bricks
// and a dense Schur complement for the few shared places, in which what the floor's columns have in common stands for
// each of them.
class KrylovSolver {
public:
    // Model and slopes must outlive the solver, unchanged.
    KrylovSolver(const Model& model, const Slopes& slopes, std::shared_ptr<const Conditioner> conditioner);
    ~KrylovSolver();
    KrylovSolver(KrylovSolver&&) noexcept;
    KrylovSolver& operator=(KrylovSolver&&) noexcept;

    // Solves until the residual is below `share` of the right-hand side. nullopt where that does not get there.
    std::optional<std::vector<double>> solve(const std::vector<double>& right, double share,
                                             KrylovScratch& scratch) const;
    std::optional<std::vector<double>> solve(const std::vector<double>& right, double share) const;
    int iterations() const; // so far

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace loam::climate
