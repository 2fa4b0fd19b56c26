#include "core/assess/climate_stage.hpp"

#include <algorithm>

namespace loam::assess {

namespace {

Target target_of(const catalog::Band& band)
{
    return {band.min, band.max, band.source};
}

std::string measure_name(climate::Measure measure)
{
    switch (measure) {
    case climate::Measure::surface:
        return "surface";
    case climate::Measure::ground:
        return "ground";
    case climate::Measure::operative:
        return "operative";
    }
    return {};
}

const climate::ZoneReading& reading_of(const climate::CaseResult& result, Zone zone)
{
    switch (zone) {
    case Zone::basking:
        return result.basking;
    case Zone::warm:
        return result.warm;
    case Zone::cool:
        return result.cool;
    }
    return result.warm;
}

// Where a dimmer is turned by the keeper, the question is whether some setting reaches the target over the whole
// range: full power in the coldest of it, none in the hottest.
Judgement judge_reach_of_settings(const SolvedCase& solved, const ZoneTarget& wanted)
{
    const Range full = zone_reading(*solved.at_full, wanted.zone, wanted.measure);
    const Range nought = zone_reading(*solved.at_nought, wanted.zone, wanted.measure);
    const Target& target = wanted.target_c;
    if (target.min && full.likely < *target.min) {
        return {Verdict::falls_short, Direction::below};
    }
    if (target.max && nought.likely > *target.max) {
        return {Verdict::falls_short, Direction::above};
    }
    if (target.min && full.low < *target.min) {
        return {Verdict::tight, Direction::below};
    }
    if (target.max && nought.high > *target.max) {
        return {Verdict::tight, Direction::above};
    }
    return {Verdict::fits, Direction::none};
}

FindingCode code_of(Zone zone)
{
    switch (zone) {
    case Zone::basking:
        return "heat.basking";
    case Zone::warm:
        return "heat.warm-side";
    case Zone::cool:
        break;
    }
    return "heat.cool-side";
}

void report_zone(Notes& notes, const Housed& housed, const ZoneResult& zone, const std::string& case_id, bool day)
{
    const Because why =
        because("rule.heat-balance", inputs_of(zone.temperature_c, zone.target_c, zone.judgement, "degC"),
                {{"case", case_id},
                 {"species", zone.species},
                 {"measure", measure_name(zone.measure)},
                 {"limited_by", zone.limited_by}},
                zone.target_c.source);
    if (case_id == "heat-wave") {
        // What a heat wave tells is whether the cool retreat stays cool.
        if (zone.zone == Zone::cool && zone.judgement.direction == Direction::above) {
            report(notes, "heat.heat-wave", zone.judgement, housed.at(), why);
        }
    } else if (!day) {
        // Asleep it does not move to warmth, so the cool side has to bear the lowest, and the warm one the highest.
        const Zone asked = zone.judgement.direction == Direction::above ? Zone::warm : Zone::cool;
        if (zone.zone == asked) {
            report(notes, "heat.night", zone.judgement, housed.at(), why);
        }
    } else {
        report(notes, code_of(zone.zone), zone.judgement, housed.at(), why);
    }
}

} // namespace

std::vector<ZoneTarget> zone_targets(const catalog::Species& species, const climate::Case& room)
{
    const catalog::Temperatures& sheet = species.temperatures;
    std::vector<ZoneTarget> targets;
    if (!room.day) {
        if (sheet.night_c) {
            targets.push_back({Zone::warm, climate::Measure::ground, target_of(*sheet.night_c)});
            targets.push_back({Zone::cool, climate::Measure::ground, target_of(*sheet.night_c)});
        }
        return targets;
    }
    if (sheet.basking_surface_c) {
        targets.push_back({Zone::basking, climate::Measure::surface, target_of(*sheet.basking_surface_c)});
    }
    if (sheet.warm_c) {
        targets.push_back({Zone::warm, climate::Measure::ground, target_of(*sheet.warm_c)});
    }
    if (sheet.cool_c) {
        targets.push_back({Zone::cool, climate::Measure::ground, target_of(*sheet.cool_c)});
    }
    return targets;
}

Range zone_reading(const climate::CaseResult& result, Zone zone, climate::Measure measure)
{
    const climate::ZoneReading& reading = reading_of(result, zone);
    switch (measure) {
    case climate::Measure::surface:
        return reading.surface_c;
    case climate::Measure::ground:
        return reading.ground_c;
    case climate::Measure::operative:
        return reading.operative_c;
    }
    return reading.ground_c;
}

namespace {

// Share of the floor, read at the ground, that is neither colder than the coolest zone may be nor hotter than the
// warmest. Of several species the one that has least.
std::optional<Range> share_in_band(const SolvedCase& solved, const std::vector<const catalog::Species*>& species)
{
    std::optional<Range> least;
    for (const catalog::Species* one : species) {
        std::optional<double> min_c;
        std::optional<double> max_c;
        for (const ZoneTarget& wanted : zone_targets(*one, solved.room)) {
            if (wanted.measure == climate::Measure::ground && wanted.target_c.min) {
                min_c = std::min(min_c.value_or(*wanted.target_c.min), *wanted.target_c.min);
            }
            if (wanted.measure == climate::Measure::ground && wanted.target_c.max) {
                max_c = std::max(max_c.value_or(*wanted.target_c.max), *wanted.target_c.max);
            }
        }
        if (!min_c && !max_c) {
            continue;
        }
        const Range share = climate::share_in_band(solved.result, climate::Measure::ground, min_c, max_c);
        if (!least || share.likely < least->likely) {
            least = share;
        }
    }
    return least;
}

} // namespace

HeatCase judge_case(const SolvedCase& solved, const std::vector<const catalog::Species*>& species)
{
    HeatCase heat{.id = solved.room.id,
                  .known = solved.result.converged,
                  .power_w = solved.result.power_w,
                  .loss_w = solved.result.loss_w,
                  .zones = {},
                  .floor_share_in_band = std::nullopt,
                  .detail = solved.result};
    if (!heat.known) {
        return heat;
    }
    heat.floor_share_in_band = share_in_band(solved, species);
    for (const catalog::Species* one : species) {
        for (const ZoneTarget& wanted : zone_targets(*one, solved.room)) {
            const climate::ZoneReading& reading = reading_of(solved.result, wanted.zone);
            const Range figure = zone_reading(solved.result, wanted.zone, wanted.measure);
            const bool turned = solved.at_full && solved.at_nought && wanted.zone != Zone::cool;
            heat.zones.push_back(
                {.zone = wanted.zone,
                 .measure = wanted.measure,
                 .temperature_c = figure,
                 .target_c = wanted.target_c,
                 .species = one->id,
                 .judgement = turned ? judge_reach_of_settings(solved, wanted) : judge(figure, wanted.target_c),
                 .area = reading.area,
                 .limited_by = reading.limited_by,
                 .limited_share = reading.limited_share});
        }
    }
    return heat;
}

void report_zones(Notes& notes, const Housed& housed, const HeatCase& heat, const climate::Case& room)
{
    if (room.fault != climate::Fault::none) {
        return; // a drill's zones are shown, its dangers reported
    }
    for (const ZoneResult& zone : heat.zones) {
        const Verdict verdict = zone.judgement.verdict;
        if (verdict == Verdict::falls_short || verdict == Verdict::tight) {
            report_zone(notes, housed, zone, heat.id, room.day);
        }
    }
}

} // namespace loam::assess
