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
    }

    std::optional<Effects> run()
    {
        Effects effects{.likely = likely_, .inputs = {}};
        Box box = s_.box;
        Case now = s_.now;
        bool going = true;
        visit_inputs(box, now, [&](const std::string& name, Range& range, const Parts& parts) {
            going = going && !stop_.stop_requested();
            if (!going || range.low == range.high)
                return;
            const Range whole = range;
            std::vector<double> at_low = changes(box, now, range, whole.low, parts);
            std::vector<double> at_high = changes(box, now, range, whole.high, parts);
            effects.inputs.push_back({name, std::move(at_low), std::move(at_high)});
            range = whole;
            restore(parts);
        });
        return going ? std::optional(std::move(effects)) : std::nullopt;
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
        if (parts.beam)
            return solved_again(box, now, there, result, /*places_move=*/true);
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

    // `places_move`: a lamp's beam also moves what lies in its light and what in the shade, where the zones are read.
    std::vector<double> solved_again(const Box& box, const Case& now, const Scene& scene,
                                     const std::vector<double>& straight, bool places_move = false)
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
        Places places = s_.places;
        if (places_move) {
            places = find_places(*model, box, scene, solution->values);
            places.spots = s_.places.spots;
        }
        const Quantities quantities = make_quantities(*model, box, scene, places, solution->values);
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
};

} // namespace

std::optional<Effects> find_effects(const Solved& solved, BorderedSolver& solver, const std::stop_token& stop)
{
    return Explorer(solved, solver, stop).run();
}

std::optional<std::vector<QuantityRange>> find_ranges(const Solved& solved, BorderedSolver& solver,
                                                      const std::vector<OtherState>& others,
                                                      const std::stop_token& stop)
{
    auto effects = find_effects(solved, solver, stop);
    if (!effects)
        return std::nullopt;
    const std::vector<double> none(effects->likely.size(), 0.0);
    for (const OtherState& other : others) {
        InputEffect effect{.name = other.name, .at_low = other.values, .at_high = none};
        for (std::size_t q = 0; q < none.size(); ++q)
            effect.at_low[q] -= effects->likely[q];
        effects->inputs.push_back(std::move(effect));
    }
    return combine(solved.quantities, effects->likely, effects->inputs, solved.box);
}

} // namespace loam::climate
