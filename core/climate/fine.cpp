#include "core/climate/fine.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/descent.hpp"
#include "core/climate/krylov.hpp"

namespace loam::climate {

namespace {

constexpr double closed_share = 4e-7;

void suit(std::shared_ptr<const Conditioner>& conditioner, const Model& model, const Slopes& slopes)
{
    Layers layers = mean_layers(model, slopes);
    if (!conditioner || !alike(conditioner->layers, layers))
        conditioner = std::make_shared<const Conditioner>(layers, model.floor_patch);
}

// How well the next step is to be solved, from how far the last one brought the residual down.
double next_share(double fall)
{
    return std::clamp(0.9 * fall * fall, 1e-4, 0.1);
}

} // namespace

std::optional<Solution> solve_fine(const Model& model, std::vector<double> start,
                                   std::shared_ptr<const Conditioner>& conditioner, FineScratch& scratch,
                                   const std::stop_token& stop)
{
    constexpr int most_iterations = 60;
    constexpr int most_leaps = 6;
    int leaps = 0;
    Solution result{.values = std::move(start)};
    Slopes& slopes = scratch.slopes;
    auto here = balance(model, result.values, &slopes);
    if (!here)
        return result;
    result.balance = std::move(*here);
    double share = 0.05;
    for (; result.iterations < most_iterations; ++result.iterations) {
        if (stop.stop_requested())
            return std::nullopt;
        result.residual_w = largest(result.balance.residual_w);
        const double open_share = sum_of_sizes(result.balance.residual_w) / std::max(1.0, result.balance.drawn_w);
        result.converged = open_share < closed_share;
        if (result.converged)
            break;
        suit(conditioner, model, slopes);
        const KrylovSolver solver(model, slopes, conditioner);
        // No better than the end needs.
        const double enough = std::max(share, std::min(0.1, 0.3 * closed_share / open_share));
        const auto step = solver.solve(result.balance.residual_w, enough, scratch.krylov);
        result.linear_iterations += solver.iterations();
        if (!step)
            break;
        const double norm_now = norm(result.balance.residual_w);
        auto trial = step_along(model, result.values, *step, norm_now, 8, &slopes);
        if (!trial && leaps++ < most_leaps)
            trial = leap(model, result.values, *step, &slopes);
        if (!trial)
            break;
        share = next_share(trial->norm / norm_now);
        result.values = std::move(trial->values);
        result.balance = std::move(trial->balance);
    }
    return result;
}

} // namespace loam::climate
