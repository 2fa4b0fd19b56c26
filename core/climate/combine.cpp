#include "core/climate/combine.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace loam::climate {

namespace {

// Sums of squares of one figure, and the input that adds most.
struct Spread {
    double below = 0.0;
    double above = 0.0;
    double most = 0.0; // of one input, mean of both sides
    std::string by;

    void add(const InputEffect& input, std::size_t figure, double times = 1.0)
    {
        const double down = times * std::min({0.0, input.at_low[figure], input.at_high[figure]});
        const double up = times * std::max({0.0, input.at_low[figure], input.at_high[figure]});
        below += down * down;
        above += up * up;
        const double share = 0.5 * (down * down + up * up);
        if (share > most) {
            most = share;
            by = input.name;
        }
    }
};

using Tie = std::optional<std::size_t>; // place among the tied inputs

// Inputs of one name are told apart by their order.
std::vector<Tie> find_ties(const std::vector<InputEffect>& inputs, const Ties& ties)
{
    std::vector<Tie> found;
    std::vector<bool> taken(ties.inputs.size(), false);
    for (const InputEffect& input : inputs) {
        Tie& tie = found.emplace_back();
        for (std::size_t t = 0; t < taken.size() && !tie; ++t)
            if (!taken[t] && ties.inputs[t] == input.name) {
                taken[t] = true;
                tie = t;
            }
    }
    return found;
}

// What the correlations leave of the sum of squares of the tied inputs.
double tied_share(const std::vector<InputEffect>& inputs, const std::vector<Tie>& tie, const Ties& ties,
                  std::size_t figure)
{
    const auto slope = [&](std::size_t i) { return 0.5 * (inputs[i].at_high[figure] - inputs[i].at_low[figure]); };
    double plain = 0.0;
    double joint = 0.0;
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        if (!tie[i])
            continue;
        plain += slope(i) * slope(i);
        for (std::size_t j = 0; j < inputs.size(); ++j)
            if (tie[j])
                joint += slope(i) * slope(j) * ties.correlation[*tie[i] * ties.inputs.size() + *tie[j]];
    }
    return plain > 0.0 ? std::max(0.0, joint / plain) : 1.0;
}

// Half a range: no narrower than the accuracy, unless it was so without the ties.
double half(double squares, double untied_squares, double accuracy)
{
    return std::max(std::sqrt(squares), std::min(accuracy, std::sqrt(untied_squares)));
}

QuantityRange range_of(double likely, double model, const Spread& now, const Spread& untied, double accuracy)
{
    const double all = 0.5 * (now.below + now.above) + model;
    return {.range = {likely - half(now.below + model, untied.below + model, accuracy), likely,
                      likely + half(now.above + model, untied.above + model, accuracy)},
            .limited_by = now.most > model ? now.by : "model.error",
            .limited_share = all > 0.0 ? std::max(now.most, model) / all : 0.0};
}

} // namespace

std::vector<QuantityRange> combine(const Quantities& quantities, const std::vector<double>& likely,
                                   const std::vector<InputEffect>& inputs, const Box& box)
{
    std::vector<QuantityRange> result;
    const std::vector<Tie> tie = find_ties(inputs, box.ties);
    const double floor = 1.645 * box.model_error_k;
    for (std::size_t q = 0; q < likely.size(); ++q) {
        const double scale = std::sqrt(tied_share(inputs, tie, box.ties, q));
        Spread now;
        Spread untied;
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            now.add(inputs[i], q, tie[i] ? scale : 1.0);
            untied.add(inputs[i], q, tie[i] ? 1.0 / box.ties.narrowed[*tie[i]] : 1.0);
        }
        const double error = floor * quantities.all[q].per_model_k;
        result.push_back(range_of(likely[q], error * error, now, untied,
                                  quantities.all[q].is_temperature ? box.ties.accuracy_k : 0.0));
    }
    return result;
}

} // namespace loam::climate
