#include "app/desk/views/uv_rows.hpp"

#include <QObject>

#include "app/words/verdicts.hpp"

namespace loam::desk {

using words::Quantity;
using words::Speaker;

namespace {

FigureRow index_row(const QString& name, const std::optional<Range>& uvi, const words::Formatter& formatter,
                    const QString& how)
{
    return uvi ? figure_row(name, *uvi, Quantity::uv_index, formatter, how)
               : said_row(name, QObject::tr("not known"), how);
}

QString place_words(const assess::UvPlace& place, const Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    return QObject::tr("At a back %1 over the base, on %2, %3 from the left and %4 from the front.")
        .arg(formatter.value(place.back.z_m, Quantity::length),
             place.standing.empty() ? QObject::tr("the bed") : speaker.name_of(place.standing),
             formatter.value(place.back.x_m, Quantity::length), formatter.value(place.back.y_m, Quantity::length));
}

FigureRow basking_row(const assess::UvResult& uv, const Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    FigureRow row =
        index_row(QObject::tr("UV index at the basking place"), uv.uvi_at_basking, formatter,
                  QObject::tr("The strongest on a place of the animal's size under the basking lamp. From the "
                              "distance table or the meter reading of each lamp, its beam, its age and the mesh; "
                              "never from watts."));
    row.target = uv.needed ? formatter.target(uv.target_uvi, Quantity::uv_index) : QObject::tr("no need stated");
    row.why.judgement = uv.judgement;
    row.why.verdict_words = words::verdict(uv.judgement, words::Subject::uv);
    if (!uv.lamps.empty()) {
        row.why.inputs = place_words(uv.basking, speaker);
    }
    if (uv.needed) {
        row.why.source = QObject::tr("Ferguson zone %1: %2. %3, by %4")
                             .arg(formatter.count(uv.ferguson_zone), words::source(uv.target_uvi.source),
                                  speaker.name_of(uv.species), words::source(uv.sheet));
    }
    return row;
}

FigureRow strongest_row(const assess::UvResult& uv, const Speaker& speaker)
{
    FigureRow row = index_row(
        QObject::tr("The most within reach"), uv.strongest ? uv.strongest->uvi : std::nullopt, speaker.formatter(),
        QObject::tr("The strongest at an animal's back on the bed and on everything it can stand on. Where a lamp's "
                    "readings don't reach it is not known."));
    if (uv.target_uvi.max) {
        row.target = QObject::tr("at most %1").arg(speaker.formatter().value(*uv.target_uvi.max, Quantity::uv_index));
    }
    if (uv.strongest) {
        row.why.inputs = place_words(*uv.strongest, speaker);
    }
    return row;
}

FigureRow dark_row(const light::FloorShare& dark, const words::Formatter& formatter)
{
    FigureRow row =
        said_row(QObject::tr("Floor without UV"), formatter.value(dark.surely, Quantity::fraction),
                 QObject::tr("The share of the floor where the index stays under a tenth, which a meter reads as none: "
                             "under hides, under covers and beyond the light. The larger share counts what is not "
                             "known as dark. Shade beside fittings is not counted."));
    row.range = formatter.span({dark.surely, dark.surely, dark.at_most}, Quantity::fraction);
    row.why.source = QObject::tr("Always a retreat without UV: Baines et al. 2016");
    return row;
}

FigureRow height_row(const assess::UvResult& uv, const Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    const QString how =
        QObject::tr("Heights over the base at which the strongest UV of the basking place lies inside the target "
                    "and nothing within reach passes its upper end, tried centimetre by centimetre.");
    if (!uv.heights) {
        return said_row(QObject::tr("Height of the lamp for its zone"),
                        uv.uvi_at_basking ? QObject::tr("none") : QObject::tr("not known"), how);
    }
    const assess::UvHeights& heights = *uv.heights;
    FigureRow row = said_row(QObject::tr("Height of %1 for its zone").arg(speaker.name_of(heights.lamp)),
                             formatter.span({heights.from_m, heights.from_m, heights.to_m}, Quantity::length), how);
    row.why.inputs = heights.whole_range
                         ? QObject::tr("The whole range of the index lies inside it there.")
                         : QObject::tr("Only the likely index lies inside it there: the range is as wide.");
    return row;
}

FigureRow nearest_row(const assess::UvLampResult& lamp, const Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    FigureRow row = said_row(
        QObject::tr("Nearest to %1").arg(speaker.name_of(lamp.id)), formatter.value(lamp.nearest_m, Quantity::length),
        QObject::tr("From the lamp's face to the back of an animal on what it can stand on. Nearer than the "
                    "safe distance even the upper end of its UV may pass the most that any animal was met "
                    "in."));
    row.target = lamp.safe_distance_m
                     ? QObject::tr("at least %1").arg(formatter.value(*lamp.safe_distance_m, Quantity::length))
                     : QObject::tr("safe distance not known");
    row.why.inputs = place_words(lamp.nearest, speaker) + QLatin1Char(' ') +
                     QObject::tr("UV index there: %1.").arg(formatter.range(lamp.nearest.uvi, Quantity::uv_index));
    if (lamp.reach) {
        row.why.inputs += QLatin1Char(' ') + QObject::tr("Its readings reach from %1 to %2.")
                                                 .arg(formatter.value(lamp.reach->nearest_m, Quantity::length),
                                                      formatter.value(lamp.reach->farthest_m, Quantity::length));
    }
    return row;
}

FigureRow fading_row(const assess::UvResult& uv, const words::Formatter& formatter)
{
    FigureRow row = said_row(
        QObject::tr("Burning until the UV falls below the target"),
        uv.left.likely_h ? formatter.about(*uv.left.likely_h, Quantity::hours) : QObject::tr("not known"),
        QObject::tr("What all its lamps lose for each thousand hours, by the sheet of their kind. A new reading "
                    "with the hours burnt says more."));
    if (uv.left.earliest_h && uv.left.latest_h) {
        row.range = QObject::tr("%1 to %2")
                        .arg(formatter.about(*uv.left.earliest_h, Quantity::hours),
                             formatter.about(*uv.left.latest_h, Quantity::hours));
    }
    if (uv.falls_out_on) {
        row.target = QObject::tr("on %1").arg(formatter.date(*uv.falls_out_on));
    }
    if (uv.falls_out_earliest) {
        row.why.inputs = QObject::tr("Earliest on %1, by the hours that it burns a day.")
                             .arg(formatter.date(*uv.falls_out_earliest));
    }
    return row;
}

} // namespace

FigureGroup uv_group(const assess::UvResult& uv, const Speaker& speaker)
{
    const words::Formatter& formatter = speaker.formatter();
    FigureGroup group{QObject::tr("UV"), {basking_row(uv, speaker)}};
    if (uv.lamps.empty()) {
        return group;
    }
    group.rows.push_back(strongest_row(uv, speaker));
    if (uv.dark) {
        group.rows.push_back(dark_row(*uv.dark, formatter));
    }
    if (uv.needed) {
        group.rows.push_back(height_row(uv, speaker));
    }
    for (const assess::UvLampResult& lamp : uv.lamps) {
        group.rows.push_back(nearest_row(lamp, speaker));
    }
    if (uv.target_uvi.min.value_or(0.0) > 0.0) {
        group.rows.push_back(fading_row(uv, formatter));
    }
    return group;
}

} // namespace loam::desk
