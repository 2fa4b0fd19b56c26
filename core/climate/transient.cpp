#include "core/climate/transient.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/climate/descent.hpp"
#include "core/climate/prepared.hpp"
#include "core/climate/storage.hpp"

namespace loam::climate {

namespace {

constexpr double gamma_share = 1.0 - 1.0 / std::numbers::sqrt2;
constexpr double open_share = 1e-5; // of the power: moves no temperature by a millikelvin

// The balance of one stage: what leaves each place, and what it stores meanwhile.
struct StageBalance {
    const Model& model;
    const std::vector<double>& stored;
    const std::vector<double>& base;
    double seconds;

    std::optional<Balance> at(const std::vector<double>& values, Slopes* slopes) const
    {
        auto here = balance(model, values, slopes);
        if (!here)
            return std::nullopt;
        for (std::size_t i = 0; i < values.size(); ++i)
            here->residual_w[i] += stored[i] / seconds * (values[i] - base[i]);
        if (!slopes)
            return here;
        const std::size_t bricks = model.layout.bricks;
        for (std::size_t i = 0; i < bricks; ++i)
            slopes->diagonal[i] += stored[i] / seconds;
        for (std::size_t i = bricks; i < values.size(); ++i)
            if (stored[i] > 0.0)
                slopes->shared_shared.push_back({i - bricks, i - bricks, stored[i] / seconds});
        return here;
    }
};

// The longest of a few halved steps that lowers the residual, else the longest that can be evaluated: over a kink where
// a thermostat or a dew point switches.
std::optional<Trial> step(const StageBalance& stage, const std::vector<double>& from, const std::vector<double>& by,
                          double norm_now)
{
    std::optional<Trial> longest;
    double length = 1.0;
    for (int halving = 0; halving < 8; ++halving, length *= 0.5) {
        Trial trial{from, {}, INFINITY};
        for (std::size_t i = 0; i < by.size(); ++i)
            trial.values[i] -= length * by[i];
        for (const std::size_t place : {stage.model.layout.lower_vapour(), stage.model.layout.upper_vapour()})
            trial.values[place] = std::max(trial.values[place], 0.1 * from[place]); // humidity cannot pass zero
        auto there = stage.at(trial.values, nullptr);
        if (!there)
            continue;
        trial.balance = std::move(*there);
        trial.norm = norm(trial.balance.residual_w);
        if (trial.norm < (1.0 - 0.1 * length) * norm_now)
            return trial;
        if (!longest)
            longest = std::move(trial);
    }
    return longest;
}

} // namespace

Stepper::Stepper(Model model, std::vector<double> stored, const std::vector<std::size_t>& order)
    : model_(std::move(model)), solver_(model_, order), stored_(std::move(stored)), values_(room_start(model_))
{
}

bool Stepper::settle(const std::vector<double>* start, const std::stop_token& stop)
{
    auto solution = solve_from(start, model_, solver_, stop);
    factored_s_ = 0.0;
    if (!solution || !solution->converged)
        return false;
    values_ = std::move(solution->values);
    balance_ = std::move(solution->balance);
    return true;
}

bool Stepper::advance(double hours, const Set& set, const std::stop_token& stop)
{
    const double seconds = 3600.0 * hours;
    const std::vector<double> begin = values_;
    if (!set(model_, gamma_share) || !stage(begin, gamma_share * seconds, stop))
        return false;
    std::vector<double> base(begin.size());
    for (std::size_t i = 0; i < base.size(); ++i)
        base[i] = begin[i] + (1.0 - gamma_share) / gamma_share * (values_[i] - begin[i]);
    return set(model_, 1.0) && stage(base, gamma_share * seconds, stop);
}

// Leaves the stage's end in values_.
bool Stepper::stage(const std::vector<double>& base, double seconds, const std::stop_token& stop)
{
    constexpr int most_steps = 40;
    const StageBalance here{model_, stored_, base, seconds};
    auto now = here.at(values_, nullptr);
    for (int steps = 0; now && steps < most_steps; ++steps) {
        if (stop.stop_requested())
            return false;
        if (sum_of_sizes(now->residual_w) < open_share * std::max(1.0, now->drawn_w)) {
            balance_ = std::move(*now);
            return true;
        }
        const double norm_now = norm(now->residual_w);
        if (factored_s_ != seconds) {
            Slopes slopes;
            if (!here.at(values_, &slopes) || !solver_.factor(model_, slopes))
                return false;
            factored_s_ = seconds;
        }
        auto trial = step(here, values_, solver_.solve(now->residual_w), norm_now);
        if (!trial)
            return false;
        if (trial->norm > 0.3 * norm_now)
            factored_s_ = 0.0; // these factors no longer help
        values_ = std::move(trial->values);
        now = std::move(trial->balance);
    }
    return false;
}

Transient::Transient(const Box& box, const Case& now, const Scene& scene, Stepper stepper)
    : box_(&box), now_(now), scene_(&scene), stepper_(std::move(stepper))
{
    if (box.mistings_per_day > 0)
        film_.emplace(scene.geometry.columns());
}

std::optional<Transient> Transient::of(const Box& box, const Case& now, const Scene& scene, Workspace::Level& level)
{
    auto model = make_model(box, now, scene);
    if (!model)
        return std::nullopt;
    const std::vector<std::size_t>& order = order_for(*model, level);
    std::vector<double> stored = storage_of(*model, box, scene);
    return Transient(box, now, scene, Stepper(*std::move(model), std::move(stored), order));
}

void Transient::carry_on_from(const Transient& other)
{
    const Layout& from = other.stepper_.model().layout;
    const Layout& to = stepper_.model().layout;
    const std::vector<double>& then = other.stepper_.values();
    std::vector<double> values = stepper_.values();
    std::copy_n(then.begin(), from.bricks + 4 + from.bowls, values.begin());
    if (from.faces == to.faces) // else covers went: the new faces begin at the room's temperature, and soon follow
        std::copy_n(then.begin() + static_cast<std::ptrdiff_t>(from.irradiation(0)), from.patches + 2 * from.faces,
                    values.begin() + static_cast<std::ptrdiff_t>(to.irradiation(0)));
    for (const Device& device : stepper_.model().devices)
        if (device.regulated)
            values[to.power(*device.regulated)] = 0.5 * device.installed_w;
    stepper_.set_values(std::move(values));
    now_.room = other.now_.room;
    film_ = other.film_;
}

void Transient::spray(double kg_m2)
{
    if (film_)
        film_->spray(kg_m2);
}

bool Transient::advance(double hours, double room_c, const std::stop_token& stop)
{
    const double from_c = now_.room.temperature_c.likely;
    const auto set_room = [&](Model& model, double share) {
        now_.room.temperature_c = exactly(std::lerp(from_c, room_c, share));
        if (!renew(model, *box_, now_, *scene_, {.rest = true}))
            return false;
        if (film_)
            film_->offer(3600.0 * hours, model.floor);
        return true;
    };
    if (!stepper_.advance(hours, set_room, stop))
        return false;
    if (film_)
        film_->dry(stepper_.model(), stepper_.values(), 3600.0 * hours);
    return true;
}

} // namespace loam::climate
