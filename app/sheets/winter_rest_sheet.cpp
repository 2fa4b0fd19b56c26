#include <QObject>

#include "app/sheets/contents.hpp"
#include "app/words/capitals.hpp"
#include "app/words/seasons.hpp"
#include "core/assess/iso_day.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

QString day_text(std::chrono::sys_days day, const Request& request)
{
    return request.formatter.iso_date(assess::iso_of(day));
}

void add_refusal(Content& content, const assess::CoolSeasonResult& rest)
{
    const QString why = words::bars(rest.eligibility.bars).join(QStringLiteral("; "));
    if (rest.eligibility.answer == season::Answer::refused) {
        content.blocks.push_back(Caution{QObject::tr("This animal must not be cooled: %1. Keep it warm and fed through "
                                                     "the winter. There is no plan for it.")
                                             .arg(why)});
    } else {
        content.blocks.push_back(
            Caution{why.isEmpty()
                        ? QObject::tr("No rest is planned: the dates that are stated are over or not of the calendar.")
                        : QObject::tr("Whether this animal may be cooled is not known: %1. Until it is, no rest is "
                                      "planned.")
                              .arg(why)});
    }
}

void add_before(Content& content, const assess::CoolSeasonResult& rest, const Request& request)
{
    content.blocks.push_back(Heading{QObject::tr("Before it")});
    content.blocks.push_back(Paragraph{QObject::tr(
        "A reptile vet sees the animal, with a faecal sample, within the eight weeks before the first day without "
        "food. An animal that is ill, thin or in its first winter stays warm.")});
    if (rest.vet_check_counts) {
        content.blocks.push_back(
            Paragraph{QObject::tr("Vet's check stated: %1.").arg(request.formatter.iso_date(rest.vet_checked))});
    }
    content.blocks.push_back(Blank{QObject::tr("Checked on, by")});
    content.blocks.push_back(Blank{QObject::tr("Vet's telephone")});
}

void add_weeks(Content& content, const assess::CoolSeasonResult& rest, const Request& request)
{
    Table table{{{QObject::tr("Week of"), 1.4, false},
                 {QObject::tr("Stage"), 1.4, false},
                 {QObject::tr("By its end"), 1.2, true},
                 {QObject::tr("Light and heat"), 1.2, true},
                 {QObject::tr("Lowest and highest read"), 2.0, false}},
                {}};
    for (const season::Week& week : rest.weeks) {
        const Target band{week.by_its_end_c.low, week.by_its_end_c.high, {}};
        table.rows.push_back({.cells = {day_text(week.from, request),
                                        words::stage_name(week.stage),
                                        request.formatter.target(band, Quantity::temperature),
                                        request.formatter.value(week.running_share_at_end, Quantity::fraction),
                                        {}},
                              .tick = true});
    }
    content.blocks.push_back(Heading{QObject::tr("Week by week")});
    for (const season::Stage stage : {season::Stage::wind_down, season::Stage::cold, season::Stage::warm_up}) {
        content.blocks.push_back(Paragraph{
            QObject::tr("%1 — %2").arg(words::capitalised(words::stage_name(stage)), words::stage_advice(stage))});
    }
    content.blocks.push_back(std::move(table));
}

void add_weights(Content& content, const assess::CoolSeasonResult& rest, const Request& request)
{
    Table table{{{QObject::tr("Weigh on"), 1.4, false},
                 {QObject::tr("Ask a vet below"), 1.3, true},
                 {QObject::tr("End the rest below"), 1.4, true},
                 {QObject::tr("Weight"), 1.4, false}},
                {}};
    for (const season::WeighIn& one : rest.weigh_ins) {
        table.rows.push_back({.cells = {day_text(one.on, request),
                                        request.formatter.value(one.ask_below_kg, Quantity::small_mass),
                                        request.formatter.value(one.stop_below_kg, Quantity::small_mass),
                                        {}},
                              .tick = true});
    }
    content.blocks.push_back(Heading{QObject::tr("Weights")});
    content.blocks.push_back(Paragraph{
        QObject::tr("For an animal of %1 when the cold begins. If it weighs something else on that day, count anew: "
                    "end the rest at a loss of %2, ask a vet at more than %3 a month. End it too if the animal is "
                    "wet, wakes, or passes urine.")
            .arg(request.formatter.value(rest.mass_kg, Quantity::small_mass),
                 request.formatter.value(rest.stop_loss, Quantity::fraction),
                 request.formatter.value(rest.monthly_loss, Quantity::fraction))});
    content.blocks.push_back(std::move(table));
    content.blocks.push_back(
        Paragraph{QObject::tr("Weights: %1").arg(QString::fromStdString(rest.loss_source.citation))});
    content.blocks.push_back(
        Paragraph{QObject::tr("Temperatures: %1").arg(QString::fromStdString(rest.cold_source.citation))});
}

} // namespace

bool has_winter_rest(const assess::Assessment& assessment)
{
    for (const assess::EnclosureResult& enclosure : assessment.enclosures) {
        for (const assess::CoolSeasonResult& rest : enclosure.cool_seasons) {
            if (rest.asked) {
                return true;
            }
        }
    }
    return false;
}

Content winter_rest_content(const Request& request, const words::Speaker& speaker)
{
    Content content = begun(Sheet::winter_rest, request);
    add_dangers(content, request, speaker);
    for (const assess::EnclosureResult& enclosure : request.assessment.enclosures) {
        for (const assess::CoolSeasonResult& rest : enclosure.cool_seasons) {
            if (!rest.asked) {
                continue;
            }
            content.blocks.push_back(
                Heading{QObject::tr("%1 (%2), %3: %4")
                            .arg(words::capitalised(speaker.name_of(rest.animal)), speaker.name_of(rest.species),
                                 speaker.name_of(enclosure.id), words::answer(rest.eligibility.answer))});
            if (rest.rest) {
                add_before(content, rest, request);
                add_weeks(content, rest, request);
                add_weights(content, rest, request);
            } else {
                add_refusal(content, rest);
            }
        }
    }
    if (!has_winter_rest(request.assessment)) {
        content.blocks.push_back(Paragraph{QObject::tr("No winter rest is asked for in this plan.")});
    }
    add_unknowns(content, Sheet::winter_rest, request, speaker);
    add_cautions(content, Sheet::winter_rest);
    return content;
}

} // namespace loam::sheets
