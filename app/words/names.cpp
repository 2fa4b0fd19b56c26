// The words for core's closed lists.
#include <QCoreApplication>

#include <array>
#include <cstring>
#include <utility>

#include "app/words/verdicts.hpp"

namespace loam::words {

namespace {

// The translator finds these texts under "names".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(names)
};

template <std::size_t N, class E> QString nth(const std::array<const char*, N>& words, E value)
{
    const auto index = static_cast<std::size_t>(value);
    return index < N ? Said::tr(words[index]) : QString();
}

// How the guidance begins its own remarks on a source. What follows, like a title, stays as it was written.
QString opening_translated(const QString& citation)
{
    static constexpr std::array openings{QT_TRANSLATE_NOOP("names", "Common practice, no source"),
                                         QT_TRANSLATE_NOOP("names", "Common practice, from memory"),
                                         QT_TRANSLATE_NOOP("names", "From memory, not checked"),
                                         QT_TRANSLATE_NOOP("names", "No source")};
    for (const char* opening : openings) {
        if (citation.startsWith(QLatin1String(opening))) {
            return Said::tr(opening) + citation.mid(static_cast<qsizetype>(std::strlen(opening)));
        }
    }
    return citation;
}

} // namespace

QString zone(assess::Zone zone)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "basking spot"),
                                      QT_TRANSLATE_NOOP("names", "warm side"), QT_TRANSLATE_NOOP("names", "cool side")};
    return nth(words, zone);
}

QString measure(climate::Measure measure)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "surface"), QT_TRANSLATE_NOOP("names", "ground level"),
                                      QT_TRANSLATE_NOOP("names", "animal's back")};
    return nth(words, measure);
}

QString instrument(climate::Measure measure)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "infrared thermometer"),
                                      QT_TRANSLATE_NOOP("names", "shaded thermometer at ground level"),
                                      QT_TRANSLATE_NOOP("names", "computed, not read from an instrument")};
    return nth(words, measure);
}

QString reading_use(assess::ReadingUse use)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "used"),
                                      QT_TRANSLATE_NOOP("names", "left out: doesn't fit"),
                                      QT_TRANSLATE_NOOP("names", "not used: the readings don't fit together"),
                                      QT_TRANSLATE_NOOP("names", "not used: outside the box"),
                                      QT_TRANSLATE_NOOP("names", "not used: lamps on or off?"),
                                      QT_TRANSLATE_NOOP("names", "not used: at which dimmer level?")};
    return nth(words, use);
}

QString case_name(std::string_view id)
{
    static constexpr std::array<std::pair<std::string_view, const char*>, 9> words{{
        {"winter-day", QT_TRANSLATE_NOOP("names", "winter day")},
        {"winter-night", QT_TRANSLATE_NOOP("names", "winter night")},
        {"summer-day", QT_TRANSLATE_NOOP("names", "summer day")},
        {"summer-night", QT_TRANSLATE_NOOP("names", "summer night")},
        {"heat-wave", QT_TRANSLATE_NOOP("names", "heat wave")},
        {"power-cut", QT_TRANSLATE_NOOP("names", "power cut")},
        {"lamp-out", QT_TRANSLATE_NOOP("names", "lamp burnt out")},
        {"mat-stuck-on", QT_TRANSLATE_NOOP("names", "mat stuck on")},
        {"covers-off", QT_TRANSLATE_NOOP("names", "covers forgotten off")},
    }};
    for (const auto& [known, word] : words) {
        if (known == id) {
            return Said::tr(word);
        }
    }
    return QString::fromUtf8(id);
}

QString category(catalog::Category category)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "Enclosure"), QT_TRANSLATE_NOOP("names", "Heat"),
                                      QT_TRANSLATE_NOOP("names", "Light"),     QT_TRANSLATE_NOOP("names", "Controls"),
                                      QT_TRANSLATE_NOOP("names", "Substrate"), QT_TRANSLATE_NOOP("names", "Furniture"),
                                      QT_TRANSLATE_NOOP("names", "Water"),     QT_TRANSLATE_NOOP("names", "Electrical"),
                                      QT_TRANSLATE_NOOP("names", "Measuring"), QT_TRANSLATE_NOOP("names", "Hygiene"),
                                      QT_TRANSLATE_NOOP("names", "Food"),      QT_TRANSLATE_NOOP("names", "Health"),
                                      QT_TRANSLATE_NOOP("names", "Other")};
    return nth(words, category);
}

QString rule_kind(catalog::RuleKind kind)
{
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("names", "statutory figure"), QT_TRANSLATE_NOOP("names", "welfare advice"),
        QT_TRANSLATE_NOOP("names", "veterinary advice"), QT_TRANSLATE_NOOP("names", "laboratory minimum")};
    return nth(words, kind);
}

QString confidence(Confidence confidence)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "confirmed"), QT_TRANSLATE_NOOP("names", "derived"),
                                      QT_TRANSLATE_NOOP("names", "second-hand, unconfirmed"),
                                      QT_TRANSLATE_NOOP("names", "from memory, unconfirmed"),
                                      QT_TRANSLATE_NOOP("names", "common practice, no source")};
    return nth(words, confidence);
}

QString source(const Source& source)
{
    QString citation = QString::fromStdString(source.citation).trimmed();
    if (citation.isEmpty()) {
        return {};
    }
    // The data is plain ASCII; a reader is shown the sign.
    citation.replace(QStringLiteral("degC"), QStringLiteral("°C"))
        .replace(QStringLiteral("degF"), QStringLiteral("°F"));
    const bool says_it_already = (source.confidence == Confidence::practice &&
                                  citation.startsWith(QStringLiteral("common practice"), Qt::CaseInsensitive)) ||
                                 (source.confidence == Confidence::memory &&
                                  citation.startsWith(QStringLiteral("from memory"), Qt::CaseInsensitive));
    citation = opening_translated(citation);
    if (says_it_already) {
        return citation;
    }
    if (citation.endsWith(QLatin1Char('.'))) {
        citation.chop(1); // the bracket ends the sentence
    }
    return Said::tr("%1 (%2)").arg(citation, confidence(source.confidence));
}

QString cost_kind(assess::CostKind kind)
{
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("names", "electricity"), QT_TRANSLATE_NOOP("names", "replacement"),
        QT_TRANSLATE_NOOP("names", "substrate"),   QT_TRANSLATE_NOOP("names", "food"),
        QT_TRANSLATE_NOOP("names", "water"),       QT_TRANSLATE_NOOP("names", "health"),
        QT_TRANSLATE_NOOP("names", "other")};
    return nth(words, kind);
}

QString group(catalog::Group group)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "land turtles"),
                                      QT_TRANSLATE_NOOP("names", "tortoises"), QT_TRANSLATE_NOOP("names", "lizards"),
                                      QT_TRANSLATE_NOOP("names", "snakes"), QT_TRANSLATE_NOOP("names", "frogs")};
    return nth(words, group);
}

QString device_kind(plan::DeviceKind kind)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "flood lamp"),
                                      QT_TRANSLATE_NOOP("names", "UV tube"),
                                      QT_TRANSLATE_NOOP("names", "compact UV lamp"),
                                      QT_TRANSLATE_NOOP("names", "mercury vapour lamp"),
                                      QT_TRANSLATE_NOOP("names", "metal halide lamp"),
                                      QT_TRANSLATE_NOOP("names", "LED strip"),
                                      QT_TRANSLATE_NOOP("names", "ceramic heater"),
                                      QT_TRANSLATE_NOOP("names", "radiant panel"),
                                      QT_TRANSLATE_NOOP("names", "heat mat"),
                                      QT_TRANSLATE_NOOP("names", "mister"),
                                      QT_TRANSLATE_NOOP("names", "fan")};
    return nth(words, kind);
}

QString fitting_kind(plan::FittingKind kind)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "water bowl"),  QT_TRANSLATE_NOOP("names", "hide"),
                                      QT_TRANSLATE_NOOP("names", "humid hide"),  QT_TRANSLATE_NOOP("names", "rock"),
                                      QT_TRANSLATE_NOOP("names", "log"),         QT_TRANSLATE_NOOP("names", "plant"),
                                      QT_TRANSLATE_NOOP("names", "feeding dish")};
    return nth(words, kind);
}

QString top_kind(plan::TopKind kind)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "screen top"), QT_TRANSLATE_NOOP("names", "glass top"),
                                      QT_TRANSLATE_NOOP("names", "board top"), QT_TRANSLATE_NOOP("names", "open top")};
    return nth(words, kind);
}

QString wall(plan::Wall wall)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "front wall"), QT_TRANSLATE_NOOP("names", "back wall"),
                                      QT_TRANSLATE_NOOP("names", "left wall"),
                                      QT_TRANSLATE_NOOP("names", "right wall")};
    return nth(words, wall);
}

QString panel(climate::Plane plane)
{
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("names", "floor"),      QT_TRANSLATE_NOOP("names", "top"),
        QT_TRANSLATE_NOOP("names", "front wall"), QT_TRANSLATE_NOOP("names", "back wall"),
        QT_TRANSLATE_NOOP("names", "left wall"),  QT_TRANSLATE_NOOP("names", "right wall")};
    return nth(words, plane);
}

QString side(plan::Side side)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "inside"), QT_TRANSLATE_NOOP("names", "outside")};
    return nth(words, side);
}

QString lining_of(plan::Wall wall, plan::Side side)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "lining inside the front wall"),
                                      QT_TRANSLATE_NOOP("names", "lining outside the front wall"),
                                      QT_TRANSLATE_NOOP("names", "lining inside the back wall"),
                                      QT_TRANSLATE_NOOP("names", "lining outside the back wall"),
                                      QT_TRANSLATE_NOOP("names", "lining inside the left wall"),
                                      QT_TRANSLATE_NOOP("names", "lining outside the left wall"),
                                      QT_TRANSLATE_NOOP("names", "lining inside the right wall"),
                                      QT_TRANSLATE_NOOP("names", "lining outside the right wall")};
    return nth(words, static_cast<std::size_t>(wall) * 2 + static_cast<std::size_t>(side));
}

QString place(plan::Place place)
{
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("names", "overhead"),          QT_TRANSLATE_NOOP("names", "under the base"),
        QT_TRANSLATE_NOOP("names", "in the bed"),        QT_TRANSLATE_NOOP("names", "on the back wall"),
        QT_TRANSLATE_NOOP("names", "on the front wall"), QT_TRANSLATE_NOOP("names", "on the left wall"),
        QT_TRANSLATE_NOOP("names", "on the right wall")};
    return nth(words, place);
}

QString sex(plan::Sex sex)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("names", "sex not known"), QT_TRANSLATE_NOOP("names", "female"),
                                      QT_TRANSLATE_NOOP("names", "male")};
    return nth(words, sex);
}

} // namespace loam::words
