#include "core/suggest/outfit.hpp"

#include <algorithm>
#include <cmath>

#include "core/assess/what_if.hpp"
#include "core/plan/file.hpp"

namespace loam::suggest {

namespace {

// Where the basking spot is, as shares of length and width: near the end of the warm side, so that the cool end stays
// far, and behind the panel that warms the ground about it.
constexpr double spot_x = 0.21;
constexpr double spot_y = 0.6;
constexpr double panel_x = 0.29;
constexpr double panel_y = 0.31;
// A lamp's face over the mesh: high and wide, so that the spot is not much hotter than the ground about it.
constexpr double over_mesh_m = 0.14;
constexpr double wide_beam_deg = 90.0;
// What hangs inside, below the top.
constexpr double below_top_m = 0.03;

bool only_heats(plan::DeviceKind kind)
{
    using enum plan::DeviceKind;
    return kind == flood_lamp || kind == ceramic_heater || kind == radiant_panel || kind == heat_mat;
}

std::optional<std::string> strip_of(const plan::Plan& plan, const plan::Enclosure& enclosure)
{
    for (const plan::Device& device : enclosure.equipment) {
        if (device.strip) {
            return device.strip;
        }
    }
    return plan.site.strips.empty() ? std::nullopt : std::optional(plan.site.strips.front().id);
}

// Under mesh or nothing a lamp shines from outside; under a closed top everything has to hang inside.
bool shines_through(const plan::Shell& shell)
{
    return shell.top.kind == plan::TopKind::mesh || shell.top.kind == plan::TopKind::open;
}

// What is hot keeps so far from walls that can scorch: the usual clearance and a finger's breadth.
constexpr double clear_m = 0.31;

// As far from both walls, where the box is wide enough; else in the middle.
double clear_of_walls(double wanted_m, double side_m)
{
    return side_m > 2.0 * clear_m ? std::clamp(wanted_m, clear_m, side_m - clear_m) : 0.5 * side_m;
}

// Over a narrow box it hangs higher, until the walls' upper edges are far enough.
double over_mesh_for(const plan::Shell& shell, const plan::Device& device)
{
    const double beside_m = std::min({device.x_m, shell.length_m - device.x_m, device.y_m, shell.width_m - device.y_m});
    return std::max(over_mesh_m, std::sqrt(std::max(0.0, clear_m * clear_m - beside_m * beside_m)));
}

void hang_hot(const plan::Shell& shell, plan::Device& device)
{
    device.x_m = clear_of_walls(device.x_m, shell.length_m);
    device.y_m = clear_of_walls(device.y_m, shell.width_m);
    constexpr double inside_m = 0.1; // below a closed top, behind a guard
    const bool outside = shines_through(shell);
    device.height_above_base_m = shell.height_m + (outside ? over_mesh_for(shell, device) : -inside_m);
    device.guarded = outside ? std::nullopt : std::optional(true);
}

plan::Device lamp_for(const plan::Enclosure& enclosure, const Lamp& lamp)
{
    const plan::Shell& shell = enclosure.shell;
    plan::Device device;
    device.kind = plan::DeviceKind::flood_lamp;
    device.power_w = lamp.power_w;
    device.x_m = spot_x * shell.length_m;
    device.y_m = spot_y * shell.width_m;
    device.beam_deg = wide_beam_deg;
    device.supply = plan::Supply::timed;
    hang_hot(shell, device);
    if (lamp.dimmed) {
        device.control.kind = plan::ControlKind::dimmer;
    }
    return device;
}

// What of the wall above the bed is left for a mat.
constexpr double beside_mat_m = 0.02;

// On the wall of the warm side, above the bed: below a bed an animal that digs would come upon it. Always on, since its
// thermostat switches it (on a timer it would be cold when the lamps go out).
plan::Device mat_for(const plan::Enclosure& enclosure, const Heater& heater)
{
    const plan::Shell& shell = enclosure.shell;
    constexpr double usual_flux_w_m2 = 230.0; // of mats on walls; common practice, no source
    const double wall_m = shell.height_m - bed_depth_m(enclosure) - 2.0 * beside_mat_m;
    plan::Device device;
    device.kind = plan::DeviceKind::heat_mat;
    device.power_w = heater.power_w;
    device.place = plan::Place::left_wall;
    device.supply = plan::Supply::always_on;
    const double area_m2 = heater.power_w / usual_flux_w_m2;
    const double along_m = std::min(std::sqrt(1.5 * area_m2), shell.width_m - 2.0 * beside_mat_m);
    const double up_m = std::clamp(area_m2 / along_m, beside_mat_m, std::max(beside_mat_m, wall_m));
    constexpr double step_m = 0.005;
    device.length_m = step_m * std::round(along_m / step_m);
    device.width_m = step_m * std::max(1.0, std::floor(up_m / step_m));
    device.y_m = 0.5 * (shell.width_m - *device.length_m);
    device.z_m = bed_depth_m(enclosure) + beside_mat_m;
    return device;
}

// By day over the warm side; by night over the middle, since the whole box is to stay warm.
plan::Device overhead_for(const plan::Shell& shell, const Heater& heater, plan::Supply supply)
{
    plan::Device device;
    device.kind = heater.kind;
    device.power_w = heater.power_w;
    device.supply = supply;
    device.x_m = (supply == plan::Supply::timed ? panel_x : 0.6) * shell.length_m;
    device.y_m = panel_y * shell.width_m;
    if (heater.kind == plan::DeviceKind::radiant_panel) {
        device.length_m = std::min(0.6, 0.43 * shell.length_m);
        device.width_m = std::min(0.25, 0.4 * shell.width_m);
        constexpr double off_wall_m = 0.11;
        device.x_m = std::max(device.x_m, 0.5 * *device.length_m + off_wall_m);
        device.y_m = std::max(device.y_m, 0.5 * *device.width_m + off_wall_m);
        device.height_above_base_m = shell.height_m - below_top_m;
        device.guarded = true;
        device.clearance_m = 0.1; // as panels made for it state
    } else {
        hang_hot(shell, device);
    }
    return device;
}

plan::Device heater_for(const plan::Enclosure& enclosure, const Heater& heater, plan::Supply supply)
{
    const plan::Shell& shell = enclosure.shell;
    plan::Device device =
        heater.kind == plan::DeviceKind::heat_mat ? mat_for(enclosure, heater) : overhead_for(shell, heater, supply);
    if (heater.setpoint_c) { // read beside the spot, at the front
        const plan::Probe probe{spot_x * shell.length_m, 0.2 * shell.width_m, bed_depth_m(enclosure), {}};
        device.control.kind = plan::ControlKind::thermostat;
        device.control.setpoint_c = heater.setpoint_c;
        device.control.probe = probe;
        device.control.method = plan::ThermostatMethod::pulse;
    }
    return device;
}

} // namespace

double bed_depth_m(const plan::Enclosure& enclosure)
{
    double depth_m = 0.0;
    for (const plan::SubstrateLayer& layer : enclosure.substrate) {
        depth_m += layer.depth_m;
    }
    return depth_m;
}

DeviceIds device_ids(const plan::Plan& plan)
{
    plan::Plan growing = plan;
    DeviceIds ids;
    for (std::string* id : {&ids.lamp, &ids.day, &ids.night}) {
        *id = plan::fresh_id(growing, "d");
        growing.enclosures.front().equipment.emplace_back().id = *id;
    }
    return ids;
}

void resize(plan::Enclosure& enclosure, double length_m, double width_m, double height_m)
{
    plan::Shell& shell = enclosure.shell;
    const double along = length_m / shell.length_m;
    const double across = width_m / shell.width_m;
    for (plan::Fitting& fitting : enclosure.fittings) {
        fitting.x_m = std::clamp(fitting.x_m * along, 0.0, std::max(0.0, length_m - fitting.length_m));
        fitting.y_m = std::clamp(fitting.y_m * across, 0.0, std::max(0.0, width_m - fitting.width_m));
    }
    for (plan::Device& device : enclosure.equipment) {
        device.x_m *= along;
        device.y_m *= across;
        if (device.height_above_base_m && *device.height_above_base_m > 0.5 * shell.height_m) {
            *device.height_above_base_m += height_m - shell.height_m;
        }
        if (device.control.probe) {
            device.control.probe->x_m *= along;
            device.control.probe->y_m *= across;
        }
    }
    for (plan::Cover& cover : shell.top.covers) {
        cover.x_m *= along;
        cover.length_m *= along;
        cover.y_m *= across;
        cover.width_m *= across;
    }
    shell.length_m = length_m;
    shell.width_m = width_m;
    shell.height_m = height_m;
    enclosure.readings.clear();
}

std::optional<plan::Plan> dressed(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place,
                                  const Outfit& outfit)
{
    const DeviceIds ids = device_ids(plan);
    plan::Plan changed = plan;
    plan::Enclosure& enclosure = changed.enclosures.at(place);
    const auto strip = strip_of(plan, enclosure);
    std::erase_if(enclosure.equipment, [](const plan::Device& device) { return only_heats(device.kind); });
    enclosure.readings.clear();
    const auto add = [&](plan::Device device, const std::string& id) {
        device.id = id;
        device.strip = strip;
        enclosure.equipment.push_back(std::move(device));
    };
    if (outfit.lamp) {
        add(lamp_for(enclosure, *outfit.lamp), ids.lamp);
    }
    if (outfit.day) {
        add(heater_for(enclosure, *outfit.day, plan::Supply::timed), ids.day);
    }
    if (outfit.night) {
        add(heater_for(enclosure, *outfit.night, plan::Supply::always_on), ids.night);
    }
    return assess::with_trial(changed, catalog, enclosure.id,
                              {.covered_share = outfit.covered_share, .misting_l_per_day = outfit.misting_l_per_day});
}

} // namespace loam::suggest
