#include <algorithm>

#include "core/assess/climate_stage.hpp"

namespace loam::assess {

namespace {

climate::CaseResult refused(const climate::Case& room)
{
    climate::CaseResult result;
    result.id = room.id;
    return result;
}

void set_level(climate::Box& box, const std::vector<std::string>& devices, double level)
{
    const auto is_free = [&](const std::string& id) {
        return std::find(devices.begin(), devices.end(), id) != devices.end();
    };
    for (climate::Lamp& lamp : box.lamps) {
        lamp.control.level = is_free(lamp.id) ? level : lamp.control.level;
    }
    for (climate::Mat& mat : box.mats) {
        mat.control.level = is_free(mat.id) ? level : mat.control.level;
    }
}

struct Aim {
    Zone zone = Zone::warm;
    climate::Measure measure = climate::Measure::ground;
    double wanted_c = 0.0;
};

// What a free dimmer is turned for: the basking spot where there is one, else the warm side.
std::optional<Aim> aim_of(const std::vector<const catalog::Species*>& species, const climate::Case& room)
{
    for (const catalog::Species* one : species) {
        for (const ZoneTarget& target : zone_targets(*one, room)) {
            if (target.zone != Zone::cool && target.target_c.min && target.target_c.max) {
                return Aim{target.zone, target.measure, (*target.target_c.min + *target.target_c.max) / 2.0};
            }
        }
    }
    return std::nullopt;
}

} // namespace

// A dimmer without a stated level is one the keeper turns: the level that brings the likely reading to the middle of
// the target is looked for, within 1/64 of its travel. The readings rise with the level, so halving finds it.
std::optional<SolvedCase> solve_case(const ClimateBox& set_up, const climate::Case& room,
                                     const std::vector<const catalog::Species*>& species, climate::Workspace& workspace,
                                     std::stop_token stop)
{
    SolvedCase solved{
        room, set_up.box, {}, std::nullopt, std::nullopt, set_up.heaters, set_up.solid_perches, set_up.clearance_m};
    const auto solve_at = [&](double level, auto solve) {
        set_level(solved.box, set_up.free_dimmers, level);
        return solve(solved.box, room, workspace, stop, climate::Resolution{});
    };
    auto result = solve_at(1.0, climate::solve_steady);
    const auto aim = set_up.free_dimmers.empty() ? std::nullopt : aim_of(species, room);
    if (result && aim && room.fault == climate::Fault::none) {
        solved.at_full = result;
        solved.at_nought = solve_at(0.0, climate::solve_steady);
        double low = 0.0;
        double high = 1.0;
        if (zone_reading(*result, aim->zone, aim->measure).likely <= aim->wanted_c) {
            low = 1.0;
        }
        while (high - low > 1.0 / 64.0) {
            const double middle = (low + high) / 2.0;
            const auto tried = solve_at(middle, climate::solve_likely);
            if (!tried) {
                break;
            }
            (zone_reading(*tried, aim->zone, aim->measure).likely < aim->wanted_c ? low : high) = middle;
        }
        result = solve_at(high, climate::solve_steady);
    }
    if (stop.stop_requested()) {
        return std::nullopt;
    }
    solved.result = result ? std::move(*result) : refused(room);
    return solved;
}

} // namespace loam::assess
