#include "core/assess/look.hpp"

#include <algorithm>
#include <variant>

#include "core/assess/stages.hpp"
#include "core/climate/calibration.hpp"
#include "core/independent.hpp"

namespace loam::assess {

namespace {

// Devices of one kind whose dimmer the plan leaves open, turned as the same ones were before.
template <class Device> void turn_as_before(std::vector<Device>& devices, const std::vector<Device>& before,
                                            const std::vector<std::string>& free_dimmers)
{
    for (Device& device : devices) {
        const auto same =
            std::find_if(before.begin(), before.end(), [&](const Device& one) { return one.id == device.id; });
        if (same != before.end() &&
            std::find(free_dimmers.begin(), free_dimmers.end(), device.id) != free_dimmers.end()) {
            device.control.level = same->control.level;
        }
    }
}

void widen_as_before(Range& range, const Range& before)
{
    range = moved_to(before, range.likely);
}

void widen_as_before(climate::ZoneReading& zone, const climate::ZoneReading& before)
{
    widen_as_before(zone.surface_c, before.surface_c);
    widen_as_before(zone.ground_c, before.ground_c);
    widen_as_before(zone.operative_c, before.operative_c);
    widen_as_before(zone.humidity, before.humidity);
    zone.humidity.low = std::max(0.0, zone.humidity.low);
    zone.humidity.high = std::min(1.0, zone.humidity.high);
    zone.limited_by = before.limited_by;
    zone.limited_share = before.limited_share;
}

} // namespace

std::optional<HeatCase> look(const plan::Plan& plan, const catalog::Catalog& catalog, const LookAt& at,
                             Workspace& workspace, std::stop_token stop)
{
    const auto place = place_of(plan, at.enclosure);
    if (!place) {
        return std::nullopt;
    }
    const Context context{plan, catalog, {}};
    const Housed housed{plan.enclosures[*place], *place};
    workspace.store().use(catalog);
    Workspace::Store::Kept& kept = workspace.store().of(at.enclosure);
    const SolvedCase* before = solved_as(kept.climate.solved, at.case_id);
    if (before == nullptr || kept.climate_key == climate_key(context, housed)) {
        return std::nullopt;
    }
    Notes unused; // the next assessment tells of them
    const auto set_up = climate_box(context, housed, unused);
    const auto* now = std::get_if<ClimateBox>(&set_up);
    if (now == nullptr) {
        return std::nullopt;
    }
    const std::vector<climate::Case> rooms = climate_cases(context, now->box, unused);
    const auto room = std::find_if(rooms.begin(), rooms.end(), [&](const auto& one) { return one.id == at.case_id; });
    if (room == rooms.end()) {
        return std::nullopt;
    }
    SolvedCase solved = *before;
    solved.room = *room;
    solved.box = climate::as_estimated(now->box, kept.climate.estimated);
    turn_as_before(solved.box.lamps, before->box.lamps, now->free_dimmers);
    turn_as_before(solved.box.mats, before->box.mats, now->free_dimmers);
    auto field = climate::solve_field(solved.box, *room, kept.starts, stop);
    if (!field || !field->converged) {
        return std::nullopt;
    }
    widen_as_before(field->basking, before->result.basking);
    widen_as_before(field->warm, before->result.warm);
    widen_as_before(field->cool, before->result.cool);
    field->ground_humidity = field->cool.humidity; // by which it is judged
    solved.result = *std::move(field);
    return judge_case(solved, species_in(housed.enclosure, catalog));
}

} // namespace loam::assess
