#include <algorithm>

#include "core/assess/heat_choice.hpp"
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
    } else if (finding.code == "danger.lamp-dried-surface" || finding.code == "danger.touch-burn") {
        miss.touch = true;
    } else if (finding.code == "danger.no-escape-from-heat") {
        miss.zone = Zone::cool;
    } else if (finding.code != "heat.warm-side" && finding.code != "danger.no-escape-from-cold") {
        return std::nullopt;
    }
    const bool drill = miss.solved != nullptr && miss.solved->room.fault != climate::Fault::none;
    return miss.solved != nullptr && !drill && miss.by_k > 0.0 ? std::optional(miss) : std::nullopt;
}

// The device that bears most on the miss: by day the strongest lamp (else mat), by night what is on at night.
struct Heater {
    std::string id;
    double power_w = 0.0;
    climate::Control control;
};

std::optional<Heater> heater_of(const SolvedCase& solved)
{
    const climate::Box& box = solved.box;
    const bool day = solved.room.day;
    const auto heats = [&](const std::string& id) {
        return std::find(solved.heaters.begin(), solved.heaters.end(), id) != solved.heaters.end();
    };
    std::optional<Heater> best;
    const auto consider = [&](const std::string& id, double power_w, const climate::Control& control, bool is_on) {
        if (is_on && heats(id) && (!best || power_w > best->power_w)) {
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

std::vector<Label> device_label(const std::string& id)
{
    return {{"device", id}};
}

void set_setpoint(climate::Box& box, const std::string& device, double setpoint_c)
{
    for (climate::Lamp& lamp : box.lamps) {
        lamp.control.setpoint_c = lamp.id == device ? setpoint_c : lamp.control.setpoint_c;
    }
    for (climate::Mat& mat : box.mats) {
        mat.control.setpoint_c = mat.id == device ? setpoint_c : mat.control.setpoint_c;
    }
}

// The setpoint moved by what is missing, where that leaves the other zones as well off.
std::optional<Remedy> other_setpoint(const Search& search, const Heater& heater, double by_k)
{
    const double to_c = heater.control.setpoint_c + by_k;
    const auto tried = search.with([&](climate::Box& box) { set_setpoint(box, heater.id, to_c); });
    if (!tried || search.spoils(*tried)) {
        return std::nullopt;
    }
    return remedy("remedy.set-thermostat", {{"to", to_c, "degC"}}, device_label(heater.id));
}

std::optional<Remedy> colder(const Search& search, const std::optional<Heater>& heater)
{
    const auto share = heater ? share_of_power(search, heater->id) : std::nullopt;
    if (!share) {
        return std::nullopt;
    }
    if (heater->control.kind == climate::ControlKind::thermostat && !search.miss.touch) {
        return other_setpoint(search, *heater, -search.miss.by_k);
    }
    const bool dims = heater->control.kind == climate::ControlKind::dimmer;
    const auto to_w = dims ? std::optional(heater->power_w * *share) : sold_at_most(heater->power_w * *share);
    const auto tried =
        to_w ? search.with([&](climate::Box& box) { scale_power(box, heater->id, *to_w / heater->power_w); })
             : std::nullopt;
    if (!tried || search.spoils(*tried)) {
        return std::nullopt;
    }
    return dims ? remedy("remedy.dim-device", {{"to", *share * heater->control.level, "1"}}, device_label(heater->id))
                : remedy("remedy.weaker-device", {{"from", heater->power_w, "W"}, {"to", *to_w, "W"}},
                         device_label(heater->id));
}

bool could_give_more(const SolvedCase& solved, const Heater& heater)
{
    const auto& devices = solved.result.devices;
    const auto state =
        std::find_if(devices.begin(), devices.end(), [&](const auto& one) { return one.id == heater.id; });
    return state != devices.end() && !state->saturated;
}

// First what is there: its setpoint, then its power; then one heater more.
std::optional<Remedy> warmer(const Search& search, const std::optional<Heater>& heater)
{
    if (heater && heater->control.kind == climate::ControlKind::thermostat && heater->control.probe &&
        could_give_more(*search.miss.solved, *heater)) {
        if (auto found = other_setpoint(search, *heater, search.miss.by_k)) {
            return found;
        }
    } else if (heater) {
        const auto to_w = least_power(search, heater->power_w, [&](climate::Box& box, double power_w) {
            scale_power(box, heater->id, power_w / heater->power_w);
        });
        if (to_w) {
            return remedy("remedy.stronger-device", {{"from", heater->power_w, "W"}, {"to", *to_w, "W"}},
                          device_label(heater->id));
        }
    }
    const bool day = search.miss.solved->room.day;
    const auto power_w =
        least_power(search, 0.0, [&](climate::Box& box, double watts) { add_ceramic(box, watts, !day); });
    if (!power_w) {
        return std::nullopt;
    }
    return day ? remedy("remedy.add-heat", {{"power", *power_w, "W"}})
               : remedy("remedy.night-heat", {{"power", *power_w, "W"}});
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
        if (finding.remedy || !miss_of(finding, cases) || finding.code == "heat.heat-wave" ||
            finding.code == "danger.no-escape-from-heat") { // in a heat wave only a cooler room helps
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

} // namespace

// One search for each kind and direction, for the case that misses by most; what cures it cures the others. Where no
// device does, each case is told of its own room.
bool add_heat_remedies(Notes& notes, const std::vector<HeatCase>& heat, const std::vector<SolvedCase>& cases,
                       const climate::Workspace& workspace, std::stop_token stop)
{
    const auto judged = [&](const Miss& miss) {
        const auto found =
            std::find_if(heat.begin(), heat.end(), [&](const HeatCase& one) { return one.id == miss.solved->room.id; });
        return found == heat.end() ? nullptr : &*found;
    };
    const std::vector<Finding> worst = worst_of_each(notes.findings, cases);
    std::vector<Choice> found(worst.size());
    side_by_side(worst.size(), [&](std::size_t i) {
        climate::Workspace own = workspace;
        const auto miss = miss_of(worst[i], cases);
        const Search search{own, stop, *miss, judged(*miss)};
        const auto heater = heater_of(*miss->solved);
        const bool cold = miss->direction == Direction::below;
        found[i] = {miss->direction, miss->solved->room.id, cold ? warmer(search, heater) : colder(search, heater),
                    miss->touch};
    });
    if (stop.stop_requested()) {
        return false;
    }
    agree(found);
    for (Finding& finding : notes.findings) {
        const auto miss = finding.remedy ? std::nullopt : miss_of(finding, cases);
        if (!miss) {
            continue;
        }
        for (std::size_t i = 0; i < worst.size(); ++i) {
            if (alike(finding, worst[i])) {
                finding.remedy = found[i].remedy;
            }
        }
        if (!finding.remedy) {
            climate::Workspace unused;
            finding.remedy = without_devices({unused, stop, *miss, judged(*miss)}, finding);
        }
    }
    return true;
}

} // namespace loam::assess
