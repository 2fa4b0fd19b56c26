#include "core/assess/climate_stage.hpp"

namespace loam::assess {

namespace {

void report_not_computable(Notes& notes, const Housed& housed, const NotComputable& missing)
{
    report(notes, "heat.not-computable", {Verdict::not_known, Direction::none}, housed.at(missing.where),
           because("rule.heat-balance", {}, {{"reason", missing.reason}}));
}

void report_solution(Notes& notes, const Housed& housed, const SolvedCase& solved)
{
    const climate::CaseResult& result = solved.result;
    if (!result.converged) {
        report(notes, "heat.not-converged", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.heat-balance", {{"residual", result.residual_w, "W"}}, {{"case", solved.room.id}}));
        return;
    }
    // At full power and still short by day; at none it is too warm, and at night nothing asks for the setpoint. Both
    // are told by the zones.
    const bool usual = solved.room.fault == climate::Fault::none && solved.room.day && solved.room.id != "heat-wave";
    for (const climate::DeviceState& device : result.devices) {
        if (device.saturated && usual && device.duty.likely > 0.5) {
            report(notes, "heat.device-saturated", {Verdict::tight, Direction::below}, housed.at(device.id),
                   because("rule.heat-balance", {{"power", device.power_w.likely, "W"}},
                           {{"device", device.id}, {"case", solved.room.id}}));
        }
    }
}

// A case that was never solved starts from the one most like it: the same devices are on, only the room differs.
void start_from_neighbour(climate::Workspace& workspace, const std::vector<SolvedCase>& solved,
                          const climate::Case& room)
{
    const auto start_of = [&](const std::string& id) -> const climate::Workspace::Start* {
        for (const climate::Workspace::Start& start : workspace.starts) {
            if (start.case_id == id) {
                return &start;
            }
        }
        return nullptr;
    };
    if (start_of(room.id) != nullptr) {
        return;
    }
    for (const SolvedCase& one : solved) {
        const climate::Workspace::Start* start = start_of(one.room.id);
        if (one.room.day == room.day && one.result.converged && start != nullptr) {
            workspace.starts.push_back({room.id, start->values});
            return;
        }
    }
}

void report_missing_targets(Notes& notes, const Housed& housed, const std::vector<const catalog::Species*>& species)
{
    const auto tell = [&](const catalog::Species& one, std::string zone) {
        report(notes, "heat.target-not-known", {Verdict::not_known, Direction::none}, housed.at(),
               because("rule.species-sheet", {}, {{"zone", std::move(zone)}, {"species", one.id}}));
    };
    for (const catalog::Species* one : species) {
        if (!one->temperatures.warm_c) {
            tell(*one, "warm");
        }
        if (!one->temperatures.cool_c) {
            tell(*one, "cool");
        }
        if (!one->temperatures.night_c) {
            tell(*one, "night");
        }
    }
}

} // namespace

std::optional<ClimateStage> assess_climate(const Context& context, const Housed& housed, climate::Workspace& workspace,
                                           std::stop_token stop)
{
    ClimateStage stage;
    const auto set_up = climate_box(context, housed, stage.notes);
    if (const auto* missing = std::get_if<NotComputable>(&set_up)) {
        report_not_computable(stage.notes, housed, *missing);
        return stage;
    }
    const auto& box = std::get<ClimateBox>(set_up);
    const auto species = species_in(housed.enclosure, context.catalog);
    report_missing_targets(stage.notes, housed, species);
    for (const climate::Case& room : climate_cases(context, box.box, stage.notes)) {
        start_from_neighbour(workspace, stage.solved, room);
        auto one = solve_case(box, room, species, workspace, stop);
        if (!one) {
            return std::nullopt;
        }
        report_solution(stage.notes, housed, *one);
        stage.heat.push_back(judge_case(*one, species));
        report_zones(stage.notes, housed, stage.heat.back(), room);
        stage.solved.push_back(std::move(*one));
    }
    report_heat_dangers(stage.notes, housed, stage.solved, species);
    stage.humidity = judge_humidity(stage.notes, context, housed, stage.solved);
    return stage;
}

bool add_climate_remedies(ClimateStage& stage, climate::Workspace workspace, std::stop_token stop)
{
    return add_humidity_remedies(stage.notes, stage.humidity, stage.solved, workspace, stop) &&
           add_heat_remedies(stage.notes, stage.solved, workspace, stop);
}

std::string label_of(const Finding& finding, std::string_view name)
{
    for (const Label& label : finding.because.labels) {
        if (label.name == name) {
            return label.text;
        }
    }
    return {};
}

std::optional<double> input_of(const Finding& finding, std::string_view name)
{
    for (const Input& input : finding.because.inputs) {
        if (input.name == name) {
            return input.value;
        }
    }
    return std::nullopt;
}

} // namespace loam::assess
