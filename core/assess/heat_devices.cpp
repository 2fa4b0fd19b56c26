#include "core/assess/heat_devices.hpp"

#include <algorithm>

namespace loam::assess {

namespace {

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

// The setpoint moved until the reading has moved by what is missing, where that leaves the other zones as well off. Far
// from the probe a reading follows by less than the setpoint moves, so the second step goes by what the first did.
std::optional<Remedy> other_setpoint(const Search& search, const Heater& heater, double by_k)
{
    constexpr double enough = 0.95;
    constexpr double deaf = 0.2; // it hangs on something else
    const double now_c = search.reading(search.miss.solved->result);
    double to_c = heater.control.setpoint_c + by_k;
    for (int step = 0; step < 2; ++step) {
        const auto tried = search.with([&](climate::Box& box) { set_setpoint(box, heater.id, to_c); });
        const double answered = tried ? (search.reading(*tried) - now_c) / by_k : 0.0;
        if (answered >= enough) {
            return search.spoils(*tried) ? std::nullopt
                                         : std::optional(remedy("remedy.set-thermostat", {{"to", to_c, "degC"}},
                                                                device_label(heater.id)));
        }
        if (answered < deaf) {
            return std::nullopt;
        }
        to_c = heater.control.setpoint_c + by_k / answered;
    }
    return std::nullopt;
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

} // namespace

std::optional<Remedy> cure_by_device(const Search& search)
{
    const auto heater = heater_of(*search.miss.solved);
    return search.miss.direction == Direction::below ? warmer(search, heater) : colder(search, heater);
}

} // namespace loam::assess
