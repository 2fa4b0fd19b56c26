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

// Readings are nearly straight in the level: along the line through nought and the last level tried.
std::optional<climate::CaseResult> solve_turned(climate::Box box, const std::vector<std::string>& dimmers,
                                                std::optional<double> wanted_c, const climate::Case& room,
                                                climate::Workspace& workspace, const std::stop_token& stop,
                                                const Fineness& fineness)
{
    const auto at = [&](double level) {
        turn(box, dimmers, level);
        auto result = climate::solve_likely(box, room, workspace, stop, fineness.cells);
        if (result) {
            result->basking.surface_c.likely += fineness.peak_k;
        }
        return result;
    };
    auto result = at(1.0);
    if (!room.day || dimmers.empty() || !wanted_c || !result || result->basking.surface_c.likely <= *wanted_c) {
        return result;
    }
    double level = 1.0;
    double reading_c = result->basking.surface_c.likely;
    auto dark = at(0.0);
    if (!dark) {
        return dark;
    }
    const double dark_c = dark->basking.surface_c.likely;
    constexpr int most_rounds = 4;
    constexpr double close_k = 0.1;
    for (int round = 0; round < most_rounds && reading_c > dark_c && std::abs(reading_c - *wanted_c) > close_k;
         ++round) {
        level = std::clamp(level * (*wanted_c - dark_c) / (reading_c - dark_c), 0.0, 1.0);
        result = at(level);
        if (!result) {
            return result;
        }
        reading_c = result->basking.surface_c.likely;
    }
    return result;
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
                                          const std::vector<std::string_view>& cases, climate::Workspace& workspace,
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
        auto result = solve_turned(set_up->box, set_up->free_dimmers, turned_for_c(context, housed, room), room,
                                   workspace, stop, fineness);
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
