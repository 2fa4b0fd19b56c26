#include "core/climate/field_balance.hpp"

#include "core/climate/fine.hpp"
#include "core/climate/fine_scratch.hpp"
#include "core/climate/prepared.hpp"

namespace loam::climate {

namespace {

// A stale start may mislead; the room's state does not.
std::optional<Solution> solve_from(const std::vector<double>* start, const Model& model, Workspace::Level& level,
                                   const std::stop_token& stop)
{
    FineScratch& scratch = level.scratch.use();
    if (start != nullptr && start->size() == model.layout.size()) { // what it can't evaluate does not converge
        auto solution = solve_fine(model, *start, level.conditioner, scratch, stop);
        if (!solution || solution->converged)
            return solution;
    }
    return solve_fine(model, room_start(model), level.conditioner, scratch, stop);
}

} // namespace

std::variant<Balanced, Lack> field_balance(const Box& box, const Case& room, const Cells& cells,
                                           Workspace::Level& level, const std::stop_token& stop)
{
    if (stop.stop_requested()) // laying out a box takes as long as a solution; a search that is stopped lays out no
                               // more
        return Lack::stopped_or_not_physical;
    auto scene = scene_for(box, cells, level);
    if (!scene || stop.stop_requested())
        return Lack::stopped_or_not_physical;
    auto model = make_model(box, room, *scene);
    if (!model)
        return Lack::out_of_range;
    auto solution = solve_from(start_of(level, room.id), *model, level, stop);
    if (!solution)
        return Lack::stopped_or_not_physical;
    if (solution->balance.residual_w.empty())
        return Lack::out_of_range;
    if (solution->converged)
        keep_start(level, room.id, solution->values);
    return Balanced{*std::move(scene), *std::move(model), *std::move(solution)};
}

} // namespace loam::climate
