#include "app/words/seasons.hpp"

#include <QCoreApplication>

#include "app/words/label_words.hpp"

namespace loam::words {

namespace {

// The translator finds these texts under "seasons".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(seasons)
};

} // namespace

QString month_name(int month, const Formatter& formatter)
{
    return formatter.locale().standaloneMonthName(month, QLocale::ShortFormat);
}

QString stage_name(season::Stage stage)
{
    switch (stage) {
    case season::Stage::wind_down:
        return Said::tr("winding down");
    case season::Stage::cold:
        return Said::tr("cold");
    case season::Stage::warm_up:
        return Said::tr("warming up");
    }
    return {};
}

QString water_source(plan::WaterSource source)
{
    switch (source) {
    case plan::WaterSource::tap:
        return Said::tr("tap");
    case plan::WaterSource::filtered:
        return Said::tr("filtered");
    case plan::WaterSource::reverse_osmosis:
        return Said::tr("reverse osmosis");
    }
    return {};
}

QString answer(season::Answer answer)
{
    switch (answer) {
    case season::Answer::eligible:
        return Said::tr("may be cooled");
    case season::Answer::refused:
        return Said::tr("must not be cooled");
    case season::Answer::not_known:
        return Said::tr("not known");
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
        return Said::tr(
            "No food. Water to drink and a bath every other day, so that the gut empties. In the first half as "
            "warm as ever, in the second warmth and light fall evenly.");
    case season::Stage::cold:
        return Said::tr(
            "Dark, and at an even temperature. Look at the thermometer's log every day, weigh every week, and "
            "let fresh air in each time.");
    case season::Stage::warm_up:
        return Said::tr(
            "Back to the usual warmth and light within days. A bath first, then food. If it does not eat within "
            "a week, see a vet.");
    }
    return {};
}

QString how_months(bool hemisphere_known)
{
    return hemisphere_known
               ? Said::tr("What each device draws on a winter and on a summer day, joined by a cosine whose "
                          "coldest day comes "
                          "27.5 days after the shortest; the range covers a lag from none to twice that.")
               : Said::tr("What each device draws on a winter and on a summer day. The latitude is not stated, "
                          "so each month "
                          "may be a winter's or a summer's, and the range covers both.");
}

} // namespace loam::words
