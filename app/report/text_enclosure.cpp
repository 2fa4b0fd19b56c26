#include "app/report/lines.hpp"
#include "app/report/record_lines.hpp"
#include "app/report/said.hpp"
#include "app/report/text_parts.hpp"
#include "app/words/capitals.hpp"
#include "app/words/dry_spells.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using words::Quantity;
using words::Speaker;
using words::Subject;

QString fact(const QString& name, const QString& text)
{
    return wrapped(QStringLiteral("  ") + name.leftJustified(14), text);
}

QString space(const assess::SpaceResult& space, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text =
        Said::tr("%1, of which %2 can be walked on")
            .arg(format.value(space.floor_m2, Quantity::area), format.value(space.usable_floor_m2, Quantity::area));
    if (space.required_floor_m2) {
        text += Said::tr("; %1 asked for by “%2”")
                    .arg(format.value(*space.required_floor_m2, Quantity::area), speaker.name_of(space.governing_rule));
    }
    QString floor =
        fact(Said::tr("Floor"), text + QStringLiteral(": ") + words::verdict(space.judgement, Subject::space));
    constexpr double now_years = 0.05; // reads as 0.0
    if (!space.outgrown_in_years || *space.outgrown_in_years < now_years) {
        return floor; // the verdict has said it already
    }
    return floor +
           fact({}, Said::tr("may be outgrown in %1").arg(format.value(*space.outgrown_in_years, Quantity::years)));
}

QString columns(const QString& what)
{
    return row(2, {{what, 12}, {Said::tr("range"), 13}, {Said::tr("likely"), 6, true}, {Said::tr("target"), 15}});
}

// Range, likely value and target in columns; what follows, a verdict, has the rest of the line.
QString expectation(const QString& name, const std::optional<Range>& range, const Target& target, Quantity quantity,
                    const words::Formatter& format)
{
    const QString line = row(2, {{name, 12},
                                 {range ? format.span(*range, quantity) : Said::tr("not known"), 14},
                                 {range ? format.bare(range->likely, quantity) : QString(), 5, true},
                                 {format.target(target, quantity), 16}});
    return line.chopped(1).leftJustified(57);
}

QString temperatures(const assess::HeatCase& heat, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    if (!heat.known) {
        return fact(words::case_name(heat.id), Said::tr("the balance of heat did not close: not known"));
    }
    QString text =
        fact(words::case_name(heat.id), Said::tr("draws %1").arg(format.value(heat.power_w, Quantity::power)));
    for (const assess::ZoneResult& zone : heat.zones) {
        text += expectation(words::zone(zone.zone), zone.temperature_c, zone.target_c, Quantity::temperature, format) +
                words::verdict(zone.judgement, Subject::temperature) + QLatin1Char('\n');
    }
    return text;
}

QString humidities(const std::vector<assess::HumidityCase>& cases, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text;
    for (const assess::HumidityCase& humidity : cases) {
        text += expectation(words::case_name(humidity.id), humidity.relative_humidity, humidity.target,
                            Quantity::fraction, format) +
                words::verdict(humidity.judgement, Subject::humidity) + QLatin1Char('\n');
    }
    return text;
}

QString bed(const std::vector<assess::SubstrateResult>& layers, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text;
    for (const assess::SubstrateResult& layer : layers) {
        text += fact(text.isEmpty() ? Said::tr("Bed") : QString(),
                     Said::tr("%1: fill in %2, %3 when damp")
                         .arg(speaker.name_of(layer.material), format.range(layer.expanded_l, Quantity::volume),
                              format.value(layer.damp_kg.likely, Quantity::mass)));
    }
    return text;
}

} // namespace

QString text_enclosure(const assess::EnclosureResult& enclosure, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text =
        heading(speaker.name_of(enclosure.id) + QStringLiteral(" — ") + words::verdict(enclosure.overall.verdict));
    text += space(enclosure.space, speaker) + bed(enclosure.substrate, speaker);
    text += fact(Said::tr("Weight"), format.range(enclosure.mass.total_kg, Quantity::mass));
    text += text_uv(enclosure.uv, speaker);
    text += fact(Said::tr("Electricity"), Said::tr("%1 connected, %2 a day")
                                              .arg(format.value(enclosure.power.connected_w.likely, Quantity::power),
                                                   format.range(enclosure.power.daily_kwh, Quantity::energy)));
    text += text_water(enclosure, speaker);
    if (!enclosure.heat.empty()) {
        text += QLatin1Char('\n') + columns(Said::tr("Temperatures"));
    }
    for (const assess::HeatCase& heat : enclosure.heat) {
        text += temperatures(heat, speaker);
    }
    if (!enclosure.humidity.empty()) {
        text += QLatin1Char('\n') + columns(Said::tr("Humidity"));
        text += humidities(enclosure.humidity, speaker);
    }
    for (const assess::DrySpellResult& spell : enclosure.dry_spells) {
        text += wrapped(QStringLiteral("  "),
                        Said::tr("%1: %2").arg(words::dry_spell_name(spell), words::dry_spell_days(spell, format)));
    }
    text += text_courses(enclosure, speaker);
    text += text_year(enclosure, speaker) + text_cool_seasons(enclosure, speaker);
    for (const assess::RecordResult& record : enclosure.records) {
        text += QLatin1Char('\n') +
                columns(Said::tr("%1 over time").arg(words::capitalised(speaker.name_of(record.animal))));
        for (const QString& line : record_lines(record, speaker)) {
            text += wrapped(QStringLiteral("  "), line);
        }
    }
    if (enclosure.calibration) {
        text += QLatin1Char('\n') + text_calibration(*enclosure.calibration, speaker);
    }
    return text;
}

} // namespace loam::report
