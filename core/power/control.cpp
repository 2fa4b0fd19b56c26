#include "core/power/control.hpp"

#include <cmath>
#include <numbers>

namespace loam::power {

namespace {

constexpr double pi = std::numbers::pi;

bool cuts_phase(Means means)
{
    return means == Means::dimmer || means == Means::dimming_thermostat;
}

bool switches(Means means)
{
    return means == Means::on_off_thermostat || means == Means::pulse_thermostat;
}

} // namespace

ControlAdvice advise(const ControlledLoad& load, Means means)
{
    if (means == Means::none) {
        return {};
    }
    if (load.mercury_vapour) {
        return {Suits::no, ControlReason::mercury_vapour_never};
    }
    if (cuts_phase(means) && load.load != LoadKind::resistive) {
        return {Suits::no, ControlReason::not_resistive};
    }
    if (cuts_phase(means) && !load.dimmable) {
        return {Suits::no, ControlReason::not_dimmable};
    }
    if (switches(means) && load.emits_light) {
        return {Suits::no, ControlReason::light_would_flicker};
    }
    if (means == Means::thermostat_of_unknown_kind && load.emits_light) {
        const bool can_dim = load.load == LoadKind::resistive && load.dimmable;
        return can_dim ? ControlAdvice{Suits::depends, ControlReason::needs_dimming_thermostat}
                       : ControlAdvice{Suits::no, ControlReason::light_would_flicker};
    }
    return {};
}

std::optional<double> phase_cut_power_share(double firing_angle_rad)
{
    if (!(firing_angle_rad >= 0.0) || firing_angle_rad > pi) {
        return std::nullopt;
    }
    return (pi - firing_angle_rad + 0.5 * std::sin(2.0 * firing_angle_rad)) / pi;
}

std::optional<double> firing_angle_rad(double power_share)
{
    if (!(power_share >= 0.0) || power_share > 1.0) {
        return std::nullopt;
    }
    double more_power = 0.0; // angles
    double less_power = pi;
    while (less_power - more_power > 1e-12) {
        const double middle = (more_power + less_power) / 2.0;
        (*phase_cut_power_share(middle) > power_share ? more_power : less_power) = middle;
    }
    return (more_power + less_power) / 2.0;
}

} // namespace loam::power
