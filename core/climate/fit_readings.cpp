#include "core/climate/fit_readings.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace loam::climate {

namespace {

constexpr int most_iterations = 12;
constexpr int most_halvings = 6;
constexpr double small_step = 0.02; // of an input's standard deviation

// The readings that are kept, as the estimate wants them.
class Kept {
public:
    Kept(const std::vector<TakenReading>& readings, const std::vector<double>& noise, const std::vector<bool>& kept)
        : readings_(readings)
    {
        for (std::size_t r = 0; r < kept.size(); ++r)
            if (kept[r])
                places_.push_back(r);
        for (const std::size_t r : places_)
            for (const std::size_t s : places_)
                noise_.push_back(noise[r * kept.size() + s]);
    }

    const std::vector<std::size_t>& places() const { return places_; }

    std::vector<double> residual(const std::vector<double>& predicted) const
    {
        std::vector<double> residual;
        for (const std::size_t r : places_)
            residual.push_back(readings_[r].value_c - predicted[r]);
        return residual;
    }

    // Half the exponent of what is to be most probable.
    std::optional<double> cost(const std::vector<double>& predicted, const std::vector<double>& at) const
    {
        const auto misfit = weighed_square(residual(predicted), noise_);
        if (!misfit)
            return std::nullopt;
        return *misfit + std::inner_product(at.begin(), at.end(), at.begin(), 0.0);
    }

    // The estimate that holds if readings are straight in the inputs with these slopes.
    std::optional<Estimate> estimate(const std::vector<double>& predicted, const std::vector<double>& slopes,
                                     const std::vector<double>& at) const
    {
        Observed observed{.inputs = at.size(), .misfit = residual(predicted), .slopes = {}, .noise = noise_};
        for (std::size_t k = 0; k < places_.size(); ++k) {
            const auto row = slopes.begin() + static_cast<std::ptrdiff_t>(places_[k] * at.size());
            observed.misfit[k] += std::inner_product(at.begin(), at.end(), row, 0.0);
            observed.slopes.insert(observed.slopes.end(), row, row + static_cast<std::ptrdiff_t>(at.size()));
        }
        return estimate_inputs(observed);
    }

private:
    const std::vector<TakenReading>& readings_;
    std::vector<std::size_t> places_;
    std::vector<double> noise_;
};

struct Search {
    ReadingModel& model;
    Fit& fit;

    // Along the step as far as it makes things more probable; the largest change of an input, nullopt where there is
    // no such way.
    std::optional<double> go(const Kept& kept, const std::vector<double>& aim)
    {
        const auto now = kept.cost(fit.predicted_after, fit.deviations);
        double share = 1.0;
        for (int h = 0; now && h < most_halvings; ++h, share *= 0.5) {
            std::vector<double> there = fit.deviations;
            double change = 0.0;
            for (std::size_t i = 0; i < there.size(); ++i) {
                there[i] += share * (aim[i] - there[i]);
                change = std::max(change, std::abs(there[i] - fit.deviations[i]));
            }
            auto predicted = model.predict(there);
            const auto cost = predicted ? kept.cost(*predicted, there) : std::nullopt;
            if (cost && (*cost <= *now || change < small_step)) {
                fit.predicted_after = *std::move(predicted);
                fit.deviations = std::move(there);
                return change;
            }
        }
        return std::nullopt;
    }

    // The inputs for the readings that are kept. False where that fails.
    bool settle(const Kept& kept)
    {
        for (int i = 0; i < most_iterations; ++i) {
            auto slopes = model.slopes(fit.deviations);
            const auto found = slopes ? kept.estimate(fit.predicted_after, *slopes, fit.deviations) : std::nullopt;
            if (!found)
                return false;
            fit.slopes_after = *std::move(slopes);
            fit.covariance = found->covariance;
            fit.chi_square = found->chi_square;
            for (std::size_t k = 0; k < kept.places().size(); ++k)
                fit.surprise[kept.places()[k]] = found->surprise[k];
            ++fit.iterations;
            const auto change = go(kept, found->shift);
            if (!change)
                return false;
            if (*change < small_step)
                return true;
        }
        return false;
    }
};

// The reading that fits least, if it fits too little to be kept.
std::optional<std::size_t> odd_one(const Fit& fit)
{
    std::optional<std::size_t> odd;
    for (std::size_t r = 0; r < fit.kept.size(); ++r)
        if (fit.kept[r] && std::abs(fit.surprise[r]) > (odd ? std::abs(fit.surprise[*odd]) : least_surprise))
            odd = r;
    return odd;
}

} // namespace

std::optional<Fit> fit_readings(ReadingModel& model, const std::vector<TakenReading>& readings,
                                const std::vector<double>& noise)
{
    Fit fit;
    const std::vector<double> nought(model.inputs().size(), 0.0);
    auto predicted = model.predict(nought);
    auto slopes = predicted ? model.slopes(nought) : std::nullopt;
    if (!slopes)
        return std::nullopt;
    fit.predicted_before = *std::move(predicted);
    fit.slopes_before = *std::move(slopes);
    fit.surprise.resize(readings.size(), 0.0);
    fit.kept.resize(readings.size(), true);
    while (std::count(fit.kept.begin(), fit.kept.end(), true) > 0) {
        fit.deviations = nought;
        fit.predicted_after = fit.predicted_before;
        const bool settled = Search{model, fit}.settle(Kept(readings, noise, fit.kept));
        const auto odd = odd_one(fit); // one that no inputs explain may be why it did not settle
        if (!odd)
            return settled ? std::optional(fit) : std::nullopt;
        fit.kept[*odd] = false;
    }
    fit.deviations = nought; // nothing is left to learn from
    fit.predicted_after = fit.predicted_before;
    fit.slopes_after = fit.slopes_before;
    fit.chi_square = 0.0;
    fit.covariance.assign(nought.size() * nought.size(), 0.0);
    for (std::size_t i = 0; i < nought.size(); ++i)
        fit.covariance[i * nought.size() + i] = 1.0;
    return fit;
}

} // namespace loam::climate
