#include "core/climate/case_ranges.hpp"

#include <algorithm>

#include "core/climate/newton.hpp"
#include "core/climate/prepared.hpp"
#include "core/climate/quantities.hpp"

namespace loam::climate {

namespace {

// The figures with the bed as damp under the lamp as elsewhere, as after misting. Nothing where no lamp dries it, or
// where that state has no solution.
std::vector<OtherState> damp_state(const Solved& solved, const BorderedSolver& nearby, const std::stop_token& stop)
{
    const auto& dryness = solved.scene.dryness;
    const bool dried = std::any_of(dryness.begin(), dryness.end(), [](double share) { return share > 0.0; });
    if (!dried || solved.box.bed.empty())
        return {};
    Scene scene = solved.scene;
    scene.dryness.assign(dryness.size(), 0.0);
    Model model = solved.model;
    model.floor.dryness = scene.dryness;
    if (!set_conduction(model, solved.box, scene))
        return {};
    auto solution = solve_nearby(model, solved.solution.values, nearby);
    if (!solution) {
        BorderedSolver solver(model, nearby);
        solution = solve(model, solved.solution.values, solver, stop, nearby_share);
    }
    if (!solution || !solution->converged)
        return {};
    const Quantities quantities = make_quantities(model, solved.box, scene, solved.places, solution->values);
    OtherState damp{.name = dampness_input, .values = {}};
    for (const Quantity& quantity : quantities.all)
        damp.values.push_back(value_of(quantity, model, *solution));
    return {damp};
}

// The balance with its factors, for sensitivities.
struct Wide {
    Scene scene;
    Model model;
    Solution solution;
    BorderedSolver solver;
};

std::variant<Wide, Lack> balanced(const Box& box, const Case& now, const Cells& cells, Workspace::Level& level,
                                  const std::stop_token& stop)
{
    if (stop.stop_requested())
        return Lack::stopped_or_not_physical;
    auto scene = scene_for(box, cells, level);
    if (!scene || stop.stop_requested())
        return Lack::stopped_or_not_physical;
    auto model = make_model(box, now, *scene);
    if (!model)
        return Lack::out_of_range;
    BorderedSolver solver(*model, order_for(*model, level));
    auto solution = solve_from(start_of(level, now.id), *model, solver, stop);
    if (!solution)
        return Lack::stopped_or_not_physical;
    if (solution->balance.residual_w.empty())
        return Lack::out_of_range;
    if (!solution->converged || !factor_at(*model, *solution, solver))
        return Lack::not_converged;
    keep_start(level, now.id, solution->values);
    return Wide{*std::move(scene), *std::move(model), *std::move(solution), std::move(solver)};
}

} // namespace

std::variant<std::vector<QuantityRange>, Lack> case_ranges(const Box& box, const Case& now, const Cells& cells,
                                                           Workspace::Level& level, const std::stop_token& stop)
{
    auto found = balanced(box, now, cells, level, stop);
    if (const auto* lack = std::get_if<Lack>(&found))
        return *lack;
    auto& [scene, model, solution, solver] = std::get<Wide>(found);
    const Places places = find_places(model, box, scene, solution.values);
    const Quantities quantities = make_quantities(model, box, scene, places, solution.values);
    const Solved solved{box, now, scene, model, solution, places, quantities};
    auto ranges = find_ranges(solved, solver, damp_state(solved, solver, stop), stop);
    if (!ranges)
        return Lack::stopped_or_not_physical;
    return *std::move(ranges);
}

std::variant<Effects, Lack> spot_effects(const Box& box, const Case& now, const std::vector<Spot>& spots,
                                         const Cells& cells, Workspace::Level& level, const std::stop_token& stop)
{
    auto found = balanced(box, now, cells, level, stop);
    if (const auto* lack = std::get_if<Lack>(&found))
        return *lack;
    auto& [scene, model, solution, solver] = std::get<Wide>(found);
    Places places = find_places(model, box, scene, solution.values);
    places.spots = spots;
    const Quantities quantities = make_quantities(model, box, scene, places, solution.values);
    const auto effects = find_effects({box, now, scene, model, solution, places, quantities}, solver, stop);
    if (!effects)
        return Lack::stopped_or_not_physical;
    const auto of_spots = [&](const std::vector<double>& all) {
        std::vector<double> few;
        for (const std::size_t q : quantities.spots)
            few.push_back(all[q]);
        return few;
    };
    Effects result{.likely = of_spots(effects->likely), .inputs = {}};
    for (const InputEffect& input : effects->inputs)
        result.inputs.push_back({input.name, of_spots(input.at_low), of_spots(input.at_high)});
    return result;
}

} // namespace loam::climate
