// Which control suits which load, and what a phase-cut dimmer does to a resistive one.
#pragma once

#include <optional>

namespace loam::power {

enum class LoadKind { resistive, ballast, electronic, motor };

struct ControlledLoad {
    LoadKind load = LoadKind::resistive;
    bool dimmable = false; // its maker says so
    bool emits_light = false;
    bool mercury_vapour = false;
    friend bool operator==(const ControlledLoad&, const ControlledLoad&) = default;
};

enum class Means { none, dimmer, on_off_thermostat, pulse_thermostat, dimming_thermostat, thermostat_of_unknown_kind };

enum class Suits { yes, no, depends };

enum class ControlReason {
    fine,
    mercury_vapour_never,    // it goes out and restrikes hot
    not_resistive,           // phase cut harms ballasts, electronics and motors
    not_dimmable,            // its maker does not allow it
    light_would_flicker,     // on/off and pulse control switch a lamp the animals see
    needs_dimming_thermostat // the thermostat's kind is not known, and only this kind suits
};

struct ControlAdvice {
    Suits suits = Suits::yes;
    ControlReason reason = ControlReason::fine;
    friend bool operator==(const ControlAdvice&, const ControlAdvice&) = default;
};

// What: whether a control suits a load.
// Method: no control suits all. Phase cut (a dimmer, a dimming thermostat) only for resistive loads that are dimmable.
//   A mercury-vapour lamp takes neither dimmer nor thermostat. On/off and pulse switching suits what gives no light.
// Range: all combinations. Source: common practice, no source; keepers' sheets agree (secondary).
ControlAdvice advise(const ControlledLoad& load, Means means);

// What: share of full power (0..1) in a fixed resistance at a firing angle (rad).
// Method: P/Pmax = (pi - a + sin(2a)/2) / pi; the rms voltage and the true power factor are its square root.
// Range: 0 <= a <= pi, otherwise nullopt; a hot filament's falling resistance makes real lamps fall slower.
// Source: closed form (integral of sin^2 from a to pi).
std::optional<double> phase_cut_power_share(double firing_angle_rad);

// What: firing angle (rad) for a share of full power. Method: bisection to 1e-12. Range: 0..1, otherwise nullopt.
std::optional<double> firing_angle_rad(double power_share);

} // namespace loam::power
