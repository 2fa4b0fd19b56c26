#include "core/assess/compare.hpp"

#include <algorithm>

#include "core/independent.hpp"

namespace loam::assess {

namespace {

using Pair = Sides<const EnclosureResult*>;

// Every enclosure of both once, in the first plan's order, then what only the second has.
std::vector<Pair> pairs(const Assessment& first, const Assessment& second)
{
    std::vector<Pair> result;
    std::vector<const EnclosureResult*> rest;
    for (const EnclosureResult& enclosure : first.enclosures) {
        result.push_back({&enclosure, nullptr});
    }
    for (const EnclosureResult& enclosure : second.enclosures) {
        const auto same = std::find_if(result.begin(), result.end(), [&](const Pair& pair) {
            return pair[0]->id == enclosure.id && pair[1] == nullptr;
        });
        if (same == result.end()) {
            rest.push_back(&enclosure);
        } else {
            (*same)[1] = &enclosure;
        }
    }
    auto place = result.begin();
    std::vector<Pair> alone;
    for (const EnclosureResult* enclosure : rest) {
        place = std::find_if(place, result.end(), [](const Pair& pair) { return pair[1] == nullptr; });
        if (place == result.end()) {
            alone.push_back({nullptr, enclosure});
        } else {
            (*place)[1] = enclosure;
        }
    }
    result.insert(result.end(), alone.begin(), alone.end());
    return result;
}

Range sum_of(const std::vector<DevicePower>& devices, Range DevicePower::*part)
{
    std::vector<Range> terms;
    terms.reserve(devices.size());
    for (const DevicePower& device : devices) {
        terms.push_back(device.*part);
    }
    return sum_of_independent(terms); // as the year's energy is added up
}

std::optional<Range> value(const EnclosureResult& enclosure, Compared what)
{
    switch (what) {
    case Compared::floor_m2:
        return exactly(enclosure.space.floor_m2);
    case Compared::usable_floor_m2:
        return exactly(enclosure.space.usable_floor_m2);
    case Compared::required_floor_m2:
        return enclosure.space.required_floor_m2 ? std::optional(exactly(*enclosure.space.required_floor_m2))
                                                 : std::nullopt;
    case Compared::connected_w:
        return enclosure.power.connected_w;
    case Compared::year_kwh:
        return enclosure.power.year_kwh;
    case Compared::winter_day_kwh:
        return sum_of(enclosure.power.devices, &DevicePower::daily_kwh_winter);
    case Compared::summer_day_kwh:
        return sum_of(enclosure.power.devices, &DevicePower::daily_kwh_summer);
    case Compared::water_l_per_day:
        return enclosure.water.daily_l;
    case Compared::mass_kg:
        return enclosure.mass.total_kg;
    }
    return std::nullopt;
}

std::vector<ComparedFigure> figures(const Pair& pair)
{
    std::vector<ComparedFigure> result;
    for (const Compared what : {Compared::floor_m2, Compared::usable_floor_m2, Compared::required_floor_m2,
                                Compared::connected_w, Compared::winter_day_kwh, Compared::summer_day_kwh,
                                Compared::year_kwh, Compared::water_l_per_day, Compared::mass_kg}) {
        ComparedFigure figure{what, {}};
        for (std::size_t side = 0; side < 2; ++side) {
            figure.values[side] = pair[side] != nullptr ? value(*pair[side], what) : std::nullopt;
        }
        result.push_back(figure);
    }
    return result;
}

void add_zone(std::vector<ComparedZone>& zones, const std::string& case_id, const ZoneResult& zone, std::size_t side)
{
    auto place = std::find_if(zones.begin(), zones.end(), [&](const ComparedZone& each) {
        return each.case_id == case_id && each.zone == zone.zone && each.measure == zone.measure && !each.sides[side];
    });
    if (place == zones.end()) {
        place = zones.insert(zones.end(), {case_id, zone.zone, zone.measure, {}});
    }
    place->sides[side] = zone;
}

std::vector<ComparedZone> zones(const Pair& pair)
{
    std::vector<ComparedZone> result;
    for (std::size_t side = 0; side < 2; ++side) {
        for (const HeatCase& heat : pair[side] != nullptr ? pair[side]->heat : std::vector<HeatCase>{}) {
            for (const ZoneResult& zone : heat.known ? heat.zones : std::vector<ZoneResult>{}) {
                add_zone(result, heat.id, zone, side);
            }
        }
    }
    return result;
}

std::vector<ComparedHumidity> humidity(const Pair& pair)
{
    std::vector<ComparedHumidity> result;
    for (std::size_t side = 0; side < 2; ++side) {
        for (const HumidityCase& each : pair[side] != nullptr ? pair[side]->humidity : std::vector<HumidityCase>{}) {
            auto place = std::find_if(result.begin(), result.end(),
                                      [&](const ComparedHumidity& other) { return other.case_id == each.id; });
            if (place == result.end()) {
                place = result.insert(result.end(), {each.id, {}});
            }
            place->sides[side] = each;
        }
    }
    return result;
}

ComparedEnclosure compared(const Pair& pair)
{
    ComparedEnclosure result;
    for (std::size_t side = 0; side < 2; ++side) {
        if (pair[side] != nullptr) {
            result.ids[side] = pair[side]->id;
            result.names[side] = pair[side]->name;
            result.space[side] = pair[side]->space.judgement;
            result.overall[side] = pair[side]->overall;
        }
    }
    result.figures = figures(pair);
    result.zones = zones(pair);
    result.humidity = humidity(pair);
    return result;
}

void add_purchase(std::vector<ComparedPurchase>& purchases, const ShoppingLine& line, std::size_t side)
{
    const bool unserved = line.item.empty(); // then its need says what it is
    auto place = std::find_if(purchases.begin(), purchases.end(), [&](const ComparedPurchase& each) {
        return each.item == line.item && each.pack == line.pack && (!unserved || each.need == line.need);
    });
    if (place == purchases.end()) {
        place = purchases.insert(purchases.end(), {line.need, line.item, line.item_name, line.pack, {}, {}});
    }
    place->packs[side] += line.packs;
    if (line.line_total) {
        std::optional<MoneyRange>& total = place->totals[side];
        total = total ? *total : MoneyRange::zero(line.line_total->typical.currency());
        *total += *line.line_total;
    }
}

std::vector<ComparedPurchase> purchases(const Assessment& first, const Assessment& second)
{
    std::vector<ComparedPurchase> all;
    std::size_t side = 0;
    for (const Assessment* assessment : {&first, &second}) {
        for (const ShoppingLine& line : assessment->shopping) {
            add_purchase(all, line, side);
        }
        ++side;
    }
    std::erase_if(all, [](const ComparedPurchase& each) {
        return each.packs[0] == each.packs[1] && each.totals[0] == each.totals[1];
    });
    return all;
}

std::vector<std::string> sorted(std::vector<std::string> names)
{
    std::sort(names.begin(), names.end());
    return names;
}

} // namespace

PaybackResult payback(const Costs& first, const Costs& second)
{
    const bool costed = first.prices_match_currency && second.prices_match_currency && first.electricity_per_year &&
                        second.electricity_per_year;
    if (!costed || !(first.currency == second.currency) || sorted(first.unpriced) != sorted(second.unpriced)) {
        return {};
    }
    const Money more = second.startup.typical - first.startup.typical;
    const Money saved = first.running_per_year.typical - second.running_per_year.typical;
    if (more.overflowed() || saved.overflowed()) {
        return {};
    }
    const std::int64_t start = more.minor_units();
    const std::int64_t yearly = saved.minor_units();
    if (start <= 0 && yearly >= 0) {
        return {Payback::at_once, {}};
    }
    if (start >= 0 && yearly <= 0) {
        return {Payback::never, {}};
    }
    return {start > 0 ? Payback::after : Payback::trade, static_cast<double>(start) / static_cast<double>(yearly)};
}

Comparison compare(const Assessment& first, const Assessment& second)
{
    Comparison result;
    for (const Pair& pair : pairs(first, second)) {
        result.enclosures.push_back(compared(pair));
    }
    result.purchases = purchases(first, second);
    result.payback = payback(first.costs, second.costs);
    return result;
}

} // namespace loam::assess
