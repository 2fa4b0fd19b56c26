// How the thermostats of one enclosure switch.
#pragma once

#include <stop_token>
#include <string>
#include <vector>

#include "core/assess/climate_stage.hpp"

namespace loam::assess {

// One device in one solved case, whose box it takes.
struct SwitchingPlan {
    std::string season; // winter, summer
    const SolvedCase* from = nullptr;
    SwitchingResult result; // all but the cycle
};

// For every thermostat that switches or may, in the ordinary cases in which it is neither always on nor always off.
std::vector<SwitchingPlan> plan_switching(const Context& context, const Housed& housed, Notes& notes,
                                          const std::vector<SolvedCase>& solved);

// False where there is no cycle to tell.
bool follow(SwitchingPlan& plan, climate::Workspace& workspace, const std::stop_token& stop);

} // namespace loam::assess
