#include "core/assess/heat_devices.hpp"

#include <algorithm>
#include <vector>

#include "core/assess/heat_distance.hpp"
#include "core/assess/sold_powers.hpp"

namespace loam::assess {

namespace {

// The device that bears most on the miss: by day the strongest lamp (else mat), by night what is on at night.
struct Heater {
    HeatSource source;
    double power_w = 0.0;
    climate::Control control;
    bool is(climate::ControlKind kind) const { return control.kind == kind; }
    // A control that does not suit its kind has to go (a finding of its own), so no remedy builds on it.
    bool well_controlled() const
    {
        return is(climate::ControlKind::none) ||
               (is(climate::ControlKind::dimmer) ? source.takes_dimmer : source.takes_thermostat);
    }
};

// All that are on, the strongest first; mats only where no lamp is.
std::vector<Heater> heaters_of(const SolvedCase& solved)
{
    const climate::Box& box = solved.box;
    const bool day = solved.room.day;
    std::vector<Heater> on;
    const auto consider = [&](const auto& device, bool is_on) {
        const auto source = std::find_if(solved.heaters.begin(), solved.heaters.end(),
                                         [&](const HeatSource& one) { return one.id == device.id; });
        if (is_on && source != solved.heaters.end()) {
            on.push_back({*source, device.power_w.likely, device.control});
        }
    };
    for (const climate::Lamp& lamp : box.lamps) {
        consider(lamp, day || lamp.at_night);
    }
    if (on.empty()) {
        for (const climate::Mat& mat : box.mats) {
            consider(mat, day || mat.at_night);
        }
    }
    std::stable_sort(on.begin(), on.end(),
                     [](const Heater& left, const Heater& right) { return left.power_w > right.power_w; });
    return on;
}

void take_control_off(climate::Box& box, const std::string& device)
{
    for (climate::Lamp& lamp : box.lamps) {
        lamp.control = lamp.id == device ? climate::Control{} : lamp.control;
    }
    for (climate::Mat& mat : box.mats) {
        mat.control = mat.id == device ? climate::Control{} : mat.control;
    }
}

// At another power, and without a control that does not suit it.
void set_power(climate::Box& box, const Heater& heater, double power_w)
{
    scale_power(box, heater.source.id, power_w / heater.power_w);
    if (!heater.well_controlled()) {
        take_control_off(box, heater.source.id);
    }
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
        const auto tried = search.with([&](climate::Box& box) { set_setpoint(box, heater.source.id, to_c); });
        const double answered = tried ? (search.reading(*tried) - now_c) / by_k : 0.0;
        if (answered >= enough) {
            return search.spoils(*tried) ? std::nullopt
                                         : std::optional(remedy("remedy.set-thermostat", {{"to", to_c, "degC"}},
                                                                device_label(heater.source.id)));
        }
        if (answered < deaf) {
            return std::nullopt;
        }
        to_c = heater.control.setpoint_c + by_k / answered;
    }
    return std::nullopt;
}

// The strongest power in which its kind is sold that brings the reading down far enough.
std::optional<Remedy> weaker(const Search& search, const Heater& heater)
{
    const auto sold = powers_sold(heater.source.kind);
    std::size_t low = 0; // of those that are weaker, so many are weak enough
    std::size_t high =
        static_cast<std::size_t>(std::lower_bound(sold.begin(), sold.end(), heater.power_w) - sold.begin());
    while (low < high) {
        const std::size_t middle = (low + high + 1) / 2;
        const auto tried = search.with([&](climate::Box& box) { set_power(box, heater, sold[middle - 1]); });
        if (!tried) {
            return std::nullopt;
        }
        if (search.reading(*tried) <= search.wanted()) {
            low = middle;
        } else {
            high = middle - 1;
        }
    }
    if (low == 0) {
        return std::nullopt;
    }
    const double to_w = sold[low - 1];
    const auto found = search.with([&](climate::Box& box) { set_power(box, heater, to_w); });
    if (!found || search.spoils(*found)) {
        return std::nullopt;
    }
    return remedy("remedy.weaker-device", {{"from", heater.power_w, "W"}, {"to", to_w, "W"}},
                  device_label(heater.source.id));
}

std::optional<Remedy> dimmed(const Search& search, const Heater& heater)
{
    const auto share = share_of_power(search, heater.source.id);
    const auto tried =
        share ? search.with([&](climate::Box& box) { scale_power(box, heater.source.id, *share); }) : std::nullopt;
    if (!tried || search.spoils(*tried)) {
        return std::nullopt;
    }
    return remedy("remedy.dim-device", {{"to", *share * heater.control.level, "1"}}, device_label(heater.source.id));
}

std::optional<Remedy> colder(const Search& search, const std::optional<Heater>& heater)
{
    if (!heater) {
        return std::nullopt;
    }
    if (heater->is(climate::ControlKind::thermostat) && heater->well_controlled() && !search.miss.touch) {
        return other_setpoint(search, *heater, -search.miss.by_k);
    }
    return heater->is(climate::ControlKind::dimmer) && heater->well_controlled() ? dimmed(search, *heater)
                                                                                 : weaker(search, *heater);
}

bool could_give_more(const SolvedCase& solved, const Heater& heater)
{
    const auto& devices = solved.result.devices;
    const auto state =
        std::find_if(devices.begin(), devices.end(), [&](const auto& one) { return one.id == heater.source.id; });
    return state != devices.end() && !state->saturated;
}

// First what is there: its setpoint, then its power; then one heater more.
std::optional<Remedy> warmer(const Search& search, const std::optional<Heater>& heater)
{
    if (heater && heater->is(climate::ControlKind::thermostat) && heater->well_controlled() && heater->control.probe &&
        could_give_more(*search.miss.solved, *heater)) {
        if (auto found = other_setpoint(search, *heater, search.miss.by_k)) {
            return found;
        }
    } else if (heater) {
        const auto to_w = least_power(search, heater->source.kind, heater->power_w,
                                      [&](climate::Box& box, double power_w) { set_power(box, *heater, power_w); });
        if (to_w) {
            return remedy("remedy.stronger-device", {{"from", heater->power_w, "W"}, {"to", *to_w, "W"}},
                          device_label(heater->source.id));
        }
    }
    const bool day = search.miss.solved->room.day;
    const auto power_w = least_power(search, plan::DeviceKind::ceramic_heater, 0.0,
                                     [&](climate::Box& box, double watts) { add_ceramic(box, watts, !day); });
    if (!power_w) {
        return std::nullopt;
    }
    return day ? remedy("remedy.add-heat", {{"power", *power_w, "W"}})
               : remedy("remedy.night-heat", {{"power", *power_w, "W"}});
}

} // namespace

std::optional<Remedy> cure_by_device(const Search& search)
{
    const std::vector<Heater> heaters = heaters_of(*search.miss.solved);
    if (search.miss.touch && !search.miss.perch.empty()) {
        std::vector<Remedy> by_power;
        for (const Heater& heater : heaters) {
            if (auto found = colder(search, heater)) {
                by_power.push_back(*std::move(found));
            }
        }
        return least_for_perch(search, by_power);
    }
    const auto strongest = heaters.empty() ? std::nullopt : std::optional(heaters.front());
    return search.miss.direction == Direction::below ? warmer(search, strongest) : colder(search, strongest);
}

} // namespace loam::assess
