#include <algorithm>
#include <cmath>

#include "core/assess/climate_parts.hpp"
#include "core/assess/reach.hpp"
#include "core/plan/names.hpp"

namespace loam::assess {

namespace {

climate::Control control_of(const KnownDevice& known, const Housed& housed, Notes& notes, ClimateBox& result)
{
    const plan::Control& given = known.device.control;
    climate::Control control;
    switch (given.kind) {
    case plan::ControlKind::none:
        break;
    case plan::ControlKind::dimmer:
        control.kind = climate::ControlKind::dimmer;
        control.level = given.level.value_or(1.0);
        if (!given.level) {
            assume(notes, {pointer_to(housed, known, "control/level"), "1", Range{0.0, 1.0, 1.0}, {}});
            result.free_dimmers.push_back(known.device.id);
        }
        break;
    case plan::ControlKind::thermostat:
        if (!given.setpoint_c) { // regulates nothing that we know of
            assume(notes, {pointer_to(housed, known, "control/setpoint_c"), "degC", std::nullopt, {}});
            break;
        }
        control.kind = climate::ControlKind::thermostat;
        control.setpoint_c = *given.setpoint_c;
        if (given.probe) {
            control.probe = climate::Point{given.probe->x_m, given.probe->y_m, given.probe->z_m};
        } else {
            assume(notes, {pointer_to(housed, known, "control/probe"), "m", std::nullopt, {}});
        }
        break;
    }
    return control;
}

std::optional<NotComputable> add_lamp(const KnownDevice& known, const Housed& housed, Notes& notes, ClimateBox& result)
{
    const catalog::DeviceTraits* traits = known.traits;
    if (traits == nullptr || !traits->radiant_share || !traits->convective_share) {
        return NotComputable{"material-incomplete", known.device.id};
    }
    const auto beam = given_or(notes, known.device.beam_deg, pointer_to(housed, known, "beam_deg"), "deg",
                               traits->beam_deg ? std::optional(traits->beam_deg->range()) : std::nullopt,
                               traits->beam_deg ? traits->beam_deg->source : Source{});
    if (!beam) {
        return NotComputable{"material-incomplete", known.device.id};
    }
    climate::Lamp lamp;
    lamp.id = known.device.id;
    lamp.at = {known.device.x_m, known.device.y_m, known.z_m};
    lamp.power_w = *known.power_w;
    lamp.radiant_share = traits->radiant_share->range();
    lamp.convective_share = traits->convective_share->range();
    lamp.beam_deg = *beam;
    lamp.length_m = known.device.length_m.value_or(0.0);
    lamp.above_top = known.above_top;
    lamp.dome_m = known.device.dome_diameter_m.value_or(0.0);
    lamp.at_night = !known.timed;
    lamp.thermal =
        known.device.kind == plan::DeviceKind::ceramic_heater || known.device.kind == plan::DeviceKind::radiant_panel;
    lamp.control = control_of(known, housed, notes, result);
    result.box.lamps.push_back(lamp);
    return std::nullopt;
}

climate::MatPlace mat_place(plan::Place place)
{
    switch (place) {
    case plan::Place::in_bed:
        return climate::MatPlace::in_bed;
    case plan::Place::back_wall:
        return climate::MatPlace::back_wall;
    case plan::Place::front_wall:
        return climate::MatPlace::front_wall;
    case plan::Place::left_wall:
        return climate::MatPlace::left_wall;
    case plan::Place::right_wall:
        return climate::MatPlace::right_wall;
    case plan::Place::overhead:
    case plan::Place::under_base:
        break;
    }
    return climate::MatPlace::under_base;
}

// A mat whose sides are not stated is taken as a square of the usual flux.
std::optional<double> mat_side(const KnownDevice& known, std::optional<double> given_m, std::string pointer,
                               Notes& notes)
{
    if (given_m) {
        return given_m;
    }
    const catalog::DeviceTraits* traits = known.traits;
    if (traits == nullptr || !traits->flux_w_m2) {
        return std::nullopt;
    }
    const catalog::Spread& flux = *traits->flux_w_m2;
    const double power_w = known.power_w->likely;
    const Range side{std::sqrt(power_w / flux.high), std::sqrt(power_w / flux.likely), std::sqrt(power_w / flux.low)};
    assume(notes, {std::move(pointer), "m", side, flux.source});
    return side.likely;
}

std::optional<NotComputable> add_mat(const Context& context, const KnownDevice& known, const Housed& housed,
                                     Notes& notes, ClimateBox& result)
{
    const plan::Device& device = known.device;
    const auto length_m = mat_side(known, device.length_m, pointer_to(housed, known, "length_m"), notes);
    const auto width_m = mat_side(known, device.width_m, pointer_to(housed, known, "width_m"), notes);
    if (!length_m || !width_m) {
        return NotComputable{"material-incomplete", device.id};
    }
    climate::Mat mat;
    mat.id = device.id;
    mat.place = mat_place(known.place);
    mat.area = {device.x_m, device.y_m, *length_m, *width_m};
    const bool on_side = known.place == plan::Place::left_wall || known.place == plan::Place::right_wall;
    const bool on_wall = on_side || known.place == plan::Place::back_wall || known.place == plan::Place::front_wall;
    if (on_wall) { // along the wall, and up it
        if (!device.z_m) {
            assume(notes, {pointer_to(housed, known, "z_m"), "m", exactly(0.0), {}});
        }
        mat.area = {on_side ? device.y_m : device.x_m, device.z_m.value_or(0.0), *length_m, *width_m};
    }
    mat.power_w = *known.power_w;
    mat.at_night = !known.timed;
    mat.control = control_of(known, housed, notes, result);
    if (mat.place == climate::MatPlace::under_base) {
        const auto gap = given_or_assumed(notes, context.catalog, device.air_gap_m,
                                          pointer_to(housed, known, "air_gap_m"), "device.air_gap_m");
        if (!gap) {
            return NotComputable{"assumption-missing", "device.air_gap_m"};
        }
        mat.air_gap_m = device.air_gap_m ? gap->likely : gap->low; // the smaller gap sheds less heat
    }
    result.box.mats.push_back(mat);
    return std::nullopt;
}

} // namespace

std::optional<NotComputable> fill_equipment(const Context& context, const Housed& housed, Notes& notes,
                                            ClimateBox& result)
{
    for (const KnownDevice& known : equipment_of(context, housed, notes)) {
        if (known.device.kind == plan::DeviceKind::mister || known.device.kind == plan::DeviceKind::fan) {
            continue; // their water is in moisture, their few watts are not heat to plan with
        }
        if (!known.power_w) {
            return NotComputable{"power-not-known", known.device.id};
        }
        auto missing = known.device.kind == plan::DeviceKind::heat_mat ? add_mat(context, known, housed, notes, result)
                                                                       : add_lamp(known, housed, notes, result);
        if (missing) {
            return missing;
        }
        if (known.device.kind == plan::DeviceKind::heat_mat || is_overhead_heat(known.device.kind)) {
            const power::ControlledLoad load = controlled_load(known);
            const auto takes = [&](power::Means means) {
                return known.traits != nullptr && power::advise(load, means).suits != power::Suits::no;
            };
            result.heaters.push_back({.id = known.device.id,
                                      .kind = known.device.kind,
                                      .takes_dimmer = takes(power::Means::dimmer),
                                      .takes_thermostat = takes(power::Means::thermostat_of_unknown_kind),
                                      .shines = load.emits_light});
        }
        result.clearance_m = std::max(result.clearance_m, clearance_of(known).value_or(Clearance{}).needed_m);
    }
    return std::nullopt;
}

} // namespace loam::assess
