#include "core/assess/climate_stage.hpp"

#include <algorithm>

#include "core/assess/calibrate.hpp"
#include "core/assess/side_by_side.hpp"

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

// The cases of one box, solved side by side in rounds; within a round none depends on another.
struct Solving {
    const std::vector<ClimateBox>& boxes; // one for each room
    const std::vector<climate::Case>& rooms;
    const std::vector<const catalog::Species*>& species;
    const std::stop_token& stop;
    climate::Workspace& workspace;
    std::vector<std::optional<SolvedCase>> solved; // absent: not yet, or stopped

    void solve(const std::vector<std::size_t>& which)
    {
        std::vector<climate::Workspace> own;
        own.reserve(which.size());
        for (const std::size_t i : which) {
            own.push_back(climate::part_for(workspace, rooms[i].id));
        }
        side_by_side(which.size(), [&](std::size_t k) {
            solved[which[k]] = solve_case(boxes[which[k]], rooms[which[k]], species, own[k], stop);
        });
        for (const climate::Workspace& one : own) {
            climate::take_back(workspace, one);
        }
    }

    // The case shall begin where another ended that has an answer and the same devices on: only the room differs.
    // False where there is none.
    bool start_from_neighbour(std::size_t i)
    {
        for (const auto& other : solved) {
            if (other && other->room.day == rooms[i].day && other->result.converged &&
                climate::begin_like(workspace, rooms[i].id, other->room.id)) {
                return true;
            }
        }
        return false;
    }

    // Those that were solved before, and for the others to start from the first by day and by night.
    void solve_all()
    {
        std::vector<std::size_t> first;
        std::vector<std::size_t> later;
        for (std::size_t i = 0; i < rooms.size(); ++i) {
            const auto alike = [&](std::size_t one) { return rooms[one].day == rooms[i].day; };
            const bool leads = std::none_of(first.begin(), first.end(), alike);
            (leads || climate::knows(workspace, rooms[i].id) ? first : later).push_back(i);
        }
        solve(first);
        for (const std::size_t i : later) {
            start_from_neighbour(i);
        }
        solve(later);
        std::vector<std::size_t> again;
        for (std::size_t i = 0; i < rooms.size(); ++i) {
            if (solved[i] && !solved[i]->result.converged && start_from_neighbour(i)) {
                again.push_back(i);
            }
        }
        solve(again);
    }
};

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
    const std::vector<climate::Case> rooms = climate_cases(context, box.box, stage.notes);
    const auto calibrated = calibrate_enclosure(context, housed, box, rooms, stage.notes, stop);
    if (!calibrated) {
        return std::nullopt;
    }
    stage.calibration = calibrated->result;
    stage.estimated = calibrated->boxes.inputs;
    std::vector<ClimateBox> boxes;
    boxes.reserve(rooms.size());
    for (const climate::Case& room : rooms) {
        boxes.push_back(calibrated->at(box, room));
    }
    Solving solving{boxes, rooms, species, stop, workspace, std::vector<std::optional<SolvedCase>>(rooms.size())};
    solving.solve_all();
    for (std::optional<SolvedCase>& one : solving.solved) {
        if (!one) {
            return std::nullopt;
        }
        report_solution(stage.notes, housed, *one);
        stage.heat.push_back(judge_case(*one, species));
        report_zones(stage.notes, housed, stage.heat.back(), one->room);
        stage.solved.push_back(std::move(*one));
    }
    report_heat_dangers(stage.notes, housed, stage.solved, species);
    stage.humidity = judge_humidity(stage.notes, context, housed, stage.solved);
    return stage;
}

bool add_climate_remedies(ClimateStage& stage, const climate::Workspace& workspace, std::stop_token stop)
{
    return add_humidity_remedies(stage.notes, stage.humidity, stage.solved, workspace, stop) &&
           add_heat_remedies(stage.notes, stage.heat, stage.solved, workspace, stop);
}

const SolvedCase* solved_as(const std::vector<SolvedCase>& solved, std::string_view id)
{
    const auto found = std::find_if(solved.begin(), solved.end(), [&](const auto& one) { return one.room.id == id; });
    return found == solved.end() || !found->result.converged ? nullptr : &*found;
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
