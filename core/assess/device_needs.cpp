#include "core/assess/equipment.hpp"
#include "core/assess/needs.hpp"
#include "core/plan/names.hpp"

namespace loam::assess {

namespace {

std::string kind_of(plan::DeviceKind kind)
{
    const std::string name(plan::name_of(kind));
    switch (kind) {
    case plan::DeviceKind::ceramic_heater:
    case plan::DeviceKind::radiant_panel:
    case plan::DeviceKind::heat_mat:
        return "heater." + name;
    case plan::DeviceKind::mister:
        return "water.mister";
    case plan::DeviceKind::fan:
        return "device.fan";
    case plan::DeviceKind::flood_lamp:
    case plan::DeviceKind::uv_tube:
    case plan::DeviceKind::uv_compact:
    case plan::DeviceKind::mercury_vapour_lamp:
    case plan::DeviceKind::metal_halide_lamp:
    case plan::DeviceKind::led_strip:
        return "lamp." + name;
    }
    return "lamp." + name;
}

std::vector<std::string> holders_of(plan::DeviceKind kind)
{
    switch (kind) {
    case plan::DeviceKind::flood_lamp:
    case plan::DeviceKind::uv_compact:
    case plan::DeviceKind::mercury_vapour_lamp:
    case plan::DeviceKind::ceramic_heater:
        return {"fixture.lamp-holder"};
    case plan::DeviceKind::uv_tube:
        return {"fixture.uv-fixture"};
    case plan::DeviceKind::metal_halide_lamp:
        return {"fixture.lamp-holder", "fixture.ballast"};
    case plan::DeviceKind::led_strip:
    case plan::DeviceKind::radiant_panel:
    case plan::DeviceKind::heat_mat:
    case plan::DeviceKind::mister:
    case plan::DeviceKind::fan:
        return {};
    }
    return {};
}

// What an animal is cold without the same evening.
bool deserves_spare(plan::DeviceKind kind)
{
    return kind == plan::DeviceKind::flood_lamp || kind == plan::DeviceKind::mercury_vapour_lamp;
}

// One that pulses or dims, as it is said or as what shines needs.
bool dims(const plan::Control& control, bool shines)
{
    return control.method ? *control.method != plan::ThermostatMethod::on_off : shines;
}

void add_control(std::vector<buying::Need>& needs, const Housed& housed, const KnownDevice& known)
{
    const plan::Device& device = known.device;
    const bool shines = known.traits != nullptr && known.traits->emits_light;
    std::string kind;
    switch (device.control.kind) {
    case plan::ControlKind::none:
        return;
    case plan::ControlKind::dimmer:
        kind = "control.dimmer";
        break;
    case plan::ControlKind::thermostat:
        kind = dims(device.control, shines) ? "control.thermostat-dimming" : "control.thermostat-on-off";
        break;
    }
    needs.push_back(need(kind, 1.0, "each", "need.control", housed.at(device.id), device.power_w));
}

} // namespace

std::vector<buying::Need> device_needs(const Context& context, const Housed& housed)
{
    std::vector<buying::Need> needs;
    Notes aside; // assumptions on equipment are written down where they are used
    for (const KnownDevice& known : equipment_of(context, housed, aside)) {
        const plan::Device& device = known.device;
        const bool by_watts = device.kind != plan::DeviceKind::mister && device.kind != plan::DeviceKind::fan;
        const auto fits = by_watts ? device.power_w : std::nullopt; // unknown watts are not guessed
        needs.push_back(need(kind_of(device.kind), 1.0, "each", "need.device", housed.at(device.id), fits));
        if (deserves_spare(device.kind)) {
            needs.push_back(need(kind_of(device.kind), 1.0, "each", "need.spare-lamp", housed.at(device.id), fits));
        }
        for (const std::string& holder : holders_of(device.kind)) {
            needs.push_back(need(holder, 1.0, "each", "need.holder", housed.at(device.id), fits));
        }
        const bool within = known.z_m > 0.0 && !known.above_top;
        if (within && known.traits != nullptr && known.traits->burns_at_touch) {
            needs.push_back(need("fixture.lamp-guard", 1.0, "each", "need.guard", housed.at(device.id)));
        }
        add_control(needs, housed, known);
    }
    return needs;
}

} // namespace loam::assess
