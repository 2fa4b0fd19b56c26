#include <algorithm>
#include <cmath>

#include "core/assess/climate_stage.hpp"

namespace loam::assess {

namespace {

climate::CaseResult refused(const climate::Case& room)
{
    climate::CaseResult result;
    result.id = room.id;
    return result;
}

bool is_in(const std::vector<std::string>& devices, const std::string& id)
{
    return std::find(devices.begin(), devices.end(), id) != devices.end();
}

void set_level(climate::Box& box, const std::vector<std::string>& devices, double level)
{
    for (climate::Lamp& lamp : box.lamps) {
        lamp.control.level = is_in(devices, lamp.id) ? level : lamp.control.level;
    }
    for (climate::Mat& mat : box.mats) {
        mat.control.level = is_in(devices, mat.id) ? level : mat.control.level;
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

// One case with the free dimmers at any level.
struct Turning {
    const ClimateBox& set_up;
    const climate::Case& room;
    climate::Workspace& workspace;
    const std::stop_token& stop;
    std::vector<std::string> dimmers;
    climate::Box box;

    template <class Solve> auto at(double level, Solve solve)
    {
        set_level(box, dimmers, level);
        return solve(box, room, workspace, stop, climate::Resolution{});
    }
};

// The level within 1/64 of its travel, or the reading within 0.05 K. `short_k` is what is wanted less the likely
// reading, at nought and at full. Readings rise with the level and are nearly straight in it: regula falsi, with the
// end that stays put weighed less each time (Dowell & Jarratt 1971, BIT 11, the Illinois algorithm; from memory).
double level_for(Turning& turning, const Aim& aim, double short_at_nought_k, double short_at_full_k)
{
    if (short_at_full_k >= 0.0) {
        return 1.0;
    }
    if (short_at_nought_k <= 0.0) {
        return 0.0;
    }
    double low = 0.0;
    double high = 1.0;
    double at_low_k = short_at_nought_k;
    double at_high_k = short_at_full_k;
    int side = 0;
    while (high - low > 1.0 / 64.0) {
        const double level = low + (high - low) * at_low_k / (at_low_k - at_high_k);
        const auto tried = turning.at(level, climate::solve_likely);
        if (!tried || !tried->converged) {
            break;
        }
        const double short_k = aim.wanted_c - zone_reading(*tried, aim.zone, aim.measure).likely;
        if (std::abs(short_k) < 0.05) {
            return level;
        }
        if (short_k > 0.0) {
            low = level;
            at_low_k = short_k;
            at_high_k *= side > 0 ? 0.5 : 1.0;
            side = 1;
        } else {
            high = level;
            at_high_k = short_k;
            at_low_k *= side < 0 ? 0.5 : 1.0;
            side = -1;
        }
    }
    return high;
}

// Whether the range at nought may decide a verdict. With a device off fewer inputs are uncertain, so that its range is
// no wider than the one at full.
bool matters_at_nought(const climate::CaseResult& nought, const climate::CaseResult& full,
                       const std::vector<const catalog::Species*>& species, const climate::Case& room)
{
    for (const catalog::Species* one : species) {
        for (const ZoneTarget& target : zone_targets(*one, room)) {
            const Range at_full = zone_reading(full, target.zone, target.measure);
            const double least_c = zone_reading(nought, target.zone, target.measure).likely;
            if (target.target_c.max && least_c + (at_full.high - at_full.likely) > *target.target_c.max) {
                return true;
            }
        }
    }
    return false;
}

} // namespace

std::vector<std::string> devices_in_use(const climate::Box& box, const std::vector<std::string>& devices,
                                        const climate::Case& room)
{
    std::vector<std::string> used;
    for (const climate::Lamp& lamp : box.lamps) {
        if (is_in(devices, lamp.id) && (room.day || lamp.at_night)) {
            used.push_back(lamp.id);
        }
    }
    for (const climate::Mat& mat : box.mats) {
        if (is_in(devices, mat.id) && (room.day || mat.at_night)) {
            used.push_back(mat.id);
        }
    }
    return used;
}

// A dimmer without a stated level is one the keeper turns: the level that brings the likely reading to the middle of
// the target is looked for.
std::optional<SolvedCase> solve_case(const ClimateBox& set_up, const climate::Case& room,
                                     const std::vector<const catalog::Species*>& species, climate::Workspace& workspace,
                                     std::stop_token stop)
{
    SolvedCase solved{
        room, set_up.box, {}, std::nullopt, std::nullopt, set_up.heaters, set_up.solid_perches, set_up.clearance_m};
    Turning turning{set_up, room, workspace, stop, devices_in_use(set_up.box, set_up.free_dimmers, room), set_up.box};
    auto result = turning.at(1.0, climate::solve_steady);
    const auto aim = set_up.free_dimmers.empty() ? std::nullopt : aim_of(species, room);
    if (result && result->converged && aim && room.fault == climate::Fault::none) {
        solved.at_full = result;
        solved.at_nought = turning.dimmers.empty() ? result : turning.at(0.0, climate::solve_likely);
        if (!turning.dimmers.empty() && solved.at_nought) {
            if (matters_at_nought(*solved.at_nought, *solved.at_full, species, room)) {
                solved.at_nought = turning.at(0.0, climate::solve_steady);
            }
            const auto short_k = [&](const climate::CaseResult& at) {
                return aim->wanted_c - zone_reading(at, aim->zone, aim->measure).likely;
            };
            const double level =
                solved.at_nought ? level_for(turning, *aim, short_k(*solved.at_nought), short_k(*result)) : 1.0;
            result = level == 1.0 ? result : turning.at(level, climate::solve_steady);
            set_level(turning.box, turning.dimmers, level);
        }
    }
    if (stop.stop_requested()) {
        return std::nullopt;
    }
    solved.box = turning.box;
    solved.result = result ? std::move(*result) : refused(room);
    return solved;
}

} // namespace loam::assess
