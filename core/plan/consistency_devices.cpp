#include "core/json/number_text.hpp"
#include "core/json/pointer.hpp"
#include "core/plan/consistency.hpp"
#include "core/plan/names.hpp"
#include "core/plan/problem_codes.hpp"

namespace loam::plan {

namespace {

bool is_wall(Place place)
{
    return place == Place::back_wall || place == Place::front_wall || place == Place::left_wall ||
           place == Place::right_wall;
}

} // namespace

void Consistency::need(bool there, std::string_view key, std::string_view why, const std::string& where)
{
    const std::string pointer = json::pointer_to(where, key);
    if (!there && is_sound(pointer)) {
        refuse(pointer, problem::needed_here, {std::string(key), std::string(why)});
    }
}

void Consistency::check_device(const Device& device, const std::string& where)
{
    check_control(device.control, where + "/control");
    check_uvi_table(device, where);
    if (device.kind == DeviceKind::heat_mat && is_sound(where + "/kind")) {
        check_mat(device, where);
    }
}

void Consistency::check_mat(const Device& mat, const std::string& where)
{
    const std::string_view kind = name_of(mat.kind);
    need(mat.place.has_value(), "place", kind, where);
    need(mat.length_m.has_value(), "length_m", kind, where);
    need(mat.width_m.has_value(), "width_m", kind, where);
    if (mat.place && is_wall(*mat.place)) {
        need(mat.z_m.has_value(), "z_m", name_of(*mat.place), where);
    }
}

void Consistency::check_control(const Control& control, const std::string& where)
{
    if (!is_sound(where + "/kind")) {
        return;
    }
    const std::string kind(control_kind_names[static_cast<std::size_t>(control.kind)]);
    const auto only_for = [&](bool there, ControlKind owner, std::string_view key) {
        if (there && control.kind != owner) {
            refuse(json::pointer_to(where, key), problem::not_for_control, {std::string(key), kind});
        }
    };
    only_for(control.level.has_value(), ControlKind::dimmer, "level");
    only_for(control.setpoint_c.has_value(), ControlKind::thermostat, "setpoint_c");
    only_for(control.probe.has_value(), ControlKind::thermostat, "probe");
    only_for(control.method.has_value(), ControlKind::thermostat, "method");
    if (control.rating_w && control.kind == ControlKind::none) {
        refuse(json::pointer_to(where, "rating_w"), problem::not_for_control, {"rating_w", kind});
    }
    only_for(control.hysteresis_k.has_value(), ControlKind::thermostat, "hysteresis_k");
    if (control.kind == ControlKind::thermostat) {
        need(control.setpoint_c.has_value(), "setpoint_c", kind, where);
    }
}

void Consistency::check_uvi_table(const Device& device, const std::string& where)
{
    const std::string table = where + "/uvi_table";
    if (!is_sound(table)) {
        return;
    }
    for (std::size_t i = 1; i < device.uvi_table.size(); ++i) {
        const double before_m = device.uvi_table[i - 1].distance_m;
        const double here_m = device.uvi_table[i].distance_m;
        if (here_m <= before_m) {
            refuse(json::pointer_to(table, i) + "/distance_m", problem::distances_fall,
                   {json::number_text(here_m), json::number_text(before_m)});
        }
    }
}

} // namespace loam::plan
