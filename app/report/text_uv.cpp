#include "app/report/lines.hpp"
#include "app/report/said.hpp"
#include "app/report/text_parts.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using words::Quantity;
using words::Speaker;

QString fact(const QString& name, const QString& text)
{
    return wrapped(QStringLiteral("  ") + name.leftJustified(14), text);
}

QString standing(const assess::UvPlace& place, const Speaker& speaker)
{
    return place.standing.empty() ? Said::tr("the bed") : speaker.name_of(place.standing);
}

QString shade(const assess::UvResult& uv, const words::Formatter& format)
{
    if (!uv.dark) {
        return {};
    }
    const QString surely = format.value(uv.dark->surely, Quantity::fraction);
    const QString at_most = format.value(uv.dark->at_most, Quantity::fraction);
    return fact({}, surely == at_most ? Said::tr("%1 of the floor has none").arg(surely)
                                      : Said::tr("%1 to %2 of the floor has none").arg(surely, at_most));
}

QString nearest(const assess::UvLampResult& lamp, const Speaker& speaker)
{
    const words::Formatter& format = speaker.formatter();
    QString text = Said::tr("%1: %2 from a back on %3 at the nearest")
                       .arg(speaker.name_of(lamp.id), format.value(lamp.nearest_m, Quantity::length),
                            standing(lamp.nearest, speaker));
    if (lamp.safe_distance_m) {
        text += Said::tr("; keep at least %1").arg(format.value(*lamp.safe_distance_m, Quantity::length));
    }
    return fact({}, text);
}

QString heights(const assess::UvResult& uv, const Speaker& speaker)
{
    if (!uv.needed || uv.lamps.empty() || !uv.uvi_at_basking) {
        return {};
    }
    if (!uv.heights) {
        return fact({}, Said::tr("no height of the lamp puts it inside the target"));
    }
    const words::Formatter& format = speaker.formatter();
    const QString from = format.value(uv.heights->from_m, Quantity::length);
    const QString to = format.value(uv.heights->to_m, Quantity::length);
    const QString name = speaker.name_of(uv.heights->lamp);
    return fact({}, uv.heights->whole_range
                        ? Said::tr("inside the target with %1 at %2 to %3 above the base").arg(name, from, to)
                        : Said::tr("likely inside the target with %1 at %2 to %3 above the base").arg(name, from, to));
}

QString fading(const assess::UvResult& uv, const words::Formatter& format)
{
    if (!uv.left.likely_h || *uv.left.likely_h <= 0.0) {
        return {};
    }
    QString text = Said::tr("falls below the target after about %1 of burning")
                       .arg(format.about(*uv.left.likely_h, Quantity::hours));
    if (uv.falls_out_on && uv.falls_out_earliest) {
        text +=
            Said::tr(", on %1 (earliest %2)").arg(format.date(*uv.falls_out_on), format.date(*uv.falls_out_earliest));
    }
    return fact({}, text);
}

} // namespace

QString text_uv(const assess::UvResult& uv, const Speaker& speaker)
{
    if (!uv.needed && !uv.uvi_at_basking) {
        return {};
    }
    const words::Formatter& format = speaker.formatter();
    QString text = fact(Said::tr("UV index"), Said::tr("%1; target %2: %3")
                                                  .arg(format.range(uv.uvi_at_basking, Quantity::uv_index),
                                                       format.target(uv.target_uvi, Quantity::uv_index),
                                                       words::verdict(uv.judgement, words::Subject::uv)));
    if (uv.lamps.empty()) {
        return text;
    }
    if (uv.strongest) {
        text +=
            fact({}, Said::tr("the most within reach is %1, on %2")
                         .arg(format.range(uv.strongest->uvi, Quantity::uv_index), standing(*uv.strongest, speaker)));
    }
    text += shade(uv, format);
    for (const assess::UvLampResult& lamp : uv.lamps) {
        text += nearest(lamp, speaker);
    }
    return text + heights(uv, speaker) + fading(uv, format);
}

} // namespace loam::report
