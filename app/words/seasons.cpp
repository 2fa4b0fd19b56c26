#include "app/words/seasons.hpp"

#include <QCoreApplication>

#include "app/words/label_words.hpp"

namespace loam::words {

namespace {

QString say(const char* text)
{
    return QCoreApplication::translate("seasons", text);
}

} // namespace

QString month_name(int month, const Formatter& formatter)
{
    return formatter.locale().standaloneMonthName(month, QLocale::ShortFormat);
}

QString stage_name(season::Stage stage)
{
    switch (stage) {
    case season::Stage::wind_down:
        return say("winding down");
    case season::Stage::cold:
        return say("cold");
    case season::Stage::warm_up:
        return say("warming up");
    }
    return {};
}

QString water_source(plan::WaterSource source)
{
    switch (source) {
    case plan::WaterSource::tap:
        return say("tap");
    case plan::WaterSource::filtered:
        return say("filtered");
    case plan::WaterSource::reverse_osmosis:
        return say("reverse osmosis");
    }
    return {};
}

QString answer(season::Answer answer)
{
    switch (answer) {
    case season::Answer::eligible:
        return say("may be cooled");
    case season::Answer::refused:
        return say("must not be cooled");
    case season::Answer::not_known:
        return say("not known");
    }
    return {};
}

QStringList bars(const std::vector<season::Bar>& bars)
{
    QStringList texts;
    for (const season::Bar bar : bars) {
        texts << label_word("reason", season::name_of(bar)).value_or(QString());
    }
    return texts;
}

QString stage_advice(season::Stage stage)
{
    switch (stage) {
    case season::Stage::wind_down:
        return say("No food. Water to drink and a bath every other day, so that the gut empties. In the first half as "
                   "warm as ever, in the second warmth and light fall evenly.");
    case season::Stage::cold:
        return say("Dark, and at an even temperature. Look at the thermometer's log every day, weigh every week, and "
                   "let fresh air in each time.");
    case season::Stage::warm_up:
        return say("Back to the usual warmth and light within days. A bath first, then food. If it does not eat within "
                   "a week, see a vet.");
    }
    return {};
}

QString how_months(bool hemisphere_known)
{
    return hemisphere_known ? say("What each device draws on a winter and on a summer day, joined by a cosine whose "
                                  "coldest day comes "
                                  "27.5 days after the shortest; the range covers a lag from none to twice that.")
                            : say("What each device draws on a winter and on a summer day. The latitude is not stated, "
                                  "so each month "
                                  "may be a winter's or a summer's, and the range covers both.");
}

} // namespace loam::words
