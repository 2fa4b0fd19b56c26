#include "core/assess/equipment.hpp"
#include "core/assess/power.hpp"
#include "core/plan/names.hpp"
#include "core/power/control.hpp"

namespace loam::assess {

namespace {

const Source practice{"Common practice, no source", Confidence::practice};

std::string load_name(catalog::LoadKind kind)
{
    switch (kind) {
    case catalog::LoadKind::resistive:
        return "resistive";
    case catalog::LoadKind::ballast:
        return "ballast";
    case catalog::LoadKind::electronic:
        return "electronic";
    case catalog::LoadKind::motor:
        return "motor";
    }
    return {};
}

power::Means means_of(const plan::Control& control)
{
    if (control.kind == plan::ControlKind::dimmer) {
        return power::Means::dimmer;
    }
    if (!control.method) {
        return power::Means::thermostat_of_unknown_kind;
    }
    switch (*control.method) {
    case plan::ThermostatMethod::on_off:
        return power::Means::on_off_thermostat;
    case plan::ThermostatMethod::pulse:
        return power::Means::pulse_thermostat;
    case plan::ThermostatMethod::dimming:
        return power::Means::dimming_thermostat;
    }
    return power::Means::thermostat_of_unknown_kind;
}

// What a holder or control has to bear against what its maker allows.
void judge_ratings(const Housed& housed, Notes& notes, const KnownDevice& known)
{
    if (!known.power_w) {
        return;
    }
    const Source label{"The rating is its maker's, as stated in the plan", Confidence::confirmed};
    const Range& power_w = *known.power_w;
    const std::vector<Label> labels{{"device", known.device.id}};
    const auto why = [&](double rating_w) {
        return because("rule.rated-load", inputs_over(power_w, rating_w, "W"), labels, label);
    };
    const Judgement over{Verdict::danger, Direction::above};
    // A lamp is sold by its nominal watts, which the holder's rating speaks of; the spread is the lamp's own.
    const auto& holder_w = known.device.holder_rating_w;
    if (holder_w && power_w.likely > *holder_w) {
        report(notes, "danger.lamp-holder", over, housed.at(known.device.id), why(*holder_w)).remedy =
            remedy("remedy.stronger-holder", {{"to", power_w.likely, "W"}}, labels);
    }
    const auto& control_w = known.device.control.rating_w;
    if (control_w && power_w.likely > *control_w) {
        report(notes, "danger.control-overload", over, housed.at(known.device.id), why(*control_w)).remedy =
            remedy("remedy.stronger-control", {{"to", power_w.likely, "W"}}, labels);
    }
}

void judge_means(const Housed& housed, Notes& notes, const KnownDevice& known)
{
    const plan::Device& device = known.device;
    const std::string kind(plan::name_of(device.kind));
    if (known.traits == nullptr || device.control.kind == plan::ControlKind::none) {
        return;
    }
    const bool dims = device.control.kind == plan::ControlKind::dimmer;
    const auto advice = power::advise(controlled_load(known), means_of(device.control));
    const std::vector<Label> labels{{"device", device.id}, {"kind", kind}, {"load", load_name(known.traits->load)}};
    const Remedy undimmed = remedy("remedy.undimmed", {}, {{"device", device.id}});
    if (advice.suits == power::Suits::no && dims) {
        report(notes, "control.dimmer-unsuited", {Verdict::falls_short, Direction::none}, housed.at(device.id),
               because("rule.load-kind", {}, labels, practice))
            .remedy = undimmed;
    } else if (advice.reason == power::ControlReason::light_would_flicker && device.control.method) {
        report(notes, "control.on-off-with-lamp", {Verdict::falls_short, Direction::none}, housed.at(device.id),
               because("rule.load-kind", {}, {{"device", device.id}, {"kind", kind}}, practice))
            .remedy = remedy("remedy.dimming-thermostat", {}, {{"device", device.id}});
    } else if (advice.suits == power::Suits::no) {
        report(notes, "control.thermostat-unsuited", {Verdict::falls_short, Direction::none}, housed.at(device.id),
               because("rule.load-kind", {}, labels, practice))
            .remedy = undimmed;
    } else if (advice.reason == power::ControlReason::needs_dimming_thermostat) {
        report(notes, "control.on-off-with-lamp", {Verdict::tight, Direction::none}, housed.at(device.id),
               because("rule.load-kind", {}, {{"device", device.id}, {"kind", kind}}, practice))
            .remedy = remedy("remedy.dimming-thermostat", {}, {{"device", device.id}});
    }
}

void judge_regulation(const Housed& housed, Notes& notes, const KnownDevice& known)
{
    const plan::Device& device = known.device;
    const std::vector<Label> labels{{"device", device.id}, {"kind", std::string(plan::name_of(device.kind))}};
    const Judgement miss{Verdict::falls_short, Direction::none};
    if (device.control.kind == plan::ControlKind::thermostat && !device.control.setpoint_c) {
        report(notes, "control.thermostat-without-setpoint", {Verdict::not_known, Direction::none},
               housed.at(device.id), because("rule.probe", {}, labels))
            .remedy = state(pointer_to(housed, known, "control/setpoint_c"));
    }
    if (device.control.kind == plan::ControlKind::thermostat && !device.control.probe) {
        std::vector<Input> inputs;
        if (device.control.setpoint_c) {
            inputs.push_back({"setpoint", *device.control.setpoint_c, "degC"});
        }
        report(notes, "control.thermostat-without-probe", miss, housed.at(device.id),
               because("rule.probe", inputs, labels, practice))
            .remedy = remedy("remedy.place-probe", {}, {{"device", device.id}});
    }
    const bool lightless_heat = device.kind == plan::DeviceKind::heat_mat ||
                                device.kind == plan::DeviceKind::ceramic_heater ||
                                device.kind == plan::DeviceKind::radiant_panel;
    if (lightless_heat && device.control.kind != plan::ControlKind::thermostat) {
        const double power_w = known.power_w ? known.power_w->likely : 0.0;
        report(notes, "control.heater-unregulated", miss, housed.at(device.id),
               because("rule.probe", {{"power", power_w, "W"}}, labels,
                       {"One club's page on heat mats: thermostat or dimmer, surface at most 35 degC",
                        Confidence::secondary}))
            .remedy = remedy("remedy.add-thermostat", {}, {{"device", device.id}});
    }
    if (device.kind == plan::DeviceKind::heat_mat && device.control.kind == plan::ControlKind::thermostat &&
        device.supply == plan::Supply::timed) {
        report(notes, "control.mat-on-timer", {Verdict::tight, Direction::none}, housed.at(device.id),
               because("rule.probe", {}, {{"device", device.id}}, practice))
            .remedy = remedy("remedy.always-on-supply", {}, {{"device", device.id}});
    }
}

// Standing water, a mister, or a bowl right under something with a plug.
void caution_water(const Housed& housed, Notes& notes)
{
    bool bowl = false;
    bool mister = false;
    for (const plan::Fitting& fitting : housed.enclosure.fittings) {
        bowl = bowl || fitting.kind == plan::FittingKind::water_bowl;
    }
    for (const plan::Device& device : housed.enclosure.equipment) {
        mister = mister || device.kind == plan::DeviceKind::mister;
    }
    const bool wet = bowl || mister || housed.enclosure.moisture.misting_l_per_day.value_or(0.0) > 0.0;
    if (wet && !housed.enclosure.equipment.empty()) {
        report(notes, "electrical.water-near-mains", {Verdict::fits, Direction::none}, housed.at(),
               because("rule.water-and-mains", {}, {{"reason", mister ? "mister" : "water-present"}}, practice))
            .remedy = remedy("remedy.drip-loop");
    }
}

} // namespace

Notes judge_controls(const Context& context, const Housed& housed)
{
    Notes notes;
    for (const KnownDevice& known : equipment_of(context, housed, notes)) {
        judge_means(housed, notes, known);
        judge_regulation(housed, notes, known);
        judge_ratings(housed, notes, known);
        const bool hot_bulb = known.device.kind == plan::DeviceKind::flood_lamp ||
                              known.device.kind == plan::DeviceKind::mercury_vapour_lamp ||
                              known.device.kind == plan::DeviceKind::ceramic_heater;
        if (hot_bulb && !known.device.holder_rating_w) {
            const double power_w = known.power_w ? known.power_w->likely : 0.0;
            report(
                notes, "electrical.lamp-holder", {Verdict::fits, Direction::none}, housed.at(known.device.id),
                because("rule.heat-rated-holder", {{"power", power_w, "W"}}, {{"device", known.device.id}}, practice))
                .remedy = remedy("remedy.heat-rated-holder", {}, {{"device", known.device.id}});
        }
    }
    caution_water(housed, notes);
    return notes;
}

} // namespace loam::assess
