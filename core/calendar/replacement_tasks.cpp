#include <algorithm>
#include <map>

#include "core/assess/iso_day.hpp"
#include "core/calendar/parts.hpp"

namespace loam::calendar {

namespace {

using std::chrono::days;
using std::chrono::sys_days;

const plan::Enclosure* enclosure_with(const plan::Plan& plan, const std::string& element)
{
    const auto has = [&](const auto& list) {
        return std::any_of(list.begin(), list.end(), [&](const auto& one) { return one.id == element; });
    };
    for (const plan::Enclosure& one : plan.enclosures) {
        if (one.id == element || has(one.equipment) || has(one.substrate) || has(one.fittings)) {
            return &one;
        }
    }
    return nullptr;
}

const assess::SubstrateResult* layer_of(const assess::Assessment& assessment, const std::string& layer)
{
    for (const assess::EnclosureResult& enclosure : assessment.enclosures) {
        for (const assess::SubstrateResult& one : enclosure.substrate) {
            if (one.layer == layer) {
                return &one;
            }
        }
    }
    return nullptr;
}

} // namespace

std::vector<Task> replacement_tasks(const Scope& scope)
{
    const days later = std::max(days(0), scope.start - sys_days(scope.assessment.date));
    std::map<std::string, int> times; // the same thing may wear out several times a year
    std::vector<Task> tasks;
    for (const assess::Replacement& one : scope.assessment.costs.replacements) {
        const assess::SubstrateResult* layer = layer_of(scope.assessment, one.where);
        const TaskCode code = layer != nullptr ? TaskCode("replace-bed")
                              : one.uv_fades   ? TaskCode("replace-uv")
                                               : TaskCode("replace-item");
        Task replace = task(scope, code, Kind::replacement, nullptr, one.where);
        // By what it is and not by why, so that it keeps its id where a lamp's UV comes to outlast it.
        replace.id = "replace/" + one.where + '/' + one.item;
        replace.id += '/' + std::to_string(++times[replace.id]);
        if (const plan::Enclosure* enclosure = enclosure_with(scope.plan, one.where)) {
            replace.enclosure = enclosure->id;
        }
        replace.first = std::max(scope.start, sys_days(one.due) + later);
        replace.basis = Basis::computed;
        replace.wash_hands = layer != nullptr;
        replace.labels = {{"item", one.name}, {"earliest", assess::iso_of(sys_days(one.earliest) + later)}};
        if (layer != nullptr) {
            replace.amounts.push_back({"bed", layer->expanded_l, "l"});
        }
        tasks.push_back(replace);
    }
    return tasks;
}

} // namespace loam::calendar
