#include "core/climate/steady.hpp"

#include <algorithm>
#include <variant>

#include "core/climate/newton.hpp"
#include "core/climate/prepared.hpp"
#include "core/climate/quantities.hpp"
#include "core/climate/ranges.hpp"
#include "core/climate/report.hpp"

namespace loam::climate {

namespace {

std::vector<double> start_of(const Model& model, const Workspace& workspace, const std::string& case_id)
{
    for (const Workspace::Start& start : workspace.starts)
        if (start.case_id == case_id && fits(model, start.values))
            return start.values;
    return room_start(model);
}

void keep_start(Workspace& workspace, const std::string& case_id, const std::vector<double>& values)
{
    for (Workspace::Start& start : workspace.starts)
        if (start.case_id == case_id) {
            start.values = values;
            return;
        }
    workspace.starts.push_back({case_id, values});
}

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

struct Balanced {
    Scene scene;
    Model model;
    BorderedSolver solver;
    Solution solution;
};

// Why there is no balance.
enum class Lack { stopped_or_not_physical, out_of_range };

std::variant<Balanced, Lack> balanced(const Box& box, const Case& room, Workspace& workspace,
                                      const Resolution& resolution, const std::stop_token& stop, double share)
{
    auto scene = scene_for(box, resolution, workspace);
    if (!scene)
        return Lack::stopped_or_not_physical;
    auto model = make_model(box, room, *scene);
    if (!model)
        return Lack::out_of_range;
    BorderedSolver solver(*model, order_for(*model, workspace));
    auto solution = solve(*model, start_of(*model, workspace, room.id), solver, stop, share);
    if (solution && !solution->converged) // a stale start may mislead; the room's state does not
        solution = solve(*model, room_start(*model), solver, stop, share);
    if (!solution)
        return Lack::stopped_or_not_physical;
    if (solution->balance.residual_w.empty())
        return Lack::out_of_range;
    if (solution->converged)
        keep_start(workspace, room.id, solution->values);
    return Balanced{*std::move(scene), *std::move(model), std::move(solver), *std::move(solution)};
}

std::optional<CaseResult> result_of(Lack lack, const Case& room)
{
    if (lack == Lack::stopped_or_not_physical)
        return std::nullopt;
    CaseResult not_known;
    not_known.id = room.id;
    return not_known;
}

} // namespace

std::optional<CaseResult> solve_steady(const Box& given, const Case& room, Workspace& workspace, std::stop_token stop,
                                       const Resolution& resolution)
{
    const Box box = as_in_case(given, room);
    auto found = balanced(box, room, workspace, resolution, stop, exact_share);
    if (const auto* lack = std::get_if<Lack>(&found))
        return result_of(*lack, room);
    auto& [scene, model, solver, solution] = std::get<Balanced>(found);
    CaseResult result = report_solution(room, model, solution);
    result.floor = floor_field(box, scene, model, solution.values);
    if (!solution.converged || !factor_at(model, solution, solver)) {
        result.converged = false;
        return result;
    }
    const Places places = find_places(model, box, scene, solution.values);
    const Quantities quantities = make_quantities(model, box, scene, places, solution.values);
    const Solved solved{box, room, scene, model, solution, places, quantities};
    const auto ranges = find_ranges(solved, solver, damp_state(solved, solver, stop), stop);
    if (!ranges)
        return std::nullopt;
    report_ranges(solved, *ranges, result);
    result.section =
        section_field(scene, model, solution.values, places.hottest_brick / scene.geometry.nz() / scene.geometry.nx);
    return result;
}

std::optional<CaseResult> solve_likely(const Box& given, const Case& room, Workspace& workspace, std::stop_token stop,
                                       const Resolution& resolution)
{
    const Box box = as_in_case(given, room);
    const auto found = balanced(box, room, workspace, resolution, stop, nearby_share);
    if (const auto* lack = std::get_if<Lack>(&found))
        return result_of(*lack, room);
    const auto& [scene, model, solver, solution] = std::get<Balanced>(found);
    CaseResult result = report_solution(room, model, solution);
    if (!solution.converged)
        return result;
    const Places places = find_places(model, box, scene, solution.values);
    const Quantities quantities = make_quantities(model, box, scene, places, solution.values);
    std::vector<QuantityRange> likely;
    for (const Quantity& quantity : quantities.all)
        likely.push_back({.range = exactly(value_of(quantity, model, solution)), .limited_by = {}});
    report_ranges({box, room, scene, model, solution, places, quantities}, likely, result);
    return result;
}

} // namespace loam::climate
