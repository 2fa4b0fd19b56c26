#include "core/climate/descent.hpp"

#include <algorithm>

namespace loam::climate {

double largest(const std::vector<double>& residual_w)
{
    double most = 0.0;
    for (const double value : residual_w)
        most = std::isfinite(value) ? std::max(most, std::abs(value)) : INFINITY;
    return most;
}

double sum_of_sizes(const std::vector<double>& residual_w)
{
    double sum = 0.0;
    for (const double value : residual_w)
        sum += std::abs(value);
    return sum;
}

double norm(const std::vector<double>& residual_w)
{
    double sum = 0.0;
    for (const double value : residual_w)
        sum += value * value;
    return std::sqrt(sum);
}

std::optional<Trial> step_along(const Model& model, const std::vector<double>& from, const std::vector<double>& step,
                                double norm_now, int most_halvings, Slopes* slopes)
{
    double length = 1.0;
    const std::size_t vapour = model.layout.lower_vapour();
    for (int halving = 0; halving <= most_halvings; ++halving, length *= 0.5) {
        Trial trial{from, {}, INFINITY};
        for (std::size_t i = 0; i < step.size(); ++i)
            trial.values[i] -= length * step[i];
        for (const std::size_t place : {vapour, vapour + 1}) // humidity cannot pass zero
            trial.values[place] = std::max(trial.values[place], 0.1 * from[place]);
        auto there = balance(model, trial.values, slopes);
        if (!there)
            continue;
        trial.balance = std::move(*there);
        trial.norm = norm(trial.balance.residual_w);
        if (trial.norm < (1.0 - 0.1 * length) * norm_now)
            return trial;
    }
    return std::nullopt;
}

std::optional<Trial> leap(const Model& model, const std::vector<double>& from, const std::vector<double>& step,
                          Slopes* slopes)
{
    return step_along(model, from, step, INFINITY, 10, slopes);
}

} // namespace loam::climate
