// The climate of one enclosure in every case: solved, judged, and turned into findings.
#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/assess/climate_box.hpp"
#include "core/climate/steady.hpp"

namespace loam::assess {

struct SolvedCase {
    climate::Case room;
    climate::Box box; // with the settings that were chosen where the plan leaves them open
    climate::CaseResult result;
    // Of devices whose dimmer the plan leaves open: what they reach at nought and at full.
    std::optional<climate::CaseResult> at_nought;
    std::optional<climate::CaseResult> at_full;
    // As in ClimateBox:
    std::vector<HeatSource> heaters;
    std::vector<std::string> solid_perches;
    double clearance_m = 0.0;
    friend bool operator==(const SolvedCase&, const SolvedCase&) = default;
};

struct ClimateStage {
    std::vector<SolvedCase> solved;
    std::vector<HeatCase> heat;
    std::vector<HumidityCase> humidity;
    std::optional<CalibrationResult> calibration; // absent: no readings
    std::vector<climate::UpdatedInput> estimated; // by the readings that were used
    Notes notes;
    friend bool operator==(const ClimateStage&, const ClimateStage&) = default;
};

// Everything but the remedies. nullopt only where `stop` was requested.
std::optional<ClimateStage> assess_climate(const Context& context, const Housed& housed, climate::Workspace& workspace,
                                           std::stop_token stop);

// Looks for the smallest effective remedies by solving again, from copies of the starts. False only where `stop` was
// requested.
bool add_climate_remedies(ClimateStage& stage, const climate::Workspace& workspace, std::stop_token stop);

// The steps below work on one another's results.

// nullopt only where `stop` was requested; a case the balance refuses comes back unconverged.
std::optional<SolvedCase> solve_case(const ClimateBox& set_up, const climate::Case& room,
                                     const std::vector<const catalog::Species*>& species, climate::Workspace& workspace,
                                     std::stop_token stop);

// Those of the devices that draw anything in this case.
std::vector<std::string> devices_in_use(const climate::Box& box, const std::vector<std::string>& devices,
                                        const climate::Case& room);

// A zone's target for one species, and the reading it is compared with. nullopt: the species has no such zone.
struct ZoneTarget {
    Zone zone = Zone::warm;
    climate::Measure measure = climate::Measure::ground;
    Target target_c;
};
std::vector<ZoneTarget> zone_targets(const catalog::Species& species, const climate::Case& room);
Range zone_reading(const climate::CaseResult& result, Zone zone, climate::Measure measure);

HeatCase judge_case(const SolvedCase& solved, const std::vector<const catalog::Species*>& species);
void report_zones(Notes& notes, const Housed& housed, const HeatCase& heat, const climate::Case& room);
void report_heat_dangers(Notes& notes, const Housed& housed, const std::vector<SolvedCase>& cases,
                         const std::vector<const catalog::Species*>& species);
std::vector<HumidityCase> judge_humidity(Notes& notes, const Context& context, const Housed& housed,
                                         const std::vector<SolvedCase>& cases);

// Each false only where `stop` was requested.
bool add_heat_remedies(Notes& notes, const std::vector<HeatCase>& heat, const std::vector<SolvedCase>& cases,
                       const climate::Workspace& workspace, std::stop_token stop);
bool add_humidity_remedies(Notes& notes, std::vector<HumidityCase>& humidity, const std::vector<SolvedCase>& cases,
                           const climate::Workspace& workspace, std::stop_token stop);

// The case of that name, if its balance closed; nullptr otherwise.
const SolvedCase* solved_as(const std::vector<SolvedCase>& solved, std::string_view id);

// What one species asks for: a young animal's band where the sheet has one and some animal is known to be young.
Target wanted_humidity(const Housed& housed, const catalog::Species& species);

// What a finding carries under a name.
std::string label_of(const Finding& finding, std::string_view name); // empty where it has none
std::optional<double> input_of(const Finding& finding, std::string_view name);

} // namespace loam::assess
