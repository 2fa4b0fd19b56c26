#include "core/climate/steady.hpp"

#include <cassert>
#include <variant>

#include "core/climate/case_ranges.hpp"
#include "core/climate/field_balance.hpp"
#include "core/climate/panel_report.hpp"
#include "core/climate/quantities.hpp"
#include "core/climate/report.hpp"
#include "core/independent.hpp"

namespace loam::climate {

namespace {

std::optional<CaseResult> result_of(Lack lack, const Case& room)
{
    if (lack == Lack::stopped_or_not_physical)
        return std::nullopt;
    CaseResult not_known;
    not_known.id = room.id;
    return not_known;
}

std::vector<QuantityRange> likely_values(const Quantities& quantities, const Balanced& at)
{
    std::vector<QuantityRange> likely;
    for (const Quantity& quantity : quantities.all)
        likely.push_back({.range = exactly(value_of(quantity, at.model, at.solution)), .limited_by = {}});
    return likely;
}

// Ranges about the values of the fine field.
void widen(std::vector<QuantityRange>& likely, const std::vector<QuantityRange>& ranges)
{
    assert(likely.size() == ranges.size());
    for (std::size_t q = 0; q < likely.size(); ++q) {
        const double here = likely[q].range.likely;
        likely[q] = ranges[q];
        likely[q].range = moved_to(ranges[q].range, here);
    }
}

} // namespace

std::optional<CaseResult> solve_steady(const Box& given, const Case& room, Workspace& workspace, std::stop_token stop,
                                       const Resolution& resolution)
{
    const Box box = as_in_case(given, room);
    const auto found = field_balance(box, room, field_cells(resolution), workspace.field, stop);
    if (const auto* lack = std::get_if<Lack>(&found))
        return result_of(*lack, room);
    const auto& here = std::get<Balanced>(found);
    const auto& [scene, model, solution] = here;
    CaseResult result = report_solution(room, model, solution);
    result.floor = floor_field(box, scene, model, solution.values);
    if (!solution.converged)
        return result;
    const auto ranges = case_ranges(box, room, range_cells(resolution), workspace.ranges, stop);
    if (const auto* lack = std::get_if<Lack>(&ranges)) {
        result.converged = false;
        return *lack == Lack::stopped_or_not_physical ? std::nullopt : std::optional(result);
    }
    const Places places = find_places(model, box, scene, solution.values);
    const Quantities quantities = make_quantities(model, box, scene, places, solution.values);
    auto figures = likely_values(quantities, here);
    widen(figures, std::get<std::vector<QuantityRange>>(ranges));
    report_ranges({box, room, scene, model, solution, places, quantities}, figures, result);
    report_panels(box, {scene, model, solution}, field_cells(resolution).cell_m, result);
    result.section =
        section_field(scene, model, solution.values, places.hottest_brick / scene.geometry.nz() / scene.geometry.nx);
    return result;
}

namespace {

std::optional<CaseResult> likely_result(const Box& box, const Case& room, const std::variant<Balanced, Lack>& found,
                                        const Resolution& resolution, bool with_fields)
{
    if (const auto* lack = std::get_if<Lack>(&found))
        return result_of(*lack, room);
    const auto& here = std::get<Balanced>(found);
    const auto& [scene, model, solution] = here;
    CaseResult result = report_solution(room, model, solution);
    if (!solution.converged)
        return result;
    const Places places = find_places(model, box, scene, solution.values);
    const Quantities quantities = make_quantities(model, box, scene, places, solution.values);
    report_ranges({box, room, scene, model, solution, places, quantities}, likely_values(quantities, here), result);
    if (with_fields) {
        result.floor = floor_field(box, scene, model, solution.values);
        report_panels(box, {scene, model, solution}, field_cells(resolution).cell_m, result);
        result.section = section_field(scene, model, solution.values,
                                       places.hottest_brick / scene.geometry.nz() / scene.geometry.nx);
    }
    return result;
}

} // namespace

std::optional<CaseResult> solve_likely(const Box& given, const Case& room, Workspace& workspace, std::stop_token stop,
                                       const Resolution& resolution)
{
    const Box box = as_in_case(given, room);
    return likely_result(box, room, field_balance(box, room, field_cells(resolution), workspace.field, stop),
                         resolution, false);
}

std::optional<CaseResult> solve_field(const Box& given, const Case& room, Workspace& workspace, std::stop_token stop,
                                      const Resolution& resolution)
{
    const Box box = as_in_case(given, room);
    return likely_result(box, room, field_balance(box, room, field_cells(resolution), workspace.field, stop),
                         resolution, true);
}

} // namespace loam::climate
