#include <cmath>

#include "app/report/lines.hpp"
#include "app/report/said.hpp"
#include "app/report/suggestions.hpp"
#include "app/report/text_parts.hpp"
#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using words::Formatter;
using words::Quantity;
using words::Speaker;

QString merit_words(suggest::Merit merit)
{
    switch (merit) {
    case suggest::Merit::cheapest_to_buy:
        return Said::tr("the cheapest to buy");
    case suggest::Merit::cheapest_over_years:
        return Said::tr("the cheapest over the years");
    case suggest::Merit::widest_margin:
        return Said::tr("the widest margin");
    }
    return {};
}

QString title(const suggest::Suggestion& one, std::size_t number)
{
    QStringList merits;
    for (const suggest::Merit merit : one.merits) {
        merits << merit_words(merit);
    }
    return Said::tr("%1. %2").arg(number).arg(merits.join(QStringLiteral(", ")));
}

QString fact(const QString& name, const QString& value)
{
    return row(2, {{name, 22}, {value}});
}

QString device_text(const plan::Device& device, const Formatter& format)
{
    QString text = device.power_w ? format.value(*device.power_w, Quantity::power) : Said::tr("watts not stated");
    if (device.control.kind == plan::ControlKind::thermostat && device.control.setpoint_c) {
        text += QStringLiteral(", ") +
                Said::tr("thermostat at %1").arg(format.value(*device.control.setpoint_c, Quantity::temperature));
    } else if (device.control.kind == plan::ControlKind::dimmer) {
        text += QStringLiteral(", ") + Said::tr("dimmer");
    }
    return text + QStringLiteral(", ") +
           (device.supply == plan::Supply::always_on ? Said::tr("always on") : Said::tr("by the timer"));
}

QString enclosure_rows(const plan::Enclosure& enclosure, const Formatter& format)
{
    const plan::Shell& shell = enclosure.shell;
    QString text = row(2, {{QString::fromStdString(enclosure.name.empty() ? enclosure.id : enclosure.name)}});
    text += fact(Said::tr("  Box"),
                 Said::tr("%1 × %2 × %3")
                     .arg(format.value(shell.length_m, Quantity::length), format.value(shell.width_m, Quantity::length),
                          format.value(shell.height_m, Quantity::length)));
    for (const plan::Device& device : enclosure.equipment) {
        text += fact(QStringLiteral("  ") + words::capitalised(words::device_kind(device.kind)),
                     device_text(device, format));
    }
    double covered_m2 = 0.0;
    for (const plan::Cover& cover : shell.top.covers) {
        covered_m2 += cover.length_m * cover.width_m;
    }
    text += fact(Said::tr("  Top covered"),
                 format.value(covered_m2 / (shell.length_m * shell.width_m), Quantity::fraction));
    return text + fact(Said::tr("  Misting, a day"),
                       format.value(enclosure.moisture.misting_l_per_day.value_or(0.0), Quantity::volume));
}

QString money_rows(const assess::Costs& costs, const Formatter& format)
{
    if (!costs.prices_match_currency) {
        return fact(Said::tr("To begin"), Said::tr("not known: the price list is in another currency"));
    }
    QString text = fact(Said::tr("To begin"), format.money(costs.startup));
    text += fact(Said::tr("To run, a year"), format.money(costs.running_per_year));
    if (costs.net_present_cost) {
        text += fact(Said::tr("Net present cost"), format.money(*costs.net_present_cost));
    }
    if (costs.without_electricity) {
        text += wrapped(QStringLiteral("  "), Said::tr("Electricity is not in it: its price is not stated."));
    }
    return text;
}

QString findings_text(const QString& title, const std::vector<Finding>& findings, const Speaker& speaker)
{
    QString text = findings.empty() ? QString() : row(2, {{title}});
    for (const Finding& finding : findings) {
        text += text_finding(finding, speaker);
    }
    return text;
}

QString suggestion_text(const suggest::Suggestion& one, std::size_t number, const QString& file,
                        const catalog::Catalog& catalog, const Formatter& format)
{
    const Speaker speaker(format, one.plan, catalog);
    QString text = heading(title(one, number));
    for (const plan::Enclosure& enclosure : one.plan.enclosures) {
        text += enclosure_rows(enclosure, format);
    }
    text += money_rows(one.assessment.costs, format);
    if (std::isfinite(one.margin_k)) {
        text += fact(Said::tr("Margin, ranges and all"), format.value(one.margin_k, Quantity::temperature_difference));
    }
    if (one.missed_k > 0.0) {
        text += fact(Said::tr("Missed, likely values"), format.value(one.missed_k, Quantity::temperature_difference) +
                                                            Said::tr(" over all zones, every dimmer at one setting"));
    }
    text += findings_text(Said::tr("What stands in the way:"), suggest::obstacles(one.assessment), speaker);
    text += findings_text(Said::tr("Besides, what no equipment settles:"), suggest::besides(one.assessment), speaker);
    return file.isEmpty() ? text : text + fact(Said::tr("Plan"), file);
}

QString remarks(const suggest::Result& result, const Formatter& format)
{
    QString text;
    const auto tell = [&](const std::vector<std::string>& ids, const QString& words) {
        for (const std::string& id : ids) {
            text += wrapped({}, words.arg(QString::fromStdString(id)));
        }
    };
    tell(result.deeper_beds,
         Said::tr("%1: the bed is too shallow for its animals; it was filled up to what they dig."));
    tell(result.new_boxes,
         Said::tr("%1: the box is too small for its animals; a larger one of a usual size was taken."));
    tell(result.no_box,
         Said::tr("%1: the box is too small for its animals, and stayed as it is: no usual size is enough, or "
                  "it was to be kept."));
    tell(result.unknown,
         Said::tr("%1: its climate can't be computed from what the plan states, so it was left as it is."));
    if (result.least_to_begin) {
        text +=
            wrapped({}, Said::tr("Nothing that meets every target can be had for what may be spent. The least to begin "
                                 "with is %1.")
                            .arg(format.money(*result.least_to_begin)));
    }
    return text;
}

} // namespace

QString text_suggestions(const Suggestions& suggestions, const catalog::Catalog& catalog, const Formatter& formatter)
{
    const suggest::Result& result = suggestions.result;
    const bool meets = !result.suggestions.empty() && result.suggestions.front().meets;
    QString text =
        wrapped({}, result.suggestions.empty() ? Said::tr("Nothing can be suggested.")
                    : meets ? Said::tr("These meet every target that equipment can meet, in winter and summer, "
                                       "by the likely value; no end of a range and no drill is a danger. Where "
                                       "an end of a range misses a target, the margin is negative.")
                            : Said::tr("Nothing that was tried meets every target. These come nearest:"));
    text += wrapped({}, Said::tr("Sets of equipment that were worked out: %1.").arg(result.tried));
    text += remarks(result, formatter);
    for (std::size_t i = 0; i < result.suggestions.size(); ++i) {
        text += suggestion_text(result.suggestions[i], i + 1, suggestions.files.value(static_cast<qsizetype>(i)),
                                catalog, formatter);
    }
    return text + QLatin1Char('\n') +
           wrapped({},
                   Said::tr("Prove any of them with thermometers for several days before an animal moves in. Wiring is "
                            "an electrician's work; an ill animal is a vet's."));
}

QString suggestion_in_short(const suggest::Suggestion& suggestion, const catalog::Catalog& catalog,
                            const Formatter& formatter)
{
    QStringList merits;
    for (const suggest::Merit merit : suggestion.merits) {
        merits << merit_words(merit);
    }
    const assess::Costs& costs = suggestion.assessment.costs;
    const QString money = costs.prices_match_currency
                              ? formatter.money(costs.startup)
                              : Said::tr("cost not known: the price list is in another currency");
    QStringList parts;
    for (const plan::Enclosure& enclosure : suggestion.plan.enclosures) {
        for (const plan::Device& device : enclosure.equipment) {
            parts << Said::tr("%1 %2").arg(words::device_kind(device.kind), device_text(device, formatter));
        }
        const double misting_l = enclosure.moisture.misting_l_per_day.value_or(0.0);
        if (misting_l > 0.0) {
            parts << Said::tr("misting %1 a day").arg(formatter.value(misting_l, Quantity::volume));
        }
    }
    QStringList lines{Said::tr("%1: %2 to begin").arg(words::capitalised(merits.join(QStringLiteral(", "))), money),
                      parts.join(QStringLiteral("; "))};
    const std::vector<Finding> in_the_way = suggest::obstacles(suggestion.assessment);
    if (!in_the_way.empty()) {
        const Speaker speaker(formatter, suggestion.plan, catalog);
        lines << words::capitalised(words::verdict(in_the_way.front().verdict)) + QStringLiteral(": ") +
                     speaker.finding(in_the_way.front());
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace loam::report
