// What a device of the plan is once the catalog has had its say: watts, place, supply, control.
#pragma once

#include <optional>
#include <string>

#include "core/assess/context.hpp"
#include "core/power/control.hpp"

namespace loam::assess {

struct KnownDevice {
    const plan::Device& device;
    const catalog::DeviceTraits* traits = nullptr; // nullptr: the catalog has no such kind
    std::size_t index = 0;
    std::optional<Range> power_w; // at full power
    double z_m = 0.0;             // of an overhead device's face
    bool above_top = false;
    bool timed = false;
    plan::Place place = plan::Place::overhead;
};

std::vector<KnownDevice> equipment_of(const Context& context, const Housed& housed, Notes& notes);

// As a control sees it; of an unknown kind an electronic load that must not be dimmed.
power::ControlledLoad controlled_load(const KnownDevice& known);

std::string pointer_to(const Housed& housed, const KnownDevice& device, std::string_view key);

} // namespace loam::assess
