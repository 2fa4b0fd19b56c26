#include "core/assess/warm_side.hpp"

#include "core/assess/context.hpp"

namespace loam::assess {

namespace {

double centre_x(const plan::Device& device, const plan::Shell& shell)
{
    const auto place = device.place.value_or(plan::Place::overhead);
    if (place == plan::Place::left_wall) {
        return 0.0;
    }
    if (place == plan::Place::right_wall) {
        return shell.length_m;
    }
    // A lamp is placed by its centre, a mat by its corner.
    return device.kind == plan::DeviceKind::heat_mat ? device.x_m + device.length_m.value_or(0.0) / 2.0 : device.x_m;
}

} // namespace

std::optional<double> warm_centre_m(const plan::Enclosure& enclosure)
{
    double weight = 0.0;
    double moment = 0.0;
    for (const plan::Device& device : enclosure.equipment) {
        if (!is_overhead_heat(device.kind) && device.kind != plan::DeviceKind::heat_mat) {
            continue;
        }
        const double power = device.power_w.value_or(1.0);
        weight += power;
        moment += power * centre_x(device, enclosure.shell);
    }
    return weight > 0.0 ? std::optional(moment / weight) : std::nullopt;
}

} // namespace loam::assess
