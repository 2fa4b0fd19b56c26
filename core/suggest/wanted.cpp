#include "core/suggest/wanted.hpp"

#include <algorithm>

#include "core/assess/climate_stage.hpp"

namespace loam::suggest {

namespace {

void narrow(std::optional<Target>& to, const Target& by)
{
    if (!to) {
        to = by;
        return;
    }
    const auto tighter = [](const std::optional<double>& a, const std::optional<double>& b, auto pick) {
        return a && b ? std::optional(pick(*a, *b)) : a ? a : b;
    };
    to->min = tighter(to->min, by.min, [](double a, double b) { return std::max(a, b); });
    to->max = tighter(to->max, by.max, [](double a, double b) { return std::min(a, b); });
}

climate::Case plain_case(bool day)
{
    climate::Case room;
    room.id = day ? "winter-day" : "winter-night";
    room.day = day;
    return room;
}

} // namespace

double middle(const Target& target)
{
    constexpr double inside_k = 2.0;
    if (target.min && target.max) {
        return 0.5 * (*target.min + *target.max);
    }
    return target.min ? *target.min + inside_k : target.max.value_or(0.0) - inside_k;
}

Wanted wanted_by(const plan::Plan& plan, const catalog::Catalog& catalog, std::size_t place)
{
    Wanted wanted;
    std::optional<Target> humidity;
    const assess::Housed housed{plan.enclosures.at(place), place};
    for (const catalog::Species* species : assess::species_in(housed.enclosure, catalog)) {
        for (const assess::ZoneTarget& target : assess::zone_targets(*species, plain_case(true))) {
            auto& zone = target.zone == assess::Zone::basking ? wanted.basking
                         : target.zone == assess::Zone::warm  ? wanted.warm
                                                              : wanted.cool;
            narrow(zone, target.target_c);
        }
        for (const assess::ZoneTarget& target : assess::zone_targets(*species, plain_case(false))) {
            narrow(wanted.night, target.target_c);
        }
        narrow(humidity, assess::wanted_humidity(housed, *species));
    }
    wanted.humidity = humidity.value_or(Target{});
    return wanted;
}

} // namespace loam::suggest
