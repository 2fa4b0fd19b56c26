#include <QCoreApplication>

#include "app/report/comparison.hpp"
#include "app/report/lines.hpp"
#include "app/words/verdicts.hpp"

namespace loam::report {

namespace {

using assess::Compared;
using assess::Sides;
using words::Formatter;
using words::Quantity;

QString say(const char* text)
{
    return QCoreApplication::translate("report", text);
}

QString beside(const QString& name, const Sides<QString>& sides)
{
    return row(2, {{name, 22}, {sides[0], 27}, {sides[1], 27}});
}

template <typename T, typename One> Sides<QString> each(const Sides<T>& sides, const One& one)
{
    return {one(sides[0]), one(sides[1])};
}

constexpr Sides<std::size_t> both{0, 1};

struct Shown {
    QString name;
    Quantity quantity;
};

Shown shown(Compared what)
{
    switch (what) {
    case Compared::floor_m2:
        return {say("Floor"), Quantity::area};
    case Compared::usable_floor_m2:
        return {say("  can be walked on"), Quantity::area};
    case Compared::required_floor_m2:
        return {say("  asked for"), Quantity::area};
    case Compared::connected_w:
        return {say("Connected"), Quantity::power};
    case Compared::year_kwh:
        return {say("Energy in a year"), Quantity::energy};
    case Compared::winter_day_kwh:
        return {say("  on a winter day"), Quantity::energy};
    case Compared::summer_day_kwh:
        return {say("  on a summer day"), Quantity::energy};
    case Compared::water_l_per_day:
        return {say("Water a day"), Quantity::volume};
    case Compared::mass_kg:
        return {say("Mass"), Quantity::mass};
    }
    return {};
}

// "27.1–31.4 °C fits": a figure and the word for it.
QString judged(const QString& figure, const Judgement& judgement)
{
    return figure + QLatin1Char(' ') + words::verdict(judgement.verdict);
}

// What stands for a figure that is not known, or whose enclosure is not there.
QString absent(const assess::ComparedEnclosure& enclosure, std::size_t side)
{
    return enclosure.ids[side].empty() ? QStringLiteral("–") : say("not known");
}

QString climate_rows(const assess::ComparedEnclosure& enclosure, const Formatter& format)
{
    QString text;
    QString case_id;
    for (const assess::ComparedZone& zone : enclosure.zones) {
        if (case_id != QString::fromStdString(zone.case_id)) {
            case_id = QString::fromStdString(zone.case_id);
            text += row(2, {{words::case_name(zone.case_id)}});
        }
        text += beside(QStringLiteral("  ") + words::zone(zone.zone), each(zone.sides, [&](const auto& side) {
                           return side
                                      ? judged(format.span(side->temperature_c, Quantity::temperature), side->judgement)
                                      : QStringLiteral("–");
                       }));
    }
    text += enclosure.humidity.empty() ? QString() : row(2, {{say("Humidity")}});
    for (const assess::ComparedHumidity& humidity : enclosure.humidity) {
        text +=
            beside(QStringLiteral("  ") + words::case_name(humidity.case_id), each(both, [&](std::size_t side) {
                       const auto& there = humidity.sides[side];
                       return there && there->relative_humidity
                                  ? judged(format.span(*there->relative_humidity, Quantity::fraction), there->judgement)
                                  : absent(enclosure, side);
                   }));
    }
    return text;
}

QString enclosure_text(const assess::ComparedEnclosure& enclosure, const Formatter& format)
{
    const Sides<QString> names = each(both, [&](std::size_t side) {
        const std::string& name = enclosure.names[side].empty() ? enclosure.ids[side] : enclosure.names[side];
        return name.empty() ? say("(none)") : QString::fromStdString(name);
    });
    const auto unknown = [&](std::size_t side) { return absent(enclosure, side); };
    const auto verdict = [&](const Sides<Judgement>& judgements) {
        return each(both, [&](std::size_t side) {
            return enclosure.ids[side].empty() ? unknown(side) : words::verdict(judgements[side].verdict);
        });
    };
    QString text = heading(names[0] == names[1] ? names[0] : names[0] + QStringLiteral(" | ") + names[1]);
    text += beside(say("All in all"), verdict(enclosure.overall));
    text += beside(say("Space"), verdict(enclosure.space));
    for (const assess::ComparedFigure& figure : enclosure.figures) {
        const Shown as = shown(figure.what);
        text += beside(as.name, each(both, [&](std::size_t side) {
                           const auto& value = figure.values[side];
                           return value ? format.span(*value, as.quantity) : unknown(side);
                       }));
    }
    return text + climate_rows(enclosure, format);
}

QString payback_text(const assess::PaybackResult& payback, const Formatter& format)
{
    const QString years = payback.years ? format.value(*payback.years, Quantity::years) : QString();
    switch (payback.kind) {
    case assess::Payback::at_once:
        return say("The second costs no more to start and no more to run.");
    case assess::Payback::after:
        return say("What the second costs more to start comes back in %1 by what it costs less to run.").arg(years);
    case assess::Payback::never:
        return say("The second costs no less to start and no less to run: nothing comes back.");
    case assess::Payback::trade:
        return say("The second costs less to start and more to run: after %1 it has cost more.").arg(years);
    case assess::Payback::not_known:
        break;
    }
    return say("Whether it pays back is not known: a tariff is missing, different things have no price, or the price "
               "list is in another currency.");
}

QString costs_text(const TwoPlans& plans, const Formatter& format)
{
    const auto typical = [&](MoneyRange assess::Costs::*sum) {
        return each(plans.sides, [&](const assess::Assessment* side) {
            return side->costs.prices_match_currency ? format.money((side->costs.*sum).typical) : say("not known");
        });
    };
    const auto amount = [&](std::optional<Money> assess::Costs::*sum) {
        return each(plans.sides, [&](const assess::Assessment* side) {
            return side->costs.*sum ? format.money(*(side->costs.*sum)) : say("not known");
        });
    };
    QString text = heading(say("Costs, at typical prices"));
    text += beside(say("To start"), typical(&assess::Costs::startup));
    text += beside(say("To run, per year"), typical(&assess::Costs::running_per_year));
    text += beside(say("  of that, electricity"), each(plans.sides, [&](const assess::Assessment* side) {
                       const auto& electricity = side->costs.electricity_per_year;
                       return electricity ? format.money(electricity->typical) : say("not known");
                   }));
    text += beside(say("Net present cost"), amount(&assess::Costs::net_present_cost));
    text += beside(say("As a sum each year"), amount(&assess::Costs::equivalent_annual_cost));
    text += beside(say("Without a price"), each(plans.sides, [&](const assess::Assessment* side) {
                       return format.count(static_cast<std::int64_t>(side->costs.unpriced.size()));
                   }));
    if (plans.sides[0]->costs.without_electricity || plans.sides[1]->costs.without_electricity) {
        text += beside(say("Electricity in it"), each(plans.sides, [&](const assess::Assessment* side) {
                           return side->costs.without_electricity ? say("no: its price is not stated") : say("yes");
                       }));
    }
    text += wrapped(QStringLiteral("  "), payback_text(plans.comparison.payback, format));
    return plans.sides[0]->costs.price_illustrative
               ? text + wrapped(QStringLiteral("  "), say("The prices are invented examples."))
               : text;
}

QString purchases_text(const std::vector<assess::ComparedPurchase>& purchases, const words::Speaker& speaker)
{
    QString text = heading(say("Bought in different numbers"));
    if (purchases.empty()) {
        return text + wrapped(QStringLiteral("  "), say("Nothing: both orders are the same."));
    }
    const Formatter& format = speaker.formatter();
    for (const assess::ComparedPurchase& one : purchases) {
        const QString name = one.item_name.empty() ? speaker.need(one.need) : QString::fromStdString(one.item_name);
        const bool named = one.pack.empty() || one.pack == "one";
        text += row(2, {{format.count(one.packs[0]), 4, true},
                        {format.count(one.packs[1]), 4, true},
                        {named ? name : name + QStringLiteral(", ") + QString::fromStdString(one.pack), 66}});
    }
    return text;
}

} // namespace

QString text_comparison(const TwoPlans& plans, const words::Speaker& speaker)
{
    const Formatter& format = speaker.formatter();
    QString text = wrapped(say("First:  "), QString::fromStdString(plans.sides[0]->plan_title));
    text += wrapped(say("Second: "), QString::fromStdString(plans.sides[1]->plan_title));
    text += wrapped({}, say("Assessed as of %1.").arg(format.date(plans.sides[0]->date)));
    for (const assess::ComparedEnclosure& enclosure : plans.comparison.enclosures) {
        text += enclosure_text(enclosure, format);
    }
    return text + costs_text(plans, format) + purchases_text(plans.comparison.purchases, speaker);
}

} // namespace loam::report
