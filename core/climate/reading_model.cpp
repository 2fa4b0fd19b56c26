#include "core/climate/reading_model.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "core/climate/case_ranges.hpp"
#include "core/climate/field_balance.hpp"
#include "core/climate/inputs.hpp"
#include "core/climate/probe.hpp"
#include "core/climate/scale.hpp"

namespace loam::climate {

ReadingModel::ReadingModel(const Box& prior, const std::vector<TakenReading>& readings, Workspace& workspace,
                           std::stop_token stop, const Resolution& resolution)
    : prior_(prior), workspace_(workspace), stop_(std::move(stop)), resolution_(resolution), count_(readings.size())
{
    for (std::size_t r = 0; r < readings.size(); ++r)
        add_to_group(readings[r], r);
    Box box = prior;
    Case now = groups_.empty() ? Case{} : groups_.front().now;
    visit_inputs(box, now, [&](const std::string& name, const Range& range, const Parts&) {
        inputs_.push_back({name, range, name.rfind("room.", 0) == 0});
    });
}

void ReadingModel::add_to_group(const TakenReading& reading, std::size_t place)
{
    const auto same = [&](const Group& group) {
        return group.now.day == reading.lamps_on && group.now.room == reading.room;
    };
    auto group = std::find_if(groups_.begin(), groups_.end(), same);
    if (group == groups_.end()) {
        const std::string id = "reading-" + std::to_string(groups_.size());
        groups_.push_back(
            {.now = {.id = id, .room = reading.room, .day = reading.lamps_on}, .readings = {}, .spots = {}});
        group = groups_.end() - 1;
    }
    group->readings.push_back(place);
    group->spots.push_back(reading.at);
}

ReadingModel::State ReadingModel::state_of(const Group& group, const std::vector<double>& deviations, double half) const
{
    State state{prior_, group.now, {}};
    std::size_t i = 0;
    visit_inputs(state.box, state.now, [&](const std::string&, Range& range, const Parts&) {
        if (range.low < range.high)
            range = {value_at(range, deviations[i] - half), value_at(range, deviations[i]),
                     value_at(range, deviations[i] + half)};
        if (range.low != range.high)
            state.varied.push_back(i);
        ++i;
    });
    return state;
}

std::optional<std::vector<double>> ReadingModel::predict(const std::vector<double>& deviations)
{
    std::vector<double> predicted(count_, 0.0);
    for (const Group& group : groups_) {
        const State state = state_of(group, deviations, 0.0);
        const auto found = field_balance(state.box, state.now, field_cells(resolution_), workspace_.field, stop_);
        const auto* here = std::get_if<Balanced>(&found);
        if (here == nullptr || !here->solution.converged)
            return std::nullopt;
        const std::vector<double>& values = here->solution.values;
        for (std::size_t k = 0; k < group.spots.size(); ++k)
            predicted[group.readings[k]] =
                value_of(spot_reading(here->model, state.box, here->scene, group.spots[k], values), values);
    }
    return predicted;
}

std::optional<std::vector<double>> ReadingModel::slopes(const std::vector<double>& deviations)
{
    constexpr double half = 0.5;
    std::vector<double> slopes(count_ * inputs_.size(), 0.0);
    for (const Group& group : groups_) {
        const State state = state_of(group, deviations, half);
        const auto found =
            spot_effects(state.box, state.now, group.spots, range_cells(resolution_), workspace_.ranges, stop_);
        const auto* effects = std::get_if<Effects>(&found);
        if (effects == nullptr)
            return std::nullopt;
        for (std::size_t v = 0; v < state.varied.size(); ++v)
            for (std::size_t k = 0; k < group.readings.size(); ++k)
                slopes[group.readings[k] * inputs_.size() + state.varied[v]] =
                    (effects->inputs[v].at_high[k] - effects->inputs[v].at_low[k]) / (2.0 * half);
    }
    return slopes;
}

} // namespace loam::climate
