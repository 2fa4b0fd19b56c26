#include "tests/catch.hpp"

#include <cmath>
#include <numbers>

#include "core/power/control.hpp"

using namespace loam::power;

namespace {

constexpr ControlledLoad halogen = {LoadKind::resistive, true, true, false};
constexpr ControlledLoad ceramic = {LoadKind::resistive, true, false, false};
constexpr ControlledLoad tube = {LoadKind::ballast, false, true, false};
constexpr ControlledLoad mercury = {LoadKind::resistive, true, true, true};
constexpr ControlledLoad led = {LoadKind::electronic, true, true, false};

} // namespace

TEST_CASE("A phase-cut dimmer passes the worked shares of power")
{
    // Integral of sin^2 over the rest of the half wave (derived): 30, 60, 90, 120, 150 degrees.
    const double rows[][2] = {{30.0, 0.9712}, {60.0, 0.8045}, {90.0, 0.5000}, {120.0, 0.1955}, {150.0, 0.0288}};
    for (const auto& row : rows) {
        CHECK(*phase_cut_power_share(row[0] * std::numbers::pi / 180.0) == Approx(row[1]).margin(6e-5));
    }
    CHECK(*phase_cut_power_share(0.0) == Approx(1.0));
    CHECK(*phase_cut_power_share(std::numbers::pi) == Approx(0.0).margin(1e-15));
}

TEST_CASE("The share of power is the mean square of the cut wave")
{
    const int steps = 100000;
    for (const double angle : {0.3, 1.2, 2.5}) {
        double sum = 0.0;
        for (int i = 0; i < steps; ++i) {
            const double phase = (i + 0.5) * std::numbers::pi / steps;
            sum += phase >= angle ? std::sin(phase) * std::sin(phase) : 0.0;
        }
        CHECK(*phase_cut_power_share(angle) == Approx(2.0 * sum / steps).margin(2e-5));
    }
}

TEST_CASE("Each share of power has its firing angle")
{
    for (double share = 0.0; share <= 1.0; share += 0.05) {
        CHECK(*phase_cut_power_share(*firing_angle_rad(share)) == Approx(share).margin(1e-9));
    }
    CHECK(*firing_angle_rad(0.5) == Approx(std::numbers::pi / 2.0));
    CHECK_FALSE(firing_angle_rad(1.01));
    CHECK_FALSE(firing_angle_rad(-0.01));
    CHECK_FALSE(phase_cut_power_share(-0.1));
    CHECK_FALSE(phase_cut_power_share(3.2));
}

// Which control suits which load: keepers' sheets (secondary) and common practice, no source.

TEST_CASE("Without a control every load is as its maker meant it")
{
    for (const ControlledLoad& load : {halogen, ceramic, tube, mercury, led}) {
        CHECK(advise(load, Means::none) == ControlAdvice{Suits::yes, ControlReason::fine});
    }
}

TEST_CASE("A dimmer suits only what is a plain resistance and may be dimmed")
{
    CHECK(advise(halogen, Means::dimmer).suits == Suits::yes);
    CHECK(advise(ceramic, Means::dimming_thermostat).suits == Suits::yes);
    CHECK(advise(tube, Means::dimmer) == ControlAdvice{Suits::no, ControlReason::not_resistive});
    CHECK(advise(led, Means::dimmer) == ControlAdvice{Suits::no, ControlReason::not_resistive});
    ControlledLoad fixed = halogen;
    fixed.dimmable = false;
    CHECK(advise(fixed, Means::dimmer) == ControlAdvice{Suits::no, ControlReason::not_dimmable});
    CHECK(advise({LoadKind::motor, true, false, false}, Means::dimmer).suits == Suits::no);
}

TEST_CASE("A mercury-vapour lamp takes no control at all, even if its catalog calls it dimmable")
{
    for (const Means means : {Means::dimmer, Means::on_off_thermostat, Means::pulse_thermostat,
                              Means::dimming_thermostat, Means::thermostat_of_unknown_kind}) {
        CHECK(advise(mercury, means) == ControlAdvice{Suits::no, ControlReason::mercury_vapour_never});
    }
}

TEST_CASE("A lamp on a switching thermostat flickers, a ceramic heater does not")
{
    for (const Means means : {Means::on_off_thermostat, Means::pulse_thermostat}) {
        CHECK(advise(halogen, means) == ControlAdvice{Suits::no, ControlReason::light_would_flicker});
        CHECK(advise(tube, means) == ControlAdvice{Suits::no, ControlReason::light_would_flicker});
        CHECK(advise(ceramic, means).suits == Suits::yes);
    }
}

TEST_CASE("Where the thermostat's kind is not said, a lamp needs the dimming kind")
{
    CHECK(advise(halogen, Means::thermostat_of_unknown_kind) ==
          ControlAdvice{Suits::depends, ControlReason::needs_dimming_thermostat});
    CHECK(advise(ceramic, Means::thermostat_of_unknown_kind).suits == Suits::yes);
    CHECK(advise(tube, Means::thermostat_of_unknown_kind).suits == Suits::no); // no kind suits
    CHECK(advise(led, Means::thermostat_of_unknown_kind).suits == Suits::no);
}
