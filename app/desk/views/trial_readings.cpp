#include "app/desk/views/trial_readings.hpp"

#include "app/words/capitals.hpp"

namespace loam::desk {

namespace {

assess::Zone zone_of(int reading)
{
    return reading == trial_warm_side ? assess::Zone::warm : assess::Zone::cool;
}

} // namespace

QString trial_reading_name(int reading)
{
    return reading == trial_humidity ? QObject::tr("humidity") : words::zone(zone_of(reading));
}

TrackReading planned_reading(const assess::EnclosureResult* result, const char* case_id, int reading)
{
    TrackReading track;
    track.name = words::capitalised(trial_reading_name(reading)) + QStringLiteral(", ") + words::case_name(case_id);
    if (reading == trial_humidity) {
        track.name += QObject::tr(", ground of the cool side");
        track.quantity = words::Quantity::fraction;
        track.subject = words::Subject::humidity;
    }
    if (result == nullptr) {
        return track;
    }
    for (const assess::HumidityCase& each : result->humidity) {
        if (reading == trial_humidity && each.id == case_id) {
            track.now = each.relative_humidity;
            track.target = each.target;
        }
    }
    for (const assess::HeatCase& heat : result->heat) {
        if (reading == trial_humidity || heat.id != case_id || !heat.known) {
            continue;
        }
        track.now = reading == trial_warm_side ? heat.detail.warm.ground_c : heat.detail.cool.ground_c;
        for (const assess::ZoneResult& zone : heat.zones) {
            if (zone.zone == zone_of(reading) && zone.measure == climate::Measure::ground) {
                track.target = zone.target_c;
            }
        }
    }
    return track;
}

std::optional<Range> tried_reading(const SharedTrialAnswer& answer, const char* case_id, int reading)
{
    if (!answer || !answer->tried) {
        return std::nullopt;
    }
    for (const assess::TriedCase& tried : answer->tried->then) {
        if (tried.id == case_id) {
            return reading == trial_humidity    ? tried.relative_humidity
                   : reading == trial_warm_side ? tried.warm_c
                                                : tried.cool_c;
        }
    }
    return std::nullopt;
}

Explanation trial_explanation()
{
    Explanation why;
    why.title = QObject::tr("What if");
    why.how = QObject::tr("The joint balance of heat and moisture, solved anew for the cover and the misting that are "
                          "tried. Likely values; how wide the ranges are is taken from the plan as it is. Misting "
                          "counts as spread over the day. Nothing in the plan changes until you take it, which is one "
                          "step to undo.");
    why.source = QObject::tr("A quarter of the top stays open for fresh air: cautious, our own.");
    return why;
}

} // namespace loam::desk
