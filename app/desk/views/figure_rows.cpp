#include "app/desk/views/figure_rows.hpp"

#include <QObject>

#include "app/desk/views/reading_rows.hpp"
#include "app/desk/views/season_rows.hpp"
#include "app/desk/views/uv_rows.hpp"
#include "app/words/dry_spells.hpp"
#include "app/words/seasons.hpp"
#include "app/words/verdicts.hpp"

namespace loam::desk {

namespace {

using words::Quantity;
using words::Subject;

FigureRow explained(FigureRow row, const QString& how)
{
    row.why.how = how;
    return row;
}

void judge_row(FigureRow& row, const Judgement& judgement, Subject subject)
{
    row.why.judgement = judgement;
    row.why.verdict_words = words::verdict(judgement, subject);
}

FigureGroup space_group(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    const assess::SpaceResult& space = enclosure.space;
    FigureGroup group{QObject::tr("Space"), {}};
    FigureRow floor =
        figure_row(QObject::tr("Usable floor"), exactly(space.usable_floor_m2), Quantity::area, formatter);
    floor.target = space.required_floor_m2
                       ? QObject::tr("at least %1").arg(formatter.value(*space.required_floor_m2, Quantity::area))
                       : QObject::tr("no rule known");
    judge_row(floor, space.judgement, Subject::space);
    floor.why.how = QObject::tr("Inner floor of %1 less what animals can't walk on.")
                        .arg(formatter.value(space.floor_m2, Quantity::area));
    floor.why.source = space.governing_rule.empty()
                           ? QString()
                           : QObject::tr("Governing rule: %1").arg(speaker.name_of(space.governing_rule));
    group.rows.push_back(floor);
    for (const assess::RuleResult& rule : space.rules) {
        FigureRow row{.name = QString::fromStdString(rule.title),
                      .likely = {},
                      .range = {},
                      .target = {},
                      .decided_by = {},
                      .why = {}};
        row.likely = rule.required_m2 ? formatter.value(*rule.required_m2, Quantity::area) : QObject::tr("not known");
        row.range = rule.required_grown_m2
                        ? QObject::tr("grown: %1").arg(formatter.value(*rule.required_grown_m2, Quantity::area))
                        : QString();
        row.target = words::rule_kind(rule.kind);
        row.why.title = row.name + QStringLiteral(" (") + speaker.name_of(rule.species) + QLatin1Char(')');
        row.why.source = words::source(rule.source);
        judge_row(row, rule.judgement, Subject::space);
        group.rows.push_back(row);
    }
    return group;
}

FigureRow zone_row(const assess::ZoneResult& zone, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    FigureRow row = figure_row(words::zone(zone.zone), zone.temperature_c, Quantity::temperature, formatter);
    row.target = formatter.target(zone.target_c, Quantity::temperature);
    judge_row(row, zone.judgement, Subject::temperature);
    row.why.how =
        QObject::tr("Heat balance of the enclosure, read as %1 (%2). Target of %3.")
            .arg(words::measure(zone.measure), words::instrument(zone.measure), speaker.name_of(zone.species));
    if (!zone.limited_by.empty()) {
        row.decided_by = QObject::tr("%1, %2").arg(speaker.uncertainty(zone.limited_by),
                                                   formatter.value(zone.limited_share, Quantity::fraction));
        row.why.inputs = speaker.decides(zone.limited_by, zone.limited_share);
    }
    row.why.source = words::source(zone.target_c.source);
    return row;
}

FigureGroup warmth_group(const assess::HeatCase& heat, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    FigureGroup group{QObject::tr("Warmth, %1").arg(words::case_name(heat.id)), {}};
    if (!heat.known) {
        group.rows.push_back(
            {.name = QObject::tr("not known"), .likely = {}, .range = {}, .target = {}, .decided_by = {}, .why = {}});
        return group;
    }
    for (const assess::ZoneResult& zone : heat.zones) {
        group.rows.push_back(zone_row(zone, speaker));
    }
    const auto add = [&](const QString& name, const Range& figure, Quantity quantity, const QString& how) {
        group.rows.push_back(explained(figure_row(name, figure, quantity, formatter), how));
    };
    add(QObject::tr("Room"), heat.detail.room_c, Quantity::temperature,
        QObject::tr(
            "As the plan states it, or its bracket where it does not. Where the room's loss per kelvin is stated, what "
            "all boxes give off is added in summer."));
    add(QObject::tr("Warm side less cool side"), heat.detail.gradient_k, Quantity::temperature_difference,
        QObject::tr(
            "The same heat balance: ground level on the warm side less that on the cool side, about two thirds of the "
            "length apart. What moves both sides alike does not widen its range."));
    if (heat.detail.hottest_wall) {
        add(QObject::tr("Hottest wall within reach"), heat.detail.hottest_wall->temperature_c, Quantity::temperature,
            QObject::tr(
                "The balance of each small piece of the walls with lamp light, air, radiation and its neighbours: the "
                "hottest one as high up as an animal reaches, mats apart."));
    }
    if (heat.detail.hottest_top) {
        add(QObject::tr("Hottest place of the top"), heat.detail.hottest_top->temperature_c, Quantity::temperature,
            QObject::tr(
                "The balance of each small piece of what closes the top, covers included: the hottest face of them. "
                "Where it can be touched, mind it; what it is made of must bear it."));
    }
    add(QObject::tr("Hottest surface"), heat.detail.hottest_surface_c, Quantity::temperature,
        QObject::tr(
            "The same heat balance: the hottest place that an animal can touch from above, furniture it can climb "
            "included, with the bed dry under the lamp."));
    add(QObject::tr("Hottest when digging"), heat.detail.hottest_digging_c, Quantity::temperature,
        QObject::tr("The same heat balance: the hottest place that an animal reaches by digging, down to the base."));
    add(QObject::tr("Lower air"), heat.detail.lower_air_c, Quantity::temperature,
        QObject::tr("The same heat balance: the air of the lower half."));
    add(QObject::tr("Power drawn"), exactly(heat.power_w), Quantity::power,
        QObject::tr("What all devices draw on average in this case, their thermostats and dimmers included."));
    return group;
}

FigureGroup moisture_group(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    FigureGroup group{QObject::tr("Moisture"), {}};
    for (const assess::HumidityCase& humidity : enclosure.humidity) {
        const QString name = words::case_name(humidity.id);
        FigureRow row{
            .name = name, .likely = QObject::tr("not known"), .range = {}, .target = {}, .decided_by = {}, .why = {}};
        if (humidity.relative_humidity) {
            row = figure_row(name, *humidity.relative_humidity, Quantity::fraction, formatter);
        }
        row.target = formatter.target(humidity.target, Quantity::fraction);
        judge_row(row, humidity.judgement, Subject::humidity);
        row.why.how =
            QObject::tr("Moisture balance: bowl, bed and misting against what the top and the panes let out.");
        row.why.inputs =
            QObject::tr("Evaporation %1 a day.").arg(formatter.range(humidity.evaporation_l_per_day, Quantity::volume));
        row.why.source = words::source(humidity.target.source);
        group.rows.push_back(row);
        const auto beside = [&](const QString& place, const std::optional<Range>& figure, const QString& how) {
            if (figure) {
                group.rows.push_back(explained(
                    figure_row(QObject::tr("%1, %2").arg(name, place), *figure, Quantity::fraction, formatter), how));
            }
        };
        beside(QObject::tr("warm side"), humidity.warm_side,
               QObject::tr("The same vapour at the warm side's ground: warmer ground reads drier."));
        for (const assess::DampHideResult& hide : humidity.hides) {
            beside(speaker.name_of(hide.id), hide.relative_humidity,
                   QObject::tr(
                       "What its moist floor gives off against what leaves by its entrance, by how much lighter moist "
                       "air is. An animal in it makes it damper still."));
        }
        beside(QObject::tr("lower air"), humidity.air, QObject::tr("The same vapour in the air of the lower half."));
    }
    for (const assess::DrySpellResult& spell : enclosure.dry_spells) {
        group.rows.push_back(
            said_row(words::dry_spell_name(spell), words::dry_spell_days(spell, formatter), words::dry_spell_method()));
    }
    return group;
}

FigureGroup light_group(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    FigureGroup group{QObject::tr("Light"), {}};
    const assess::PhotoperiodResult& day = enclosure.photoperiod;
    FigureRow hours{.name = QObject::tr("Hours of light a day"),
                    .likely = QObject::tr("not known"),
                    .range = {},
                    .target = {},
                    .decided_by = {},
                    .why = {}};
    if (day.hours) {
        hours = figure_row(hours.name, exactly(*day.hours), Quantity::hours, formatter);
    }
    hours.target = formatter.target(day.target_h, Quantity::hours);
    judge_row(hours, day.judgement, Subject::light);
    hours.why.how = QObject::tr("From the time the lamps go on to the time they go off.");
    hours.why.source = words::source(day.target_h.source);
    if (day.day_length_midsummer_h && day.day_length_midwinter_h) {
        hours.why.inputs = QObject::tr("Daylight at your latitude: %1 in midsummer, %2 in midwinter.")
                               .arg(formatter.value(*day.day_length_midsummer_h, Quantity::hours),
                                    formatter.value(*day.day_length_midwinter_h, Quantity::hours));
    }
    group.rows.push_back(hours);
    return group;
}

FigureGroup supply_group(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    const assess::PowerResult& power = enclosure.power;
    FigureGroup group{QObject::tr("Electricity"), {}};
    group.rows.push_back(
        explained(figure_row(QObject::tr("Connected load"), power.connected_w, Quantity::power, formatter),
                  QObject::tr("The power of all devices, added up.")));
    group.rows.push_back(
        explained(figure_row(QObject::tr("Energy a day"), power.daily_kwh, Quantity::energy, formatter),
                  QObject::tr("What each device draws by day and by night, on average over the year.")));
    FigureRow outlets{
        .name = QObject::tr("Outlets"), .likely = {}, .range = {}, .target = {}, .decided_by = {}, .why = {}};
    outlets.likely = formatter.count(power.timed_outlets + power.always_on_outlets);
    outlets.range = QObject::tr("%1 timed, %2 always on")
                        .arg(formatter.count(power.timed_outlets), formatter.count(power.always_on_outlets));
    outlets.why.title = outlets.name + QStringLiteral(": ") + outlets.range;
    outlets.why.how = QObject::tr("One for each device, by the supply it is planned on.");
    group.rows.push_back(outlets);
    for (const assess::DevicePower& device : power.devices) {
        FigureRow row = explained(figure_row(QObject::tr("%1 in a year").arg(speaker.name_of(device.id)),
                                             device.year_kwh, Quantity::energy, formatter),
                                  words::how_months(enclosure.hemisphere_known));
        row.why.inputs = QObject::tr("A winter day %1, a summer day %2.")
                             .arg(formatter.range(device.daily_kwh_winter, Quantity::energy),
                                  formatter.range(device.daily_kwh_summer, Quantity::energy));
        row.why.where = QString::fromStdString(device.id);
        group.rows.push_back(row);
    }
    group.rows.push_back(
        explained(figure_row(QObject::tr("Energy in a year"), power.year_kwh, Quantity::energy, formatter),
                  words::how_months(enclosure.hemisphere_known)));
    return group;
}

FigureGroup weight_group(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    const assess::MassResult& mass = enclosure.mass;
    FigureGroup group{QObject::tr("Bed and weight"), {}};
    for (const assess::SubstrateResult& layer : enclosure.substrate) {
        FigureRow row = figure_row(QObject::tr("%1 to fill in").arg(speaker.name_of(layer.material)), layer.expanded_l,
                                   Quantity::volume, formatter);
        row.why.how = QObject::tr("Settled volume %1, and what settling takes.")
                          .arg(formatter.value(layer.settled_l, Quantity::volume));
        group.rows.push_back(row);
    }
    const auto add = [&](const QString& name, const Range& figure, Quantity quantity, const QString& how) {
        group.rows.push_back(explained(figure_row(name, figure, quantity, formatter), how));
    };
    add(QObject::tr("Shell"), exactly(mass.shell_kg), Quantity::mass,
        QObject::tr("Volume of the panels times their density."));
    add(QObject::tr("Bed, damp"), mass.substrate_kg, Quantity::mass,
        QObject::tr("Dry mass of the settled bed and the water that it holds."));
    add(QObject::tr("All together"), mass.total_kg, Quantity::mass,
        QObject::tr("Shell, bed, water, animals and the furniture whose weight is stated."));
    add(QObject::tr("Pressure under the footprint"), mass.pressure_kpa, Quantity::pressure,
        QObject::tr("The weight of all together over the floor it stands on."));
    return group;
}

FigureGroup site_group(const assess::Assessment& assessment, const words::Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    FigureGroup group{QObject::tr("Shared by all enclosures"), {}};
    for (const assess::CircuitResult& circuit : assessment.circuits) {
        FigureRow row = figure_row(speaker.name_of(circuit.id), circuit.load_w, Quantity::power, formatter);
        if (circuit.load_fraction) {
            row.target = QObject::tr("%1 of what it may carry")
                             .arg(formatter.value(circuit.load_fraction->likely, Quantity::fraction));
        }
        row.why.how = QObject::tr("Everything planned on this circuit, and what else is stated to run on it.");
        judge_row(row, circuit.judgement, Subject::load);
        group.rows.push_back(row);
    }
    for (const assess::StripResult& strip : assessment.strips) {
        FigureRow row = figure_row(speaker.name_of(strip.id), strip.load_w, Quantity::power, formatter);
        row.why.how = QObject::tr("The power of all devices planned on this strip, added up.");
        judge_row(row, strip.judgement, Subject::load);
        group.rows.push_back(row);
    }
    for (const assess::StandResult& stand : assessment.stands) {
        FigureRow row = figure_row(speaker.name_of(stand.id), stand.load_kg, Quantity::mass, formatter);
        row.why.how = QObject::tr("All enclosures that stand on it, with everything in them.");
        row.target = stand.rated_kg ? QObject::tr("at most %1").arg(formatter.value(*stand.rated_kg, Quantity::mass))
                                    : QObject::tr("rating not known");
        judge_row(row, stand.judgement, Subject::load);
        group.rows.push_back(row);
    }
    return group;
}

} // namespace

std::vector<FigureGroup> figure_groups(const assess::Assessment& assessment, const assess::EnclosureResult& enclosure,
                                       const words::Speaker& speaker)
{
    std::vector<FigureGroup> groups{space_group(enclosure, speaker)};
    for (const assess::HeatCase& heat : enclosure.heat) {
        groups.push_back(warmth_group(heat, speaker));
    }
    groups.push_back(moisture_group(enclosure, speaker));
    if (enclosure.calibration) {
        groups.push_back(reading_group(*enclosure.calibration, speaker));
    }
    groups.push_back(uv_group(enclosure.uv, speaker));
    groups.push_back(light_group(enclosure, speaker));
    groups.push_back(supply_group(enclosure, speaker));
    groups.push_back(water_group(enclosure, speaker));
    for (FigureGroup& rest : rest_groups(enclosure, speaker)) {
        groups.push_back(std::move(rest));
    }
    groups.push_back(weight_group(enclosure, speaker));
    groups.push_back(site_group(assessment, speaker));
    std::erase_if(groups, [](const FigureGroup& group) { return group.rows.empty(); });
    return groups;
}

} // namespace loam::desk
