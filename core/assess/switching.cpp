#include "core/assess/switching.hpp"

#include <algorithm>
#include <array>

#include "core/assess/equipment.hpp"

namespace loam::assess {

namespace {

// What shines is taken to be dimmed unless the plan says that it switches; controls.cpp says that it should be.
bool may_switch(const KnownDevice& known)
{
    const plan::Control& control = known.device.control;
    const bool shines = known.traits != nullptr && known.traits->emits_light;
    return control.kind == plan::ControlKind::thermostat && control.setpoint_c && control.probe &&
           (control.method ? *control.method == plan::ThermostatMethod::on_off : !shines);
}

bool works(const SolvedCase& solved, const std::string& device)
{
    constexpr double hardly = 0.02;
    const auto& states = solved.result.devices;
    const auto found =
        std::find_if(states.begin(), states.end(), [&](const auto& state) { return state.id == device; });
    return solved.result.converged && found != states.end() && found->duty.likely > hardly &&
           found->duty.likely < 1.0 - hardly;
}

struct Ordinary {
    const char* id;
    const char* season;
};
constexpr std::array<Ordinary, 4> ordinary{
    {{"winter-day", "winter"}, {"winter-night", "winter"}, {"summer-day", "summer"}, {"summer-night", "summer"}}};

} // namespace

std::vector<SwitchingPlan> plan_switching(const Context& context, const Housed& housed, Notes& notes,
                                          const std::vector<SolvedCase>& solved)
{
    std::vector<SwitchingPlan> plans;
    Notes aside; // what is assumed of equipment is written down where the boxes are made
    for (const KnownDevice& known : equipment_of(context, housed, aside)) {
        if (!may_switch(known)) {
            continue;
        }
        const plan::Control& control = known.device.control;
        const std::string pointer = pointer_to(housed, known, "control/hysteresis_k");
        const auto hysteresis =
            given_or_assumed(notes, context.catalog, control.hysteresis_k, pointer, "control.hysteresis_k");
        for (const Ordinary& each : ordinary) {
            const auto found = std::find_if(solved.begin(), solved.end(),
                                            [&](const SolvedCase& one) { return one.room.id == each.id; });
            if (hysteresis && found != solved.end() && works(*found, known.device.id)) {
                const bool assumed = !control.hysteresis_k || !control.method;
                plans.push_back(
                    {each.season, &*found, {known.device.id, found->room.day, hysteresis->likely, assumed, {}}});
            }
        }
    }
    return plans;
}

bool follow(SwitchingPlan& plan, climate::Workspace& workspace, const std::stop_token& stop)
{
    const auto cycle = climate::follow_switching(plan.from->box, plan.from->room, plan.result.device,
                                                 plan.result.hysteresis_k, workspace, stop);
    if (!cycle || !cycle->switches) {
        return false;
    }
    plan.result.cycle = *cycle;
    return true;
}

} // namespace loam::assess
