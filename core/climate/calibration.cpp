#include "core/climate/calibration.hpp"

#include <algorithm>
#include <cmath>

#include "core/climate/chi_square.hpp"
#include "core/climate/fit_readings.hpp"
#include "core/climate/inputs.hpp"
#include "core/climate/reading_noise.hpp"
#include "core/climate/scale.hpp"

namespace loam::climate {

namespace {

// The variance of a reading that covariance of the inputs makes, by its row of slopes. Without one: each input as at
// first.
double spread_of(const double* row, std::size_t inputs, const std::vector<double>* covariance)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < inputs; ++i)
        for (std::size_t j = 0; j < inputs; ++j)
            if (covariance != nullptr)
                sum += row[i] * row[j] * (*covariance)[i * inputs + j];
            else if (i == j)
                sum += row[i] * row[i];
    return std::max(0.0, sum);
}

Range about(double likely, double half)
{
    return {likely - half, likely, likely + half};
}

FittedReading fitted(const Fit& fit, const std::vector<TakenReading>& readings, std::size_t r, double model_error_k,
                     double accuracy_k)
{
    const std::size_t inputs = fit.deviations.size();
    const double model = model_error_k * model_error_k;
    const double before = spread_of(&fit.slopes_before[r * inputs], inputs, nullptr);
    const double after = spread_of(&fit.slopes_after[r * inputs], inputs, &fit.covariance);
    const double half_before = deviations_at_ends * std::sqrt(before + model);
    const double half_after =
        std::max(deviations_at_ends * std::sqrt(after + model), std::min(accuracy_k, half_before));
    const TakenReading& taken = readings[r];
    const double own = std::sqrt(taken.accuracy_k * taken.accuracy_k / 3.0 + model);
    const double residual = taken.value_c - fit.predicted_after[r];
    return {.id = taken.id,
            .before_c = about(fit.predicted_before[r], half_before),
            .after_c = about(fit.predicted_after[r], half_after),
            .residual_k = residual,
            .residual_in_deviations = own > 0.0 ? residual / own : 0.0,
            .surprise = fit.surprise[r],
            .consistent = fit.kept[r]};
}

double deviation_left(const Fit& fit, std::size_t input)
{
    constexpr double least = 1e-12; // what rounding leaves of nothing
    return std::sqrt(std::max(least, fit.covariance[input * fit.deviations.size() + input]));
}

UpdatedInput updated(const UncertainInput& input, double shift, double left)
{
    return {.name = input.name,
            .before = input.prior,
            .after = {value_at(input.prior, shift - deviations_at_ends * left), value_at(input.prior, shift),
                      value_at(input.prior, shift + deviations_at_ends * left)},
            .shift_in_deviations = shift,
            .moved = std::abs(shift) >= least_shift || left <= most_of_spread};
}

// Inputs of the box that are uncertain, by their place among all.
std::vector<std::size_t> of_box(const std::vector<UncertainInput>& inputs)
{
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < inputs.size(); ++i)
        if (!inputs[i].of_room && inputs[i].prior.low < inputs[i].prior.high)
            places.push_back(i);
    return places;
}

Ties ties_of(const Fit& fit, const std::vector<UncertainInput>& inputs, double accuracy_k)
{
    Ties ties{.inputs = {}, .correlation = {}, .narrowed = {}, .accuracy_k = accuracy_k};
    const std::vector<std::size_t> places = of_box(inputs);
    for (const std::size_t i : places) {
        ties.inputs.push_back(inputs[i].name);
        ties.narrowed.push_back(deviation_left(fit, i));
        for (const std::size_t j : places)
            ties.correlation.push_back(fit.covariance[i * inputs.size() + j] /
                                       (deviation_left(fit, i) * deviation_left(fit, j)));
    }
    return ties;
}

// The box with its inputs as estimated and `half` standard deviations of each on either side.
Box moved_box(const Box& prior, const Fit& fit, const std::vector<UncertainInput>& inputs, const auto& half)
{
    Box box = prior;
    Case no_matter;
    std::size_t i = 0;
    visit_inputs(box, no_matter, [&](const std::string&, Range& range, const Parts&) {
        if (!inputs[i].of_room && range.low < range.high) {
            const double at = fit.deviations[i];
            range = {value_at(range, at - half(i)), value_at(range, at), value_at(range, at + half(i))};
        }
        ++i;
    });
    return box;
}

double best_accuracy(const std::vector<TakenReading>& readings, const std::vector<bool>& kept)
{
    double best = INFINITY;
    for (std::size_t r = 0; r < readings.size(); ++r)
        best = kept[r] ? std::min(best, readings[r].accuracy_k) : best;
    return best;
}

void use(Calibration& result, const Fit& fit, const Box& prior, const ReadingModel& model,
         const std::vector<TakenReading>& readings)
{
    for (std::size_t r = 0; r < readings.size(); ++r)
        if (fit.kept[r])
            result.conditions.push_back({readings[r].lamps_on, readings[r].room.temperature_c.likely});
    result.unlike = moved_box(prior, fit, model.inputs(), [](std::size_t) { return deviations_at_ends; });
    result.alike = moved_box(prior, fit, model.inputs(),
                             [&](std::size_t i) { return deviations_at_ends * deviation_left(fit, i); });
    result.alike.ties = ties_of(fit, model.inputs(), best_accuracy(readings, fit.kept));
    for (const std::size_t i : of_box(model.inputs()))
        result.inputs.push_back(updated(model.inputs()[i], fit.deviations[i], deviation_left(fit, i)));
}

} // namespace

std::optional<Calibration> calibrate(const Box& prior, const std::vector<TakenReading>& readings, Workspace& workspace,
                                     std::stop_token stop, const Resolution& resolution)
{
    Calibration result;
    result.alike = prior;
    result.unlike = prior;
    if (readings.empty())
        return result;
    ReadingModel model(prior, readings, workspace, stop, resolution);
    const auto fit = fit_readings(model, readings, noise_of(readings, prior));
    if (stop.stop_requested())
        return std::nullopt;
    if (!fit)
        return result;
    result.solved = true;
    result.iterations = fit->iterations;
    result.chi_square = fit->chi_square;
    result.degrees = static_cast<std::size_t>(std::count(fit->kept.begin(), fit->kept.end(), true));
    result.chance = result.degrees > 0 ? chance_of_more(fit->chi_square, result.degrees) : 1.0;
    result.fits = result.chance >= least_chance;
    for (std::size_t r = 0; r < readings.size(); ++r) {
        const double accuracy_k =
            std::isfinite(best_accuracy(readings, fit->kept)) ? best_accuracy(readings, fit->kept) : 0.0;
        result.readings.push_back(fitted(*fit, readings, r, prior.model_error_k, accuracy_k));
    }
    if (result.fits && result.degrees > 0)
        use(result, *fit, prior, model, readings);
    return result;
}

bool is_alike(const Calibration& calibration, const Case& now)
{
    const auto near_to = [&](const Condition& condition) {
        return condition.lamps_on == now.day &&
               std::abs(condition.room_c - now.room.temperature_c.likely) <= alike_within_k;
    };
    return now.fault == Fault::none &&
           std::any_of(calibration.conditions.begin(), calibration.conditions.end(), near_to);
}

const Box& box_for(const Calibration& calibration, const Case& now)
{
    return is_alike(calibration, now) ? calibration.alike : calibration.unlike;
}

Box as_estimated(Box box, const std::vector<UpdatedInput>& inputs)
{
    Case no_matter;
    visit_inputs(box, no_matter, [&](const std::string& name, Range& range, const Parts&) {
        const auto found =
            std::find_if(inputs.begin(), inputs.end(), [&](const UpdatedInput& input) { return input.name == name; });
        if (found == inputs.end() || !(range.low < range.high))
            return;
        const double shift = found->shift_in_deviations;
        range = {value_at(range, shift - deviations_at_ends), value_at(range, shift),
                 value_at(range, shift + deviations_at_ends)};
    });
    return box;
}

} // namespace loam::climate
