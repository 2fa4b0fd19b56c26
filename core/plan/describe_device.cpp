#include "core/plan/describe.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/names.hpp"
#include "core/plan/problem_codes.hpp"

namespace loam::plan {

namespace {

// On a wall one of the two coordinates means nothing and may be left out.
bool needs_x(const Device& device)
{
    return device.place != Place::left_wall && device.place != Place::right_wall;
}
bool needs_y(const Device& device)
{
    return device.place != Place::back_wall && device.place != Place::front_wall;
}

void describe_coordinate(json::Archive& archive, json::Key key, double& value_m, bool needed, const Device& device)
{
    std::optional<double> held;
    if (needed || value_m != 0.0) {
        held = value_m;
    }
    archive.number(key, held, limits::position_m);
    if (archive.mode() != json::Archive::Mode::read) {
        return;
    }
    if (needed && !held) {
        archive.refuse(key.name, problem::needed_here, {std::string(key.name), std::string(name_of(device.kind))});
    }
    value_m = held.value_or(0.0);
}

void describe_place(json::Archive& archive, Device& device)
{
    archive.choice({"place", "Where it sits; absent: overhead. A heat mat must say."}, device.place, place_names);
    describe_coordinate(archive,
                        {"x_m", "Centre of a lamp or panel, left edge of a mat, in m. May be absent on a side wall."},
                        device.x_m, needs_x(device), device);
    describe_coordinate(
        archive, {"y_m", "Centre of a lamp or panel, front edge of a mat, in m. May be absent on the back or front."},
        device.y_m, needs_y(device), device);
    archive.number({"z_m", "Lower edge of a mat on a wall above the base pane, in m."}, device.z_m, limits::position_m);
    archive.number({"height_above_base_m", "Height of a lamp's or panel's face above the base pane, in m."},
                   device.height_above_base_m, {.min = 0.0, .max = 10.0});
    archive.number({"length_m", "Extent of a mat, panel or tube along x (on a side wall: along y), in m."},
                   device.length_m, limits::length_m);
    archive.number({"width_m", "Extent of a mat or panel along y (on a wall: along z), in m."}, device.width_m,
                   limits::length_m);
}

void describe_maker_data(json::Archive& archive, Device& device)
{
    archive.number({"beam_deg", "Full width of the beam at half its greatest intensity, in degrees."}, device.beam_deg,
                   {.min = 0.0, .max = 180.0, .exclusive_min = true});
    archive.number({"clearance_m", "Distance from what can burn that its maker asks for, in m."}, device.clearance_m,
                   {.min = 0.0, .max = 5.0});
    archive.number({"dome_diameter_m", "Diameter of a lamp's dome where its rim lies on the mesh, in m."},
                   device.dome_diameter_m, {.min = 0.0, .max = 1.0, .exclusive_min = true});
    archive.flag({"guarded", "Whether a guard keeps animals from touching it."}, device.guarded);
    archive.number({"holder_rating_w", "The most that its lamp holder may take, in W."}, device.holder_rating_w,
                   {.min = 0.0, .max = 4000.0, .exclusive_min = true});
    archive.number({"air_gap_m", "Air gap below a mat under the base, in m."}, device.air_gap_m,
                   {.min = 0.0, .max = 1.0});
    archive.text({"below", "Material below that mat or gap."}, device.below, limits::material);
    archive.number({"age_hours", "Hours burnt so far."}, device.age_hours, {.min = 0.0, .max = 200000.0});
    archive.number({"reference_open_fraction", "Free area of the mesh between lamp and meter when the table was taken, "
                                               "0 to 1; absent: none."},
                   device.reference_open_fraction, {.min = 0.0, .max = 1.0, .exclusive_min = true});
    archive.list(
        {"uvi_table", "UV index by distance, as the maker states or a meter read it; a single reading will do."},
        device.uvi_table, {.max_items = 100});
    archive.number({"uvi_age_hours", "Hours the lamp had burnt when these were read; absent: it was new."},
                   device.uvi_age_hours, {.min = 0.0, .max = 200000.0});
}

} // namespace

void describe(json::Archive& archive, Probe& probe)
{
    archive.number({"x_m", "Place along the length in m."}, probe.x_m, limits::position_m);
    archive.number({"y_m", "Place towards the back in m."}, probe.y_m, limits::position_m);
    archive.number({"z_m", "Place above the base pane in m; below zero under the pane."}, probe.z_m,
                   limits::position_m);
    archive.extras(probe.extras);
}

void describe(json::Archive& archive, Control& control)
{
    archive.choice({"kind", "How it is regulated."}, control.kind, control_kind_names);
    archive.number({"level", "Setting of a dimmer, 0 to 1."}, control.level, limits::fraction);
    archive.number({"setpoint_c", "Setting of a thermostat in degC."}, control.setpoint_c, {.min = 0.0, .max = 60.0});
    archive.object({"probe", "Where the thermostat's probe lies."}, control.probe);
    archive.choice({"method", "How a thermostat regulates: on-off, pulse (for heaters that give no light) or dimming."},
                   control.method, thermostat_method_names);
    archive.number({"rating_w", "The most that the dimmer or thermostat may feed, in W."}, control.rating_w,
                   {.min = 0.0, .max = 4000.0, .exclusive_min = true});
    archive.number({"hysteresis_k", "Of a thermostat that switches on and off: kelvin between the two."},
                   control.hysteresis_k, {.min = 0.0, .max = 20.0, .exclusive_min = true});
    archive.extras(control.extras);
}

void describe(json::Archive& archive, UvPoint& point)
{
    archive.number({"distance_m", "Distance from the lamp in m."}, point.distance_m,
                   {.min = 0.0, .max = 5.0, .exclusive_min = true});
    archive.number({"uvi", "UV index there."}, point.uvi, {.min = 0.0, .max = 200.0});
    archive.extras(point.extras);
}

void describe(json::Archive& archive, Device& device)
{
    archive.text(limits::id_key, device.id, limits::id);
    archive.choice({"kind", "What it is."}, device.kind, device_kind_names);
    archive.number({"power_w", "Rated electrical power in W."}, device.power_w,
                   {.min = 0.0, .max = 4000.0, .exclusive_min = true});
    describe_place(archive, device);
    describe_maker_data(archive, device);
    archive.choice({"supply", "Behind a timer or always on."}, device.supply, supply_names);
    archive.text({"strip", "The id of the strip that it is plugged into."}, device.strip, limits::id);
    archive.object({"control", "How it is regulated; always stated, so that a slip never leaves a mat unregulated."},
                   device.control);
    archive.extras(device.extras);
}

} // namespace loam::plan
