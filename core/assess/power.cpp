#include "core/assess/power.hpp"

#include "core/assess/equipment.hpp"
#include "core/assess/photoperiod.hpp"
#include "core/assess/shopping.hpp"
#include "core/independent.hpp"
#include "core/plan/names.hpp"

namespace loam::assess {

namespace {

// A mister runs some minutes a day. Common practice, no source.
constexpr Range mister_duty{0.0, 0.01, 0.05};

const climate::DeviceState* state_of(const std::vector<HeatCase>& heat, std::string_view case_id,
                                     const std::string& device)
{
    for (const HeatCase& one : heat) {
        for (const climate::DeviceState& state : one.detail.devices) {
            if (one.id == case_id && one.known && state.id == device) {
                return &state;
            }
        }
    }
    return nullptr;
}

// While its outlet is on: of the day alone for what is timed, of day and night by their hours for what is not.
Range duty_of(const std::vector<HeatCase>& heat, const std::string& season, const KnownDevice& known, double day_h)
{
    if (known.device.kind == plan::DeviceKind::mister) {
        return mister_duty;
    }
    const climate::DeviceState* day = state_of(heat, season + "-day", known.device.id);
    const climate::DeviceState* night = state_of(heat, season + "-night", known.device.id);
    if (day != nullptr && (known.timed || night != nullptr)) {
        if (known.timed) {
            return day->duty;
        }
        const double share = day_h / 24.0;
        return {share * day->duty.low + (1.0 - share) * night->duty.low,
                share * day->duty.likely + (1.0 - share) * night->duty.likely,
                share * day->duty.high + (1.0 - share) * night->duty.high};
    }
    switch (known.device.control.kind) {
    case plan::ControlKind::none:
        return exactly(1.0);
    case plan::ControlKind::dimmer:
        return known.device.control.level ? exactly(*known.device.control.level) : Range{0.0, 0.5, 1.0};
    case plan::ControlKind::thermostat:
        return {0.0, 0.5, 1.0};
    }
    return exactly(1.0);
}

// The balance has found its duty at the likely watts: a stronger heater would run for less of the time. So the watts'
// error is in that duty's range already, and must not be counted again for the energy.
power::Device metered(const KnownDevice& known, power::Device device)
{
    const auto follows = [](const Range& duty) { return duty.low < duty.high; };
    const bool regulated = known.device.control.kind == plan::ControlKind::thermostat;
    if (regulated && (follows(device.duty_winter) || follows(device.duty_summer))) {
        device.connected_w = exactly(device.connected_w.likely);
    }
    return device;
}

void report_unstated(const Housed& housed, Notes& notes, const KnownDevice& known, const power::Device& device)
{
    if (!known.device.power_w) {
        report(notes, "device.power-not-stated", {Verdict::not_known, Direction::none}, housed.at(device.id),
               because("rule.stated-by-keeper",
                       {{"low", device.connected_w.low, "W"},
                        {"likely", device.connected_w.likely, "W"},
                        {"high", device.connected_w.high, "W"}},
                       {{"device", device.id}, {"kind", std::string(plan::name_of(known.device.kind))}}))
            .remedy = state(pointer_to(housed, known, "power_w"));
    }
    if (!known.device.supply) {
        assume(notes, {pointer_to(housed, known, "supply"),
                       "1",
                       Range{0.0, known.timed ? 1.0 : 0.0, 1.0},
                       {"Our own reading: lights on a timer, heat always on", Confidence::practice}});
        report(notes, "device.supply-not-stated", {Verdict::not_known, Direction::none}, housed.at(device.id),
               because("rule.stated-by-keeper", {}, {{"device", device.id}}))
            .remedy = state(pointer_to(housed, known, "supply"));
    }
    if (!known.device.strip) {
        report(notes, "device.no-strip", {Verdict::not_known, Direction::none}, housed.at(device.id),
               because("rule.stated-by-keeper", {{"power", device.connected_w.likely, "W"}}, {{"device", device.id}}))
            .remedy = state(pointer_to(housed, known, "strip"));
    }
}

} // namespace

namespace {

// What each device and all of them use by month, and what that costs by the plan's tariff.
void follow_year(const Context& context, const std::vector<power::Device>& meter, const power::YearCourse& course,
                 PowerStage& stage)
{
    constexpr double days_a_year = 365.0;
    std::vector<power::DeviceYear> years;
    for (std::size_t i = 0; i < meter.size(); ++i) {
        years.push_back(power::year_of(meter[i], course));
        stage.result.devices[i].month_kwh = years.back().month_kwh;
        stage.result.devices[i].year_kwh = years.back().year_kwh;
    }
    const power::Year year = power::year_together(years);
    stage.result.month_kwh = year.month_kwh;
    stage.result.year_kwh = year.year_kwh;
    stage.result.daily_kwh = scaled(year.year_kwh, 1.0 / days_a_year);
    stage.kwh_per_year = year.year_kwh;
    if (const auto& tariff = context.plan.site.electricity_price_per_kwh) {
        for (std::size_t month = 0; month < year.month_kwh.size(); ++month) {
            stage.result.month_cost[month] =
                Money::of(year.month_kwh[month].likely, *tariff, currency_of(context.plan));
        }
    }
}

} // namespace

PowerStage assess_power(const Context& context, const Housed& housed, const std::vector<HeatCase>& heat,
                        const power::YearCourse& course)
{
    PowerStage stage;
    std::vector<power::Device> meter;
    const auto hours = timed_hours(context, housed, stage.notes);
    const double day_h =
        hours ? hours->likely : 12.0; // no species known: half the day, the photoperiod finding says so
    for (const KnownDevice& known : equipment_of(context, housed, stage.notes)) {
        power::Device device;
        device.id = known.device.id;
        device.connected_w = known.power_w.value_or(exactly(0.0));
        device.hours_per_day = known.timed ? day_h : 24.0;
        device.duty_winter = duty_of(heat, "winter", known, day_h);
        device.duty_summer = duty_of(heat, "summer", known, day_h);
        device.timed = known.timed;
        device.strip = known.device.strip;
        report_unstated(housed, stage.notes, known, device);
        meter.push_back(metered(known, device));
        const power::Energy energy = power::energy(meter.back());
        stage.result.devices.push_back({.id = device.id,
                                        .connected_w = device.connected_w,
                                        .daily_kwh_winter = energy.winter_kwh_per_day,
                                        .daily_kwh_summer = energy.summer_kwh_per_day,
                                        .hours_per_day = device.hours_per_day,
                                        .month_kwh = {},
                                        .year_kwh = {}});
        stage.devices.push_back(std::move(device));
    }
    const power::Together plugs = power::together(stage.devices);
    stage.result.connected_w = plugs.connected_w;
    stage.result.timed_outlets = plugs.timed_outlets;
    stage.result.always_on_outlets = plugs.always_on_outlets;
    follow_year(context, meter, course, stage);
    return stage;
}

} // namespace loam::assess
