#include "core/climate/newton.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/descent.hpp"
#include "core/units.hpp"

namespace loam::climate {

std::vector<double> room_start(const Model& model)
{
    std::vector<double> values(model.layout.size(), model.room.celsius);
    values[model.layout.lower_vapour()] = model.room.humidity_ratio;
    values[model.layout.upper_vapour()] = model.room.humidity_ratio;
    const double kelvin = units::kelvin_from_celsius(model.room.celsius);
    for (std::size_t p = 0; p < model.layout.patches; ++p)
        values[model.layout.irradiation(p)] = units::stefan_boltzmann_w_m2_k4 * kelvin * kelvin * kelvin * kelvin;
    for (const Device& device : model.devices)
        if (device.regulated)
            values[model.layout.power(*device.regulated)] = 0.5 * device.installed_w;
    return values;
}

bool fits(const Model& model, const std::vector<double>& start)
{
    return start.size() == model.layout.size() && balance(model, start, nullptr).has_value();
}

std::optional<Solution> solve(const Model& model, std::vector<double> start, BorderedSolver& solver,
                              const std::stop_token& stop, double share)
{
    constexpr int most_iterations = 60;
    constexpr int most_leaps = 6;
    int leaps = 0;
    Solution result{.values = std::move(start)};
    auto now = balance(model, result.values, nullptr);
    if (!now)
        return result;
    result.balance = std::move(*now);
    bool factored = false;
    double norm_now = norm(result.balance.residual_w);
    for (; result.iterations < most_iterations; ++result.iterations) {
        if (stop.stop_requested())
            return std::nullopt;
        result.residual_w = largest(result.balance.residual_w);
        result.converged = result.residual_w < share * std::max(1.0, result.balance.drawn_w);
        if (result.converged)
            break;
        const bool fresh = !factored;
        if (fresh) {
            Slopes slopes;
            if (!balance(model, result.values, &slopes) || !solver.factor(model, slopes))
                break;
        }
        const std::vector<double> step = solver.solve(result.balance.residual_w);
        auto trial = step_along(model, result.values, step, norm_now, fresh ? 8 : 0);
        if (!trial) {
            factored = false; // the old factors no longer help
            if (!fresh)
                continue;
            if (leaps++ == most_leaps)
                break;
            trial = leap(model, result.values, step);
            if (!trial)
                break;
        }
        factored = trial->norm < 0.4 * norm_now; // a new factorisation costs more than ten steps with the old one
        norm_now = trial->norm;
        result.values = std::move(trial->values);
        result.balance = std::move(trial->balance);
    }
    return result;
}

std::optional<Solution> solve_from(const std::vector<double>* start, const Model& model, BorderedSolver& solver,
                                   const std::stop_token& stop)
{
    if (start != nullptr && fits(model, *start)) {
        auto solution = solve(model, *start, solver, stop);
        if (!solution || solution->converged)
            return solution;
    }
    return solve(model, room_start(model), solver, stop);
}

std::optional<Solution> solve_nearby(const Model& model, const std::vector<double>& start, const BorderedSolver& solver)
{
    constexpr int most_steps = 16;
    Solution result{.values = start};
    auto now = balance(model, start, nullptr);
    for (; now && result.iterations < most_steps; ++result.iterations) {
        const double before_w = result.iterations > 0 ? result.residual_w : INFINITY;
        result.residual_w = largest(now->residual_w);
        result.converged = result.residual_w < nearby_share * std::max(1.0, now->drawn_w);
        if (result.converged) {
            result.balance = std::move(*now);
            return result;
        }
        if (!(result.residual_w < 0.75 * before_w))
            return std::nullopt;
        const std::vector<double> step = solver.solve(now->residual_w);
        for (std::size_t i = 0; i < step.size(); ++i)
            result.values[i] -= step[i];
        now = balance(model, result.values, nullptr);
    }
    return std::nullopt;
}

bool factor_at(const Model& model, const Solution& solution, BorderedSolver& solver)
{
    Slopes slopes;
    return balance(model, solution.values, &slopes) && solver.factor(model, slopes);
}

} // namespace loam::climate
