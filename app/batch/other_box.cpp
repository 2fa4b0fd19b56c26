#include "app/batch/other_box.hpp"

#include <algorithm>

namespace loam::batch {

namespace {

// A corner whose middle keeps its share, pushed inside where it fits.
double corner_m(double corner, double size, double factor, double box)
{
    const double moved = (corner + size / 2.0) * factor - size / 2.0;
    return size <= box ? std::clamp(moved, 0.0, box - size) : moved;
}

bool has_corner(const plan::Device& device)
{
    const plan::Place usual =
        device.kind == plan::DeviceKind::heat_mat ? plan::Place::under_base : plan::Place::overhead;
    return device.place.value_or(usual) != plan::Place::overhead;
}

void move_device(plan::Device& device, double along, double across, const plan::Shell& shell)
{
    if (!has_corner(device)) {
        device.x_m *= along;
        device.y_m *= across;
    } else {
        const bool on_side = device.place == plan::Place::left_wall || device.place == plan::Place::right_wall;
        const bool flat = device.place == plan::Place::under_base || device.place == plan::Place::in_bed;
        const double deep = on_side ? device.length_m.value_or(0.0) : flat ? device.width_m.value_or(0.0) : 0.0;
        device.x_m = corner_m(device.x_m, on_side ? 0.0 : device.length_m.value_or(0.0), along, shell.length_m);
        device.y_m = corner_m(device.y_m, deep, across, shell.width_m);
    }
    if (device.control.probe) {
        device.control.probe->x_m *= along;
        device.control.probe->y_m *= across;
    }
}

} // namespace

void move_into_box(plan::Enclosure& enclosure, double from_length_m, double from_width_m)
{
    const plan::Shell& shell = enclosure.shell;
    const double along = shell.length_m / from_length_m;
    const double across = shell.width_m / from_width_m;
    if (along == 1.0 && across == 1.0) {
        return;
    }
    for (plan::Cover& cover : enclosure.shell.top.covers) {
        cover.x_m *= along;
        cover.length_m *= along;
        cover.y_m *= across;
        cover.width_m *= across;
    }
    for (plan::Fitting& fitting : enclosure.fittings) {
        fitting.x_m = corner_m(fitting.x_m, fitting.length_m, along, shell.length_m);
        fitting.y_m = corner_m(fitting.y_m, fitting.width_m, across, shell.width_m);
    }
    for (plan::Device& device : enclosure.equipment) {
        move_device(device, along, across, shell);
    }
    enclosure.readings.clear();
}

} // namespace loam::batch
