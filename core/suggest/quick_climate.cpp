#include "core/suggest/quick_climate.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <variant>

namespace loam::suggest {

namespace {

Slack slack(const std::string& case_id, std::optional<assess::Zone> zone, double reading, const Target& target,
            double scale)
{
    return {inside(exactly(reading), target, scale), case_id, zone};
}

void add_slacks(const assess::Context& context, const assess::Housed& housed, const climate::Case& room,
                const climate::CaseResult& result, std::vector<Slack>& slacks)
{
    for (const catalog::Species* species : assess::species_in(housed.enclosure, context.catalog)) {
        for (const assess::ZoneTarget& target : assess::zone_targets(*species, room)) {
            const double reading_c = assess::zone_reading(result, target.zone, target.measure).likely;
            slacks.push_back(slack(room.id, target.zone, reading_c, target.target_c, 1.0));
        }
        slacks.push_back(slack(room.id, std::nullopt, result.ground_humidity.likely,
                               assess::wanted_humidity(housed, *species), humidity_k));
    }
}

void turn(climate::Box& box, const std::vector<std::string>& dimmers, double level)
{
    for (climate::Lamp& lamp : box.lamps) {
        if (std::find(dimmers.begin(), dimmers.end(), lamp.id) != dimmers.end()) {
            lamp.control.level = level;
        }
    }
}

// What the dimmers that the keeper turns are turned for: the middle of the basking spot's band.
std::optional<double> turned_for_c(const assess::Context& context, const assess::Housed& housed,
                                   const climate::Case& room)
{
    for (const catalog::Species* species : assess::species_in(housed.enclosure, context.catalog)) {
        for (const assess::ZoneTarget& target : assess::zone_targets(*species, room)) {
            if (target.zone == assess::Zone::basking && target.target_c.min && target.target_c.max) {
                return 0.5 * (*target.target_c.min + *target.target_c.max);
            }
        }
    }
    return std::nullopt;
}

// The box with its dimmers at a level, solved.
class Turning {
public:
    Turning(climate::Box box, const std::vector<std::string>& dimmers, const climate::Case& room,
            climate::Workspace& workspace, const std::stop_token& stop, const Fineness& fineness)
        : box_(std::move(box)), dimmers_(dimmers), room_(room), workspace_(workspace), stop_(stop), fineness_(fineness)
    {
    }

    // Reads the basking spot; false: no solution.
    bool at(double level)
    {
        turn(box_, dimmers_, level);
        result = climate::solve_likely(box_, room_, workspace_, stop_, fineness_.cells);
        if (result) {
            result->basking.surface_c.likely += fineness_.peak_k;
            reading_c = result->basking.surface_c.likely;
        }
        return result.has_value();
    }

    std::optional<climate::CaseResult> result;
    double reading_c = 0.0;

private:
    climate::Box box_;
    const std::vector<std::string>& dimmers_;
    const climate::Case& room_;
    climate::Workspace& workspace_;
    const std::stop_token& stop_;
    const Fineness& fineness_;
};

constexpr double close_k = 0.1;

// Readings are nearly straight in the level: along the line through nought and the last level tried. False: no
// solution.
bool turn_from_full(Turning& turning, double wanted_c, Turned& turned)
{
    turned = {};
    if (!turning.at(1.0) || turning.reading_c <= wanted_c) {
        return turning.result.has_value();
    }
    const double full_c = turning.reading_c;
    if (!turning.at(0.0)) {
        return false;
    }
    const double dark_c = turning.reading_c;
    turning.reading_c = full_c;
    constexpr int most_rounds = 4;
    for (int round = 0;
         round < most_rounds && turning.reading_c > dark_c && std::abs(turning.reading_c - wanted_c) > close_k;
         ++round) {
        turned.c_per_level = (turning.reading_c - dark_c) / turned.level;
        turned.level = std::clamp((wanted_c - dark_c) / turned.c_per_level, 0.0, 1.0);
        if (!turning.at(turned.level)) {
            return false;
        }
    }
    return true;
}

// From where the outfit before stood: mostly a step or two. False: no solution, or it is not to be had this way.
bool turn_on(Turning& turning, double wanted_c, Turned& turned)
{
    constexpr int most_rounds = 3;
    if (turned.c_per_level <= 0.0 || !turning.at(turned.level)) {
        return false;
    }
    for (int round = 0; round < most_rounds; ++round) {
        const double level = std::clamp(turned.level + (wanted_c - turning.reading_c) / turned.c_per_level, 0.0, 1.0);
        if (std::abs(turning.reading_c - wanted_c) <= close_k || level == turned.level) {
            return true;
        }
        turned.level = level;
        if (!turning.at(level)) {
            return false;
        }
    }
    return std::abs(turning.reading_c - wanted_c) <= close_k;
}

std::optional<climate::CaseResult> solve_turned(const climate::Box& box, const std::vector<std::string>& dimmers,
                                                std::optional<double> wanted_c, const climate::Case& room,
                                                Starts& starts, const std::stop_token& stop, const Fineness& fineness)
{
    Turning turning(box, dimmers, room, starts.workspace, stop, fineness);
    if (!room.day || dimmers.empty() || !wanted_c) {
        turning.at(1.0);
        return std::move(turning.result);
    }
    Turned& turned = starts.turned[room.id];
    if (!turn_on(turning, *wanted_c, turned)) {
        turn_from_full(turning, *wanted_c, turned);
    }
    return std::move(turning.result);
}

} // namespace

Inside inside(const Range& reading, const Target& target, double scale)
{
    constexpr double open = std::numeric_limits<double>::infinity();
    return {target.min ? scale * (reading.low - *target.min) : open,
            target.max ? scale * (*target.max - reading.high) : open};
}

double QuickClimate::margin_k() const
{
    double least = std::numeric_limits<double>::infinity();
    for (const Slack& one : slacks) {
        least = std::min(least, one.least());
    }
    return least;
}

double QuickClimate::missed_k() const
{
    double sum = 0.0;
    for (const Slack& one : slacks) {
        sum += std::max(0.0, -one.least());
    }
    return sum;
}

double QuickClimate::strain() const
{
    constexpr double inside_k = 0.6;
    constexpr double outside_weighs = 10.0; // a miss is not made good by comfort elsewhere
    double sum = 0.0;
    for (const Slack& one : slacks) {
        const double lacks_k = std::max(0.0, inside_k - one.least());
        sum += lacks_k * lacks_k + outside_weighs * std::max(0.0, -one.least());
    }
    return sum;
}

const climate::CaseResult* QuickClimate::result(std::string_view id) const
{
    const auto found = std::find_if(results.begin(), results.end(), [&](const auto& one) { return one.id == id; });
    return found == results.end() ? nullptr : &*found;
}

std::optional<double> QuickClimate::drawn_w(std::string_view id, const std::string& device) const
{
    if (const climate::CaseResult* in = result(id)) {
        for (const climate::DeviceState& state : in->devices) {
            if (state.id == device) {
                return state.power_w.likely;
            }
        }
    }
    return std::nullopt;
}

std::optional<QuickClimate> quick_climate(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place,
                                          const std::vector<std::string_view>& cases, Starts& starts,
                                          std::stop_token stop, const Fineness& fineness)
{
    const assess::Context context{plan, catalog, {}};
    const assess::Housed housed{plan.enclosures.at(place), place};
    assess::Notes unused;
    const auto made = assess::climate_box(context, housed, unused);
    const auto* set_up = std::get_if<assess::ClimateBox>(&made);
    if (set_up == nullptr) {
        return std::nullopt;
    }
    QuickClimate quick;
    for (const climate::Case& room : assess::climate_cases(context, set_up->box, unused)) {
        if (std::find(cases.begin(), cases.end(), room.id) == cases.end()) {
            continue;
        }
        auto result = solve_turned(set_up->box, set_up->free_dimmers, turned_for_c(context, housed, room), room, starts,
                                   stop, fineness);
        if (!result || !result->converged) {
            return std::nullopt;
        }
        add_slacks(context, housed, room, *result, quick.slacks);
        quick.results.push_back(std::move(*result));
        if (quick.strain() >= fineness.no_use_from) {
            return std::nullopt;
        }
    }
    return quick.results.empty() ? std::nullopt : std::optional(std::move(quick));
}

} // namespace loam::suggest
