#include "core/suggest/tuning.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/assess/sold_powers.hpp"

namespace loam::suggest {

namespace {

using Cases = std::vector<std::string_view>;

const Cases winter_day{"winter-day"};
const Cases winter_night{"winter-night"};
const Cases all_cases{"winter-day", "winter-night", "summer-day", "summer-night"};

// The least that is sold with a reserve over what it draws; the strongest where none is.
double sold_for(plan::DeviceKind kind, double drawn_w, double reserve)
{
    const auto sold = assess::powers_sold(kind);
    const auto enough = std::lower_bound(sold.begin(), sold.end(), drawn_w * reserve);
    return enough == sold.end() ? sold.back() : *enough;
}

} // namespace

bool Tuning::learn_peak(const Outfit& outfit)
{
    if (!wanted_.basking) {
        return true;
    }
    Outfit burning = outfit; // at the power that the dimmer lets through: turned anew, both would read the same
    if (outfit.lamp && outfit.lamp->dimmed) {
        const auto turned = in(outfit, winter_day);
        const auto drawn_w = turned ? turned->drawn_w("winter-day", ids_.lamp) : std::nullopt;
        if (!drawn_w) {
            return false;
        }
        burning.lamp = Lamp{std::max(1.0, *drawn_w), false};
    }
    const auto plan = wearing(burning);
    const auto spread = in(burning, winter_day);
    Starts fresh;
    const auto sharp =
        plan ? quick_climate(*plan, catalog_, place_, winter_day, fresh, stop_, {.cells = {}}) : std::nullopt;
    if (!spread || !sharp) {
        return false;
    }
    peak_k_ += sharp->results.front().basking.surface_c.likely - spread->results.front().basking.surface_c.likely;
    return true;
}

namespace {

double slack_k(double reading_c, const std::optional<Target>& target)
{
    return target ? inside(exactly(reading_c), *target).least() : std::numeric_limits<double>::infinity();
}

// By how much the summer room is warmer; what is not known counts as no difference here, and is looked at later.
double warmer_in_summer_k(const plan::Room& room)
{
    return room.winter.day_c && room.summer.day_c ? std::max(0.0, *room.summer.day_c - *room.winter.day_c) : 0.0;
}

} // namespace

// Every pair of powers on a grid, by the worst of its slacks. A heater's thermostat answers to the season; a lamp that
// just burns does not, and a dimmed one holds the basking spot in the middle of its band.
Powers Tuning::best_powers(const Family& family, const Straight& readings) const
{
    constexpr double step_w = 2.0;
    constexpr int heater_steps = 100;    // to 200 W
    constexpr double follows_room = 0.9; // a reading over the room's, since some of the heat leaves as T^4
    const double warmer_k = follows_room * warmer_in_summer_k(plan_.site.room);
    const auto sold = assess::powers_sold(plan::DeviceKind::flood_lamp);
    Powers best{0.0, 0.0, -1e9};
    const auto look = [&](double lamp_w, double heater_w) {
        const double basking_c = readings.basking.at(lamp_w, heater_w);
        double least_k = std::min(slack_k(readings.warm.at(lamp_w, heater_w), wanted_.warm),
                                  slack_k(readings.cool.at(lamp_w, heater_w), wanted_.cool));
        if (family.lamp) {
            least_k = std::min(least_k, slack_k(basking_c, wanted_.basking));
            least_k = family.dimmed ? least_k : std::min(least_k, slack_k(basking_c + warmer_k, wanted_.basking));
        }
        constexpr double worth_k = 0.02; // for less no more power
        if (least_k > best.least_k + worth_k) {
            best = {lamp_w, heater_w, least_k};
        }
    };
    for (int step = 0; step <= (family.heater ? heater_steps : 0); ++step) {
        const double heater_w = step * step_w;
        if (!family.lamp) {
            look(0.0, heater_w);
        } else if (family.dimmed) {
            const double short_c = middle(*wanted_.basking) - readings.basking.at(0.0, heater_w);
            look(std::clamp(short_c / std::max(1e-3, readings.basking.per_lamp_w), 0.0, sold.back()), heater_w);
        } else {
            for (const double lamp_w : sold) {
                look(lamp_w, heater_w);
            }
        }
    }
    return best;
}

// Lamp and heater together: both warm every place. From the slopes of finite steps, used twice.
bool Tuning::size(Outfit& outfit, const Family& family)
{
    const bool lamp = family.lamp;
    const bool heater = family.heater.has_value();
    const auto at = [&](double lamp_w, double heater_w) -> std::optional<climate::CaseResult> {
        Outfit plain = outfit;
        plain.lamp = lamp ? std::optional(Lamp{std::max(1.0, lamp_w), false}) : std::nullopt;
        plain.day =
            heater ? std::optional(Heater{*family.heater, std::max(1.0, heater_w), std::nullopt}) : std::nullopt;
        auto tried = in(plain, winter_day);
        return tried ? std::optional(std::move(tried->results.front())) : std::nullopt;
    };
    Powers now{lamp ? 60.0 : 0.0, heater ? 50.0 : 0.0, 0.0};
    Straight readings;
    for (int round = 0; round < 2; ++round) {
        constexpr double step_w = 20.0;
        const auto here = at(now.lamp_w, now.heater_w);
        const auto lit = lamp ? at(now.lamp_w + step_w, now.heater_w) : here;
        const auto heated = heater ? at(now.lamp_w, now.heater_w + step_w) : here;
        if (!here || !lit || !heated) {
            return false;
        }
        const auto line = [&](double here_c, double lit_c, double heated_c) {
            Line made{0.0, (lit_c - here_c) / step_w, (heated_c - here_c) / step_w};
            made.at_none_c = here_c - made.at(now.lamp_w, now.heater_w);
            return made;
        };
        readings = {
            line(here->basking.surface_c.likely, lit->basking.surface_c.likely, heated->basking.surface_c.likely),
            line(here->warm.ground_c.likely, lit->warm.ground_c.likely, heated->warm.ground_c.likely),
            line(here->cool.ground_c.likely, lit->cool.ground_c.likely, heated->cool.ground_c.likely)};
        now = best_powers(family, readings);
    }
    if (lamp) {
        constexpr double spare = 1.15; // for the low end of the room, where it is turned down anyway
        outfit.lamp =
            Lamp{sold_for(plan::DeviceKind::flood_lamp, now.lamp_w, family.dimmed ? spare : 1.0), family.dimmed};
    }
    constexpr double least_w = 3.0; // less is no heater
    outfit.day.reset();
    if (heater && now.heater_w >= least_w) {
        constexpr double reserve = 1.25;
        const double warm_c = readings.warm.at(now.lamp_w, now.heater_w);
        outfit.day = Heater{*family.heater, sold_for(*family.heater, now.heater_w, reserve), warm_c};
        return set_thermostat(outfit, warm_c);
    }
    return true;
}

// The set-point follows the zone: the probe lies elsewhere on the warm side than the zone is read.
bool Tuning::set_thermostat(Outfit& outfit, double warm_c)
{
    for (int round = 0; round < 2; ++round) {
        const auto tried = in(outfit, winter_day);
        if (!tried) {
            return false;
        }
        constexpr double most_k = 6.0;
        const double short_k = warm_c - tried->results.front().warm.ground_c.likely;
        *outfit.day->setpoint_c += std::clamp(short_k, -most_k, most_k);
    }
    constexpr double step_c = 0.1; // as thermostats are set
    *outfit.day->setpoint_c = step_c * std::round(*outfit.day->setpoint_c / step_c);
    return true;
}

bool Tuning::warm_by_night(Outfit& outfit)
{
    outfit.night.reset();
    const auto without = in(outfit, winter_night);
    if (!without) {
        return false;
    }
    const auto cold = std::find_if(without->slacks.begin(), without->slacks.end(),
                                   [](const Slack& one) { return one.zone && one.below_k < 1.0; });
    if (cold == without->slacks.end() || !wanted_.night) {
        return true;
    }
    // Without light, all of them. A mat is on by night already and did not do it.
    const bool overhead = outfit.day && outfit.day->kind != plan::DeviceKind::heat_mat;
    const auto kind = overhead ? outfit.day->kind : plan::DeviceKind::ceramic_heater;
    outfit.night = Heater{kind, assess::powers_sold(kind).back(), middle(*wanted_.night)};
    const auto tried = in(outfit, winter_night);
    const auto drawn_w = tried ? tried->drawn_w("winter-night", ids_.night) : std::nullopt;
    if (!drawn_w) {
        return false;
    }
    constexpr double reserve = 1.4;
    outfit.night->power_w = sold_for(kind, *drawn_w, reserve);
    return true;
}

// The least of a few amounts that holds both days; where none does, the one that misses least.
bool Tuning::mist(Outfit& outfit)
{
    const double floor_m2 = plan_.enclosures.at(place_).shell.length_m * plan_.enclosures.at(place_).shell.width_m;
    constexpr std::array l_per_m2{0.0, 0.1, 0.2, 0.35, 0.6, 1.0};
    double best_k = -1e9;
    double best_l = 0.0;
    for (const double amount : l_per_m2) {
        constexpr double step_l = 0.01;
        outfit.misting_l_per_day = step_l * std::round(amount * floor_m2 / step_l);
        const auto tried = in(outfit, all_cases);
        if (!tried) {
            return false;
        }
        double slack_k = 1e9;
        double dry_k = 1e9;
        for (const Slack& one : tried->slacks) {
            if (!one.zone) {
                slack_k = std::min(slack_k, one.least());
                dry_k = std::min(dry_k, one.below_k);
            }
        }
        if (slack_k > best_k) {
            best_k = slack_k;
            best_l = outfit.misting_l_per_day;
        }
        constexpr double enough_k = 1.0; // five per cent inside
        if (slack_k > enough_k || slack_k < dry_k) {
            break; // good, or too damp at the other end by now
        }
    }
    outfit.misting_l_per_day = best_l;
    return true;
}

std::optional<Found> Tuning::look_at(const Outfit& outfit, double no_use_from)
{
    auto plan = wearing(outfit);
    const auto climate = plan ? of(*plan, all_cases, no_use_from) : std::nullopt;
    if (!climate) {
        return std::nullopt;
    }
    Found found{.outfit = outfit,
                .plan = std::move(*plan),
                .margin_k = climate->margin_k(),
                .missed_k = climate->missed_k(),
                .strain = climate->strain(),
                .peak_k = peak_k_};
    for (const climate::CaseResult& result : climate->results) {
        const bool day = result.id.ends_with("-day");
        for (const climate::DeviceState& device : result.devices) {
            (day ? found.mean_day_w : found.mean_night_w) += 0.5 * device.power_w.likely;
        }
    }
    return found;
}

std::optional<Found> Tuning::tune(const Family& family)
{
    Outfit outfit;
    outfit.covered_share = family.covered_share;
    const auto heat = [&] { return size(outfit, family) && warm_by_night(outfit); };
    if (!heat() || !learn_peak(outfit) || !mist(outfit) || !heat()) { // water cools, so what heats is sized again
        return std::nullopt;
    }
    return learn_peak(outfit) ? look_at(outfit) : std::nullopt;
}

namespace {

// The neighbours in the list of what is sold.
std::vector<double> next_powers(plan::DeviceKind kind, double power_w)
{
    const auto sold = assess::powers_sold(kind);
    std::vector<double> next;
    const auto at = std::lower_bound(sold.begin(), sold.end(), power_w);
    if (at != sold.begin()) {
        next.push_back(*(at - 1));
    }
    if (at != sold.end() && at + 1 != sold.end()) {
        next.push_back(*(at + 1));
    }
    return next;
}

std::vector<Outfit> neighbours(const Outfit& outfit)
{
    std::vector<Outfit> all;
    const auto add = [&](const auto& change) {
        Outfit next = outfit;
        change(next);
        all.push_back(next);
    };
    for (const double step : {-0.1, 0.1}) {
        add([&](Outfit& next) { next.covered_share = std::clamp(next.covered_share + step, 0.0, 0.75); });
    }
    for (const double step_l : {0.02, -0.02, 0.1, -0.1}) {
        add([&](Outfit& next) { next.misting_l_per_day = std::max(0.0, next.misting_l_per_day + step_l); });
    }
    if (outfit.lamp) {
        for (const double power_w : next_powers(plan::DeviceKind::flood_lamp, outfit.lamp->power_w)) {
            add([&](Outfit& next) { next.lamp->power_w = power_w; });
        }
    }
    if (outfit.lamp && outfit.day) { // more of the one for less of the other
        for (const double power_w : next_powers(plan::DeviceKind::flood_lamp, outfit.lamp->power_w)) {
            for (const double step_c : {0.3, 0.8}) {
                add([&](Outfit& next) {
                    *next.day->setpoint_c += power_w > outfit.lamp->power_w ? -step_c : step_c;
                    next.lamp->power_w = power_w;
                });
            }
        }
    }
    if (outfit.day) {
        for (const double step_c : {-0.2, 0.2, -0.6, 0.6}) {
            add([&](Outfit& next) { *next.day->setpoint_c += step_c; });
        }
        for (const double power_w : next_powers(outfit.day->kind, outfit.day->power_w)) {
            add([&](Outfit& next) { next.day->power_w = power_w; });
        }
    }
    return all;
}

} // namespace

// The first step that helps is taken, and the next kinds of step go on from there.
void Tuning::step_on(Found& found, int& most_looks, bool& better)
{
    constexpr double worth_it = 0.01;
    std::size_t tried = 0;
    for (std::vector<Outfit> steps = neighbours(found.outfit); tried < steps.size(); ++tried) {
        if (steps[tried] == found.outfit || found.strain == 0.0 || most_looks <= 0) {
            continue;
        }
        --most_looks;
        auto next = look_at(steps[tried], found.strain - worth_it);
        if (next) {
            found = std::move(*next);
            steps = neighbours(found.outfit);
            better = true;
        }
    }
}

Found Tuning::refined(Found found, int most_looks)
{
    peak_k_ = found.peak_k;
    for (bool better = true; better && found.strain > 0.0;) {
        better = false;
        step_on(found, most_looks, better);
        // What was known of the peak belonged to the outfit before.
        const auto again = better && learn_peak(found.outfit) ? look_at(found.outfit) : std::nullopt;
        found = again ? *again : found;
    }
    return found;
}

Found Tuning::polished(Found found, int most_looks)
{
    cells_ = climate::Resolution{};
    peak_k_ = 0.0;
    starts_ = {};
    const auto sharp = look_at(found.outfit);
    found = sharp ? *sharp : found;
    constexpr double far_off_k = 2.0; // steps of tenths don't bridge kelvins
    for (bool better = found.missed_k < far_off_k; better && found.strain > 0.0;) {
        better = false;
        step_on(found, most_looks, better);
    }
    return found;
}

} // namespace loam::suggest
