#include "app/desk/views/season_rows.hpp"

#include <QObject>

#include "app/words/seasons.hpp"
#include "app/words/verdicts.hpp"
#include "core/assess/iso_day.hpp"

namespace loam::desk {

namespace {

using words::Formatter;
using words::Quantity;

constexpr double days_a_month = 365.0 / 12.0;

Range times(const Range& range, double factor)
{
    return {range.low * factor, range.likely * factor, range.high * factor};
}

void add_bowls(FigureGroup& group, const assess::WaterResult& water, const words::Speaker& speaker)
{
    const Formatter& formatter = speaker.formatter();
    for (const assess::BowlResult& bowl : water.bowls) {
        const QString name = speaker.name_of(bowl.id);
        FigureRow depth =
            figure_row(QObject::tr("Depth of water in %1").arg(name), bowl.water_depth_m, Quantity::length, formatter,
                       QObject::tr("What is stated, against the body of the animals here and its height; the verdict "
                                   "counts the bowl's size too."));
        depth.target = formatter.target(bowl.depth_m, Quantity::length);
        depth.why.source = words::source(bowl.depth_m.source);
        depth.why.judgement = bowl.judgement;
        depth.why.verdict_words = words::verdict(bowl.judgement, words::Subject::plain);
        depth.why.where = QString::fromStdString(bowl.id);
        group.rows.push_back(depth);
        group.rows.push_back(
            figure_row(QObject::tr("Water in %1").arg(name), bowl.volume_l, Quantity::volume, formatter,
                       QObject::tr("Length by width by depth, less a fifth for round corners and sloped sides.")));
        group.rows.push_back(
            figure_row(QObject::tr("To lift, %1 full").arg(name), bowl.carried_kg, Quantity::mass, formatter,
                       QObject::tr("A kilogram for each litre, and the bowl where its weight is stated.")));
    }
}

void add_supply(FigureGroup& group, const assess::WaterResult& water, const Formatter& formatter)
{
    if (water.source && water.drawn_l_per_day) {
        group.rows.push_back(
            figure_row(QObject::tr("Drawn from the mains a day"), *water.drawn_l_per_day, Quantity::volume, formatter,
                       QObject::tr("From the source that is stated: %1. Reverse osmosis sends several times what "
                                   "it makes to the drain.")
                           .arg(words::water_source(*water.source))));
    } else {
        group.rows.push_back(said_row(QObject::tr("Drawn from the mains a day"), QObject::tr("not known"),
                                      QObject::tr("It is not stated where the water comes from.")));
    }
    if (water.price_per_year) {
        group.rows.push_back(said_row(QObject::tr("Water costs a year"), formatter.money(water.price_per_year->typical),
                                      QObject::tr("What is drawn, at the price that is stated.")));
    }
    if (water.cartridges_per_year) {
        group.rows.push_back(figure_row(QObject::tr("Filter cartridges a year"), *water.cartridges_per_year,
                                        Quantity::number, formatter,
                                        QObject::tr("Litres that pass them over the litres one is good for. Their "
                                                    "makers set a greatest age besides.")));
    }
}

void add_conditioner(FigureGroup& group, const assess::WaterResult& water, const Formatter& formatter)
{
    if (!water.conditioner_ml_per_day || !water.conditioner_ml_per_fill) {
        return;
    }
    group.rows.push_back(figure_row(QObject::tr("Treated water a month"), times(water.treated_l_per_day, days_a_month),
                                    Quantity::volume, formatter,
                                    QObject::tr("All water for bowls, and for amphibians the mist.")));
    group.rows.push_back(figure_row(QObject::tr("Conditioner for one fill"), *water.conditioner_ml_per_fill,
                                    Quantity::dose, formatter,
                                    QObject::tr("All bowls filled once, by the dose; the bottle's label counts.")));
    group.rows.push_back(figure_row(QObject::tr("Conditioner a month"),
                                    times(*water.conditioner_ml_per_day, days_a_month), Quantity::dose, formatter,
                                    QObject::tr("The treated water by the dose.")));
}

QString day_text(std::chrono::sys_days day, const Formatter& formatter)
{
    return formatter.iso_date(assess::iso_of(day));
}

} // namespace

FigureGroup water_group(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const Formatter& formatter = speaker.formatter();
    const assess::WaterResult& water = enclosure.water;
    FigureGroup group{QObject::tr("Water"), {}};
    group.rows.push_back(
        figure_row(QObject::tr("Water a day"), water.daily_l, Quantity::volume, formatter,
                   QObject::tr("Bowls as often as they are changed, what evaporates from them, and what is "
                               "misted.")));
    group.rows.push_back(figure_row(QObject::tr("Water a month"), times(water.daily_l, days_a_month), Quantity::volume,
                                    formatter, QObject::tr("The same over a month of 30.4 days.")));
    group.rows.push_back(figure_row(QObject::tr("Changes a day"), water.changes_per_day, Quantity::number, formatter,
                                    QObject::tr("As stated, or as often as the species' sheet asks for.")));
    group.rows.push_back(figure_row(
        QObject::tr("Topped up a day"), water.top_up_l_per_day, Quantity::volume, formatter,
        water.by_climate ? QObject::tr("What evaporates from the bowls in the solved balance of heat and moisture, "
                                       "from winter to summer.")
                         : QObject::tr("What evaporates from still water of the bowls' area, by published "
                                       "correlations.")));
    if (water.bed_l_per_day) {
        group.rows.push_back(figure_row(
            QObject::tr("Poured into the bed a day"), *water.bed_l_per_day, Quantity::volume, formatter,
            QObject::tr(
                "What evaporates from bed and mist in the solved balance of heat and moisture, less what is misted and "
                "what condenses and drips back: so much keeps the bed as damp as planned. Below nought it gets "
                "wetter.")));
    }
    add_bowls(group, water, speaker);
    add_conditioner(group, water, formatter);
    add_supply(group, water, formatter);
    return group;
}

std::vector<FigureGroup> rest_groups(const assess::EnclosureResult& enclosure, const words::Speaker& speaker)
{
    const Formatter& formatter = speaker.formatter();
    std::vector<FigureGroup> groups;
    for (const assess::CoolSeasonResult& rest : enclosure.cool_seasons) {
        if (!rest.asked) {
            continue;
        }
        FigureGroup group{QObject::tr("Winter rest, %1").arg(speaker.name_of(rest.animal)), {}};
        FigureRow answer =
            said_row(QObject::tr("May it be cooled"), words::answer(rest.eligibility.answer),
                     QObject::tr("Only animals of species that rest, well, of full weight and past their first "
                                 "winter may be cooled."));
        answer.why.inputs = words::bars(rest.eligibility.bars).join(QLatin1Char('\n'));
        answer.why.source = words::source(rest.species_source);
        group.rows.push_back(answer);
        for (const season::Week& week : rest.weeks) {
            FigureRow row = said_row(QObject::tr("Week of %1").arg(day_text(week.from, formatter)),
                                     words::stage_name(week.stage), words::stage_advice(week.stage));
            row.target = formatter.target({week.by_its_end_c.low, week.by_its_end_c.high, {}}, Quantity::temperature);
            row.why.source = words::source(rest.cold_source);
            group.rows.push_back(row);
        }
        for (const season::WeighIn& one : rest.weigh_ins) {
            FigureRow row =
                said_row(QObject::tr("Weight on %1").arg(day_text(one.on, formatter)),
                         formatter.value(one.ask_below_kg, Quantity::small_mass),
                         QObject::tr("Under this weight more is lost than one per cent a month: ask a vet. At the "
                                     "weight under “Target” the rest ends."));
            row.target = QObject::tr("end below %1").arg(formatter.value(one.stop_below_kg, Quantity::small_mass));
            row.why.source = words::source(rest.loss_source);
            group.rows.push_back(row);
        }
        groups.push_back(std::move(group));
    }
    return groups;
}

} // namespace loam::desk
