#include <algorithm>

#include "core/assess/heat_search.hpp"
#include "core/assess/side_by_side.hpp"

namespace loam::assess {

namespace {

std::optional<Miss> miss_of(const Finding& finding, const std::vector<SolvedCase>& cases)
{
    Miss miss;
    miss.direction = finding.direction;
    miss.by_k = input_of(finding, finding.direction == Direction::below ? "short_by" : "over_by").value_or(0.0);
    const std::string case_id = label_of(finding, "case");
    for (const SolvedCase& one : cases) {
        miss.solved = one.room.id == case_id ? &one : miss.solved;
    }
    if (finding.code == "heat.basking") {
        miss.zone = Zone::basking;
        miss.measure = climate::Measure::surface;
    } else if (finding.code == "heat.cool-side" || finding.code == "heat.heat-wave") {
        miss.zone = Zone::cool;
    } else if (finding.code == "heat.night") {
        miss.zone = finding.direction == Direction::above ? Zone::warm : Zone::cool;
    } else if (finding.code == "danger.lamp-dried-surface") {
        miss.touch = true;
    } else if (finding.code != "heat.warm-side") {
        return std::nullopt;
    }
    return miss.solved != nullptr && miss.by_k > 0.0 ? std::optional(miss) : std::nullopt;
}

// The device that bears most on the miss: by day the strongest lamp (else mat), by night what is on at night.
struct Heater {
    std::string id;
    double power_w = 0.0;
    climate::Control control;
};

std::optional<Heater> heater_of(const climate::Box& box, bool day)
{
    std::optional<Heater> best;
    const auto consider = [&](const std::string& id, double power_w, const climate::Control& control, bool is_on) {
        if (is_on && (!best || power_w > best->power_w)) {
            best = Heater{id, power_w, control};
        }
    };
    for (const climate::Lamp& lamp : box.lamps) {
        consider(lamp.id, lamp.power_w.likely, lamp.control, day || lamp.at_night);
    }
    if (!best) {
        for (const climate::Mat& mat : box.mats) {
            consider(mat.id, mat.power_w.likely, mat.control, day || mat.at_night);
        }
    }
    return best;
}

void add_ceramic(climate::Box& box, double power_w, bool at_night)
{
    climate::Lamp heater;
    heater.id = "suggested";
    heater.at = {box.length_m / 4.0, box.width_m / 2.0, box.height_m * 0.9};
    heater.power_w = exactly(power_w);
    heater.radiant_share = exactly(0.53); // of a ceramic heater, as in the catalog
    heater.convective_share = exactly(0.47);
    heater.beam_deg = exactly(120.0);
    heater.thermal = true;
    heater.at_night = at_night;
    box.lamps.push_back(heater);
}

Remedy room_remedy(const Miss& miss)
{
    const double room_c = miss.solved->room.room.temperature_c.likely;
    return miss.direction == Direction::below
               ? remedy("remedy.warmer-room", {{"to", room_c + miss.by_k, "degC"}, {"by", miss.by_k, "K"}})
               : remedy("remedy.cooler-room", {{"to", room_c - miss.by_k, "degC"}, {"by", miss.by_k, "K"}});
}

std::optional<Remedy> colder(const Search& search, const std::optional<Heater>& heater)
{
    const auto share = heater ? share_of_power(search, heater->id) : std::nullopt;
    if (!share) { // a colder room is no cure for a surface that burns
        return search.miss.touch ? std::nullopt : std::optional(room_remedy(search.miss));
    }
    const std::vector<Label> device{{"device", heater->id}};
    if (heater->control.kind == climate::ControlKind::dimmer) {
        return remedy("remedy.dim-device", {{"to", *share * heater->control.level, "1"}}, device);
    }
    if (heater->control.kind == climate::ControlKind::thermostat) {
        return remedy("remedy.set-thermostat", {{"to", heater->control.setpoint_c - search.miss.by_k, "degC"}}, device);
    }
    return remedy("remedy.weaker-device", {{"from", heater->power_w, "W"}, {"to", heater->power_w * *share, "W"}},
                  device);
}

Remedy warmer(const Search& search, const std::optional<Heater>& heater)
{
    const bool day = search.miss.solved->room.day;
    if (heater && heater->control.kind == climate::ControlKind::thermostat && heater->control.probe) {
        const auto is_it = [&](const climate::DeviceState& device) { return device.id == heater->id; };
        const auto& devices = search.miss.solved->result.devices;
        const auto state = std::find_if(devices.begin(), devices.end(), is_it);
        if (state != devices.end() && !state->saturated) { // it could give more, were it asked to
            return remedy("remedy.set-thermostat", {{"to", heater->control.setpoint_c + search.miss.by_k, "degC"}},
                          {{"device", heater->id}});
        }
    }
    if (heater) {
        const auto to_w = least_power(search, heater->power_w, [&](climate::Box& box, double power_w) {
            scale_power(box, heater->id, power_w / heater->power_w);
        });
        if (to_w) {
            return remedy("remedy.stronger-device", {{"from", heater->power_w, "W"}, {"to", *to_w, "W"}},
                          {{"device", heater->id}});
        }
    } else {
        const auto power_w =
            least_power(search, 0.0, [&](climate::Box& box, double watts) { add_ceramic(box, watts, !day); });
        if (power_w) {
            return day ? remedy("remedy.add-heat", {{"power", *power_w, "W"}})
                       : remedy("remedy.night-heat", {{"power", *power_w, "W"}});
        }
    }
    return room_remedy(search.miss);
}

bool is_worse(const Finding& left, const Finding& right)
{
    const auto amount = [](const Finding& finding) {
        return input_of(finding, finding.direction == Direction::below ? "short_by" : "over_by").value_or(0.0);
    };
    return gravity(left.verdict) > gravity(right.verdict) ||
           (left.verdict == right.verdict && amount(left) > amount(right));
}

bool alike(const Finding& left, const Finding& right)
{
    return left.code == right.code && left.direction == right.direction;
}

// Of each kind and direction the finding that misses by most.
std::vector<Finding> worst_of_each(const std::vector<Finding>& findings, const std::vector<SolvedCase>& cases)
{
    std::vector<Finding> worst;
    for (const Finding& finding : findings) {
        if (finding.remedy || !miss_of(finding, cases)) {
            continue;
        }
        const auto same =
            std::find_if(worst.begin(), worst.end(), [&](const Finding& one) { return alike(one, finding); });
        if (same == worst.end()) {
            worst.push_back(finding);
        } else if (is_worse(finding, *same)) {
            *same = finding;
        }
    }
    return worst;
}

std::optional<Remedy> cure(const Finding& finding, const Search& search)
{
    const SolvedCase& solved = *search.miss.solved;
    if (finding.code == "heat.heat-wave") {
        return room_remedy(search.miss);
    }
    const auto heater = heater_of(solved.box, solved.room.day);
    return search.miss.direction == Direction::below ? warmer(search, heater) : colder(search, heater);
}

} // namespace

// One search for each kind and direction, for the case that misses by most; what cures it cures the others.
bool add_heat_remedies(Notes& notes, const std::vector<SolvedCase>& cases, const climate::Workspace& workspace,
                       std::stop_token stop)
{
    const std::vector<Finding> worst = worst_of_each(notes.findings, cases);
    std::vector<std::optional<Remedy>> found(worst.size());
    side_by_side(worst.size(), [&](std::size_t i) {
        climate::Workspace own = workspace;
        const auto miss = miss_of(worst[i], cases);
        found[i] = cure(worst[i], {own, stop, *miss});
    });
    if (stop.stop_requested()) {
        return false;
    }
    for (Finding& finding : notes.findings) {
        for (std::size_t i = 0; i < worst.size(); ++i) {
            if (alike(finding, worst[i])) {
                finding.remedy = found[i];
            }
        }
    }
    return true;
}

} // namespace loam::assess
