#include "core/climate/ranges.hpp"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>

#include "core/climate/psychrometrics.hpp"

namespace loam::climate {

namespace {

constexpr double curved_change_k = 0.2; // beyond this a second step bends the straight line
constexpr double large_change_k = 4.0;  // beyond this the balance is solved again

// Sums of squares per figure, and the input that adds most.
struct Spread {
    double below = 0.0;
    double above = 0.0;
    double most = 0.0; // of one input, mean of both sides
    std::string by;
};

void add_ends(Spread& spread, const std::string& name, double at_low, double at_high)
{
    const double down = std::min({0.0, at_low, at_high});
    const double up = std::max({0.0, at_low, at_high});
    spread.below += down * down;
    spread.above += up * up;
    const double share = 0.5 * (down * down + up * up);
    if (share > spread.most) {
        spread.most = share;
        spread.by = name;
    }
}

double dot(const std::vector<double>& a, const std::vector<double>& b)
{
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

class Explorer {
public:
    Explorer(const Solved& solved, BorderedSolver& solver, const std::stop_token& stop)
        : s_(solved), solver_(solver), stop_(stop), varied_(solved.model)
    {
        for (const Quantity& quantity : s_.quantities.all) {
            likely_.push_back(value_of(quantity, s_.model, s_.solution));
            adjoints_.push_back(solver_.solve_transposed(gradient_of(quantity, s_.model, s_.solution)));
        }
        spreads_.resize(likely_.size());
    }

    bool run(const std::vector<OtherState>& others)
    {
        Box box = s_.box;
        Case now = s_.now;
        bool going = true;
        visit_inputs(box, now, [&](const std::string& name, Range& range, const Parts& parts) {
            going = going && !stop_.stop_requested();
            if (!going || range.low == range.high)
                return;
            const Range whole = range;
            const std::vector<double> at_low = changes(box, now, range, whole.low, parts);
            const std::vector<double> at_high = changes(box, now, range, whole.high, parts);
            for (std::size_t q = 0; q < spreads_.size(); ++q)
                add_ends(spreads_[q], name, at_low[q], at_high[q]);
            range = whole;
            restore(parts);
        });
        for (const OtherState& other : others)
            for (std::size_t q = 0; q < spreads_.size(); ++q)
                add_ends(spreads_[q], other.name, other.values[q] - likely_[q], 0.0);
        return going;
    }

    std::vector<QuantityRange> ranges() const
    {
        std::vector<QuantityRange> result;
        const double floor = 1.645 * s_.box.model_error_k;
        for (std::size_t q = 0; q < spreads_.size(); ++q) {
            const Spread& spread = spreads_[q];
            const double model = s_.quantities.all[q].is_temperature ? floor * floor : 0.0;
            const double all = 0.5 * (spread.below + spread.above) + model;
            result.push_back({.range = {likely_[q] - std::sqrt(spread.below + model), likely_[q],
                                        likely_[q] + std::sqrt(spread.above + model)},
                              .limited_by = spread.most > model ? spread.by : "model.error",
                              .limited_share = all > 0.0 ? std::max(spread.most, model) / all : 0.0});
        }
        return result;
    }

private:
    // Change of every figure with one input at one end.
    std::vector<double> changes(const Box& box, const Case& now, Range& range, double end, const Parts& parts)
    {
        const double likely = range.likely;
        if (end == likely)
            return std::vector<double>(likely_.size(), 0.0);
        range.likely = end;
        std::vector<double> result = changes_at(box, now, parts);
        range.likely = likely;
        return result;
    }

    std::vector<double> changes_at(const Box& box, const Case& now, const Parts& parts)
    {
        std::vector<double> none(likely_.size(), 0.0);
        const auto scene = parts.beam ? recast(box, s_.scene) : std::nullopt;
        if (parts.beam && !scene)
            return none;
        const Scene& there = scene ? *scene : s_.scene;
        if (!renew(varied_, box, now, there, parts))
            return none;
        const auto moved = balance(varied_, s_.solution.values, nullptr);
        if (!moved)
            return none;
        const Quantities other =
            parts.shortwave ? make_quantities(varied_, box, there, s_.places, s_.solution.values) : Quantities{};
        const Quantities& quantities = parts.shortwave ? other : s_.quantities;
        Solution at{.values = s_.solution.values, .balance = *moved};
        std::vector<double> result = estimate(quantities, at);
        if (largest_rise_k(result) > curved_change_k) {
            const std::vector<double> step = solver_.solve(moved->residual_w);
            for (std::size_t i = 0; i < step.size(); ++i)
                at.values[i] -= step[i];
            if (auto further = balance(varied_, at.values, nullptr)) {
                at.balance = std::move(*further);
                result = estimate(quantities, at);
            }
        }
        return is_straight(result) ? result : solved_again(box, now, there, result);
    }

    // Change of the figures at the root near a point: their values there, and what its residual still does to them.
    std::vector<double> estimate(const Quantities& quantities, const Solution& at) const
    {
        std::vector<double> result(likely_.size());
        for (std::size_t q = 0; q < result.size(); ++q)
            result[q] =
                value_of(quantities.all[q], varied_, at) - likely_[q] - dot(adjoints_[q], at.balance.residual_w);
        // Evaporation's adjoint is that of the vapour carried off, which at a root is the same.
        result[s_.quantities.evaporation] += carried_off_l_per_day(at) - at.balance.evaporation_kg_s * 86400.0 -
                                             carried_off_l_per_day(s_.solution) +
                                             s_.solution.balance.evaporation_kg_s * 86400.0;
        return result;
    }

    static double carried_off_l_per_day(const Solution& at)
    {
        return at.balance.losses.vapour_w / latent_heat_j_kg * 86400.0;
    }

    double largest_rise_k(const std::vector<double>& change) const
    {
        double most = 0.0;
        for (std::size_t q = 0; q < change.size(); ++q)
            if (s_.quantities.all[q].is_temperature)
                most = std::max(most, std::abs(change[q]));
        return most;
    }

    bool is_straight(const std::vector<double>& change) const
    {
        if (largest_rise_k(change) > large_change_k)
            return false;
        for (const Device& device : s_.model.devices) {
            if (!device.regulated)
                continue;
            const std::size_t p = s_.quantities.powers[*device.regulated];
            const std::size_t t = s_.quantities.probes[*device.regulated];
            const double power_w = likely_[p] + change[p];
            const bool short_now = likely_[t] < device.setpoint_c;
            const bool short_then = likely_[t] + change[t] < device.setpoint_c;
            const bool regulates = likely_[p] > 0.0 && likely_[p] < device.installed_w;
            if (regulates ? power_w < 0.0 || power_w > device.installed_w : short_now != short_then)
                return false;
        }
        return true;
    }

    std::vector<double> solved_again(const Box& box, const Case& now, const Scene& scene,
                                     const std::vector<double>& straight)
    {
        // The whole model, since parts of it may still stand at another input's value.
        const auto model = make_model(box, now, scene);
        if (!model)
            return straight;
        auto solution = solve_nearby(*model, s_.solution.values, solver_);
        if (!solution) {
            if (!spare_)
                spare_ = std::make_unique<BorderedSolver>(*model, solver_);
            solution = solve(*model, s_.solution.values, *spare_, stop_, nearby_share);
        }
        if (!solution || !solution->converged)
            return straight;
        const Quantities quantities = make_quantities(*model, box, scene, s_.places, solution->values);
        std::vector<double> result(likely_.size());
        for (std::size_t q = 0; q < result.size(); ++q)
            result[q] = value_of(quantities.all[q], *model, *solution) - likely_[q];
        return result;
    }

    void restore(const Parts& parts)
    {
        if (parts.shortwave)
            varied_.devices = s_.model.devices;
        if (parts.longwave)
            varied_.longwave = s_.model.longwave;
        if (parts.longwave || parts.rest)
            varied_.faces = s_.model.faces;
        if (parts.conduction) {
            varied_.links = s_.model.links;
            varied_.stencil = s_.model.stencil;
            varied_.side_w_k = s_.model.side_w_k;
        }
        varied_.room = s_.model.room;
        varied_.floor = s_.model.floor;
        varied_.underside = s_.model.underside;
        if (parts.rest) {
            varied_.bowls = s_.model.bowls;
            varied_.air = s_.model.air;
        }
    }

    const Solved& s_;
    BorderedSolver& solver_;
    std::unique_ptr<BorderedSolver> spare_; // its factors may change
    const std::stop_token& stop_;
    Model varied_;
    std::vector<double> likely_;
    std::vector<std::vector<double>> adjoints_;
    std::vector<Spread> spreads_;
};

} // namespace

std::optional<std::vector<QuantityRange>> find_ranges(const Solved& solved, BorderedSolver& solver,
                                                      const std::vector<OtherState>& others,
                                                      const std::stop_token& stop)
{
    Explorer explorer(solved, solver, stop);
    if (!explorer.run(others))
        return std::nullopt;
    return explorer.ranges();
}

} // namespace loam::climate
