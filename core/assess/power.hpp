// Watts, kilowatt-hours, strips and circuits.
#pragma once

#include <vector>

#include "core/assess/climate_stage.hpp"
#include "core/assess/context.hpp"
#include "core/power/energy.hpp"
#include "core/power/year.hpp"

namespace loam::assess {

struct PowerStage {
    PowerResult result;
    std::vector<power::Device> devices; // for the circuits
    Range kwh_per_year;
    Notes notes;
    friend bool operator==(const PowerStage&, const PowerStage&) = default;
};

// `heat` empty: the climate has not run, and what a thermostat draws is bracketed from none to all.
PowerStage assess_power(const Context& context, const Housed& housed, const std::vector<HeatCase>& heat,
                        const power::YearCourse& course);

struct CircuitStage {
    std::vector<CircuitResult> circuits;
    std::vector<StripResult> strips;
    Notes notes;
};

// Over the devices of every enclosure: loads add up wherever they stand.
CircuitStage assess_circuits(const Context& context, const std::vector<power::Device>& devices);

// Controls that do not suit what they feed, and the cautions of mains near water and hot holders.
Notes judge_controls(const Context& context, const Housed& housed);

} // namespace loam::assess
