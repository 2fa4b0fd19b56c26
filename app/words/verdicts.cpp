#include "app/words/verdicts.hpp"

#include <QCoreApplication>

#include <array>
#include <utility>

namespace loam::words {

namespace {

// The translator finds these texts under "verdicts".
struct Said {
    Q_DECLARE_TR_FUNCTIONS(verdicts)
};

const char* too(Direction direction, Subject subject)
{
    const bool above = direction == Direction::above;
    switch (subject) {
    case Subject::temperature:
        return above ? QT_TRANSLATE_NOOP("verdicts", "too hot") : QT_TRANSLATE_NOOP("verdicts", "too cold");
    case Subject::humidity:
        return above ? QT_TRANSLATE_NOOP("verdicts", "too damp") : QT_TRANSLATE_NOOP("verdicts", "too dry");
    case Subject::space:
        return above ? QT_TRANSLATE_NOOP("verdicts", "too large") : QT_TRANSLATE_NOOP("verdicts", "too small");
    case Subject::uv:
        return above ? QT_TRANSLATE_NOOP("verdicts", "too strong") : QT_TRANSLATE_NOOP("verdicts", "too weak");
    case Subject::light:
        return above ? QT_TRANSLATE_NOOP("verdicts", "too long") : QT_TRANSLATE_NOOP("verdicts", "too short");
    case Subject::load:
        return above ? QT_TRANSLATE_NOOP("verdicts", "too much load")
                     : QT_TRANSLATE_NOOP("verdicts", "too little load");
    case Subject::company:
        return above ? QT_TRANSLATE_NOOP("verdicts", "too many") : QT_TRANSLATE_NOOP("verdicts", "too few");
    case Subject::plain:
        return above ? QT_TRANSLATE_NOOP("verdicts", "too much") : QT_TRANSLATE_NOOP("verdicts", "too little");
    }
    return "";
}

constexpr std::array<std::pair<std::string_view, Subject>, 24> subjects{{
    {"danger.mat-under-bed", Subject::temperature},
    {"danger.mat-on-pane", Subject::temperature},
    {"danger.wall-near-lamp", Subject::temperature},
    {"danger.lamp-dried-surface", Subject::temperature},
    {"danger.touch-burn", Subject::temperature},
    {"danger.no-escape-from-heat", Subject::temperature},
    {"danger.no-escape-from-cold", Subject::temperature},
    {"danger.sun-through-glass", Subject::temperature},
    {"danger.circuit", Subject::load},
    {"danger.strip", Subject::load},
    {"danger.stand", Subject::load},
    {"danger.uv-too-strong", Subject::uv},
    {"space.hides-too-few", Subject::company},
    {"space.", Subject::space},
    {"animals.", Subject::company},
    {"substrate.too-shallow", Subject::plain},
    {"stand.", Subject::load},
    {"heat.", Subject::temperature},
    {"humidity.", Subject::humidity},
    {"uv.", Subject::uv},
    {"photoperiod.", Subject::light},
    {"circuit.", Subject::load},
    {"strip.outlets", Subject::company},
    {"strip.", Subject::load},
}};

} // namespace

QString verdict(Verdict verdict)
{
    switch (verdict) {
    case Verdict::fits:
        return Said::tr("fits");
    case Verdict::tight:
        return Said::tr("tight");
    case Verdict::falls_short:
        return Said::tr("falls short");
    case Verdict::danger:
        return Said::tr("danger");
    case Verdict::not_known:
        return Said::tr("not known");
    }
    return {};
}

QString direction(Direction direction, Subject subject)
{
    return direction == Direction::none ? QString() : Said::tr(too(direction, subject));
}

QString verdict(const Judgement& judgement, Subject subject)
{
    QString word = verdict(judgement.verdict);
    const bool has_direction = judgement.direction != Direction::none && judgement.verdict != Verdict::fits &&
                               judgement.verdict != Verdict::not_known;
    if (!has_direction) {
        return word;
    }
    const QString where = direction(judgement.direction, subject);
    // An end of the range misses the target, not the likely value: it may come to that.
    return judgement.verdict == Verdict::tight ? Said::tr("%1 (may be %2)").arg(word, where)
                                               : Said::tr("%1 (%2)").arg(word, where);
}

Subject subject_of(std::string_view finding_code)
{
    for (const auto& [prefix, subject] : subjects) {
        if (!prefix.empty() && finding_code.substr(0, prefix.size()) == prefix) {
            return subject;
        }
    }
    return Subject::plain;
}

} // namespace loam::words
