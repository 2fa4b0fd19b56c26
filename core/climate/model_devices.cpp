// What lamps and mats may draw, and where it is released.
#include "core/climate/model.hpp"
#include "core/climate/optics.hpp"
#include "core/climate/probe.hpp"

namespace loam::climate {

namespace {

void set_release(Device& device, const std::vector<double>& released)
{
    device.release.clear();
    device.released = 0.0;
    for (std::size_t i = 0; i < released.size(); ++i)
        if (released[i] != 0.0) {
            device.release.emplace_back(i, released[i]);
            device.released += released[i];
        }
}

std::vector<double> mat_release(const Model& model, const Box& box, const Scene& scene, std::size_t m)
{
    const Geometry& g = scene.geometry;
    std::vector<double> into(model.layout.size(), 0.0);
    const Mat& mat = box.mats[m];
    double area_m2 = 0.0;
    if (on_wall(mat.place)) {
        for (std::size_t f = 0; f < g.faces.size(); ++f)
            if (g.faces[f].mat == m) {
                into[model.layout.face_outside(*model.faces[f].place)] += g.faces[f].area_m2;
                area_m2 += g.faces[f].area_m2;
            }
    } else {
        const std::size_t k = g.place_of(mat.place == MatPlace::in_bed ? BrickKind::bed_face : BrickKind::mat_face);
        for (std::size_t c = 0; c < g.columns(); ++c) {
            into[c * g.nz() + k] += g.mat_m2[m][c];
            area_m2 += g.mat_m2[m][c];
        }
    }
    for (double& share : into)
        share = area_m2 > 0.0 ? share / area_m2 : 0.0;
    return into;
}

struct Switched {
    bool on = true;
    bool stuck = false;
};

void set_power(Device& device, double power_w, const Control& control, Switched now, std::size_t& powers)
{
    device.installed_w = now.on ? power_w : 0.0;
    device.fixed_w = device.installed_w;
    device.regulated.reset();
    if (control.off && !now.stuck)
        device.installed_w = device.fixed_w = 0.0;
    if (!now.on || now.stuck || control.off)
        return;
    if (control.kind == ControlKind::dimmer)
        device.fixed_w *= control.level;
    if (control.kind == ControlKind::thermostat && control.probe) {
        device.fixed_w = 0.0;
        device.setpoint_c = control.setpoint_c;
        device.regulated = powers++;
    }
}

} // namespace

bool set_devices(Model& model, const Box& box, const Case& now, const Scene& scene)
{
    model.devices.assign(box.lamps.size() + box.mats.size(), Device{});
    std::size_t powers = 0;
    for (std::size_t l = 0; l < box.lamps.size(); ++l) {
        const Lamp& lamp = box.lamps[l];
        const bool on = (now.day || lamp.at_night) && now.fault != Fault::lamps_out && now.fault != Fault::power_cut;
        model.devices[l].id = lamp.id;
        set_power(model.devices[l], lamp.power_w.likely, lamp.control, {.on = on}, powers);
    }
    for (std::size_t m = 0; m < box.mats.size(); ++m) {
        const Mat& mat = box.mats[m];
        Device& device = model.devices[box.lamps.size() + m];
        const bool stuck = now.fault == Fault::mats_stuck_on;
        const bool on = (now.day || mat.at_night || stuck) && now.fault != Fault::power_cut;
        device.id = mat.id;
        set_power(device, mat.power_w.likely, mat.control, {.on = on, .stuck = stuck}, powers);
    }
    model.layout.powers = powers;
    for (std::size_t l = 0; l < box.lamps.size(); ++l)
        set_release(model.devices[l], lamp_release(model, box, scene, l));
    for (std::size_t m = 0; m < box.mats.size(); ++m)
        set_release(model.devices[box.lamps.size() + m], mat_release(model, box, scene, m));
    for (std::size_t l = 0; l < box.lamps.size(); ++l)
        if (model.devices[l].regulated)
            model.devices[l].probe = probe_reading(model, scene.geometry, *box.lamps[l].control.probe);
    for (std::size_t m = 0; m < box.mats.size(); ++m)
        if (model.devices[box.lamps.size() + m].regulated)
            model.devices[box.lamps.size() + m].probe =
                probe_reading(model, scene.geometry, *box.mats[m].control.probe);
    return true;
}

} // namespace loam::climate
