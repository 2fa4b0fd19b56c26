#include "app/sheets/targets.hpp"

#include <QObject>
#include <QStringList>
#include <algorithm>

#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

template <class Case> const Case* find_case(const std::vector<Case>& cases, std::string_view id)
{
    const auto found = std::find_if(cases.begin(), cases.end(), [&](const Case& one) { return one.id == id; });
    return found == cases.end() ? nullptr : &*found;
}

bool asked_for(const Target& target)
{
    return target.min || target.max;
}

} // namespace

std::vector<assess::Zone> zones_of(const assess::EnclosureResult& enclosure)
{
    std::vector<assess::Zone> zones;
    for (const assess::Zone zone : {assess::Zone::basking, assess::Zone::warm, assess::Zone::cool}) {
        const bool there = std::any_of(enclosure.heat.begin(), enclosure.heat.end(), [&](const assess::HeatCase& one) {
            return std::any_of(one.zones.begin(), one.zones.end(),
                               [&](const assess::ZoneResult& result) { return result.zone == zone; });
        });
        if (there) {
            zones.push_back(zone);
        }
    }
    return zones;
}

QString target_of(const assess::EnclosureResult& enclosure, std::string_view case_id, assess::Zone zone,
                  const words::Formatter& formatter)
{
    QStringList texts;
    if (const assess::HeatCase* heat = find_case(enclosure.heat, case_id)) {
        for (const assess::ZoneResult& result : heat->zones) {
            if (result.zone == zone && asked_for(result.target_c)) {
                texts << formatter.target(result.target_c, Quantity::temperature);
            }
        }
    }
    texts.removeDuplicates();
    return texts.join(QStringLiteral("\n"));
}

QString expected_of(const assess::EnclosureResult& enclosure, std::string_view case_id, assess::Zone zone,
                    const words::Formatter& formatter)
{
    const assess::HeatCase* heat = find_case(enclosure.heat, case_id);
    if (heat == nullptr || !heat->known) {
        return {};
    }
    const auto found = std::find_if(heat->zones.begin(), heat->zones.end(),
                                    [&](const assess::ZoneResult& result) { return result.zone == zone; });
    return found == heat->zones.end() ? QString() : formatter.span(found->temperature_c, Quantity::temperature);
}

QString humidity_target_of(const assess::EnclosureResult& enclosure, std::string_view case_id,
                           const words::Formatter& formatter)
{
    const assess::HumidityCase* air = find_case(enclosure.humidity, case_id);
    return air == nullptr || !asked_for(air->target) ? QString() : formatter.target(air->target, Quantity::fraction);
}

QString humidity_expected_of(const assess::EnclosureResult& enclosure, std::string_view case_id,
                             const words::Formatter& formatter)
{
    const assess::HumidityCase* air = find_case(enclosure.humidity, case_id);
    return air == nullptr || !air->relative_humidity ? QString()
                                                     : formatter.span(*air->relative_humidity, Quantity::fraction);
}

QString column_head(const assess::EnclosureResult& enclosure, assess::Zone zone)
{
    for (const assess::HeatCase& heat : enclosure.heat) {
        for (const assess::ZoneResult& result : heat.zones) {
            if (result.zone == zone) {
                return QObject::tr("%1, %2").arg(words::capitalised(words::zone(zone)), words::measure(result.measure));
            }
        }
    }
    return words::capitalised(words::zone(zone));
}

} // namespace loam::sheets
