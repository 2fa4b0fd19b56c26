#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"heat.basking",
     QT_TRANSLATE_NOOP("sentences",
                       "The basking spot is {range} {case}, measured {measure}. The target is {band} ({species}).")},
    {"heat.basking",
     QT_TRANSLATE_NOOP("sentences", "The basking spot is too hot {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {over_by} over it."),
     Verdict::falls_short, Direction::above},
    {"heat.basking",
     QT_TRANSLATE_NOOP("sentences", "The basking spot is too cold {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {short_by} under it."),
     Verdict::falls_short, Direction::below},
    {"heat.basking",
     QT_TRANSLATE_NOOP("sentences", "The basking spot may get too hot {case}: {range}, measured {measure}. The target "
                                    "is {band} ({species}); the upper end is {over_by} over it."),
     Verdict::tight, Direction::above},
    {"heat.basking",
     QT_TRANSLATE_NOOP("sentences", "The basking spot may get too cold {case}: {range}, measured {measure}. The target "
                                    "is {band} ({species}); the lower end is {short_by} under it."),
     Verdict::tight, Direction::below},
    {"heat.warm-side",
     QT_TRANSLATE_NOOP("sentences",
                       "The warm side is {range} {case}, measured {measure}. The target is {band} ({species}).")},
    {"heat.warm-side",
     QT_TRANSLATE_NOOP("sentences", "The warm side is too hot {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {over_by} over it."),
     Verdict::falls_short, Direction::above},
    {"heat.warm-side",
     QT_TRANSLATE_NOOP("sentences", "The warm side is too cold {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {short_by} under it."),
     Verdict::falls_short, Direction::below},
    {"heat.warm-side",
     QT_TRANSLATE_NOOP("sentences", "The warm side may get too hot {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the upper end is {over_by} over it."),
     Verdict::tight, Direction::above},
    {"heat.warm-side",
     QT_TRANSLATE_NOOP("sentences", "The warm side may get too cold {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the lower end is {short_by} under it."),
     Verdict::tight, Direction::below},
    {"heat.cool-side",
     QT_TRANSLATE_NOOP("sentences",
                       "The cool side is {range} {case}, measured {measure}. The target is {band} ({species}).")},
    {"heat.cool-side",
     QT_TRANSLATE_NOOP("sentences", "The cool side is too hot {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {over_by} over it."),
     Verdict::falls_short, Direction::above},
    {"heat.cool-side",
     QT_TRANSLATE_NOOP("sentences", "The cool side is too cold {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {short_by} under it."),
     Verdict::falls_short, Direction::below},
    {"heat.cool-side",
     QT_TRANSLATE_NOOP("sentences", "The cool side may get too hot {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the upper end is {over_by} over it."),
     Verdict::tight, Direction::above},
    {"heat.cool-side",
     QT_TRANSLATE_NOOP("sentences", "The cool side may get too cold {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the lower end is {short_by} under it."),
     Verdict::tight, Direction::below},
    {"heat.night",
     QT_TRANSLATE_NOOP("sentences",
                       "The box is {range} {case}, measured {measure}. The target is {band} ({species}).")},
    {"heat.night",
     QT_TRANSLATE_NOOP("sentences", "The box is too hot {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {over_by} over it."),
     Verdict::falls_short, Direction::above},
    {"heat.night",
     QT_TRANSLATE_NOOP("sentences", "The box is too cold {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {short_by} under it."),
     Verdict::falls_short, Direction::below},
    {"heat.night",
     QT_TRANSLATE_NOOP("sentences", "The box may get too hot {case}: {range}, measured {measure}. The target "
                                    "is {band} ({species}); the upper end is {over_by} over it."),
     Verdict::tight, Direction::above},
    {"heat.night",
     QT_TRANSLATE_NOOP("sentences", "The box may get too cold {case}: {range}, measured {measure}. The target "
                                    "is {band} ({species}); the lower end is {short_by} under it."),
     Verdict::tight, Direction::below},
    {"heat.heat-wave",
     QT_TRANSLATE_NOOP("sentences",
                       "The cool side is {range} {case}, measured {measure}. The target is {band} ({species}).")},
    {"heat.heat-wave",
     QT_TRANSLATE_NOOP("sentences", "The cool side is too hot {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {over_by} over it."),
     Verdict::falls_short, Direction::above},
    {"heat.heat-wave",
     QT_TRANSLATE_NOOP("sentences", "The cool side is too cold {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the likely value is {short_by} under it."),
     Verdict::falls_short, Direction::below},
    {"heat.heat-wave",
     QT_TRANSLATE_NOOP("sentences", "The cool side may get too hot {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the upper end is {over_by} over it."),
     Verdict::tight, Direction::above},
    {"heat.heat-wave",
     QT_TRANSLATE_NOOP("sentences", "The cool side may get too cold {case}: {range}, measured {measure}. The target is "
                                    "{band} ({species}); the lower end is {short_by} under it."),
     Verdict::tight, Direction::below},

    {"heat.not-converged",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The temperatures {case} are not known: the balance of heat did not close ({residual} were left over).")},
    {"heat.target-not-known",
     QT_TRANSLATE_NOOP("sentences",
                       "No target temperature is on file for the {zone} ({species}), so it is not judged.")},
    {"heat.course-not-known",
     QT_TRANSLATE_NOOP("sentences", "How {course} runs hour by hour can't be told: no balance was found for a step.")},
    {"heat.not-computable", QT_TRANSLATE_NOOP("sentences", "The temperatures can't be computed: {reason}.")},
    {"heat.device-saturated",
     QT_TRANSLATE_NOOP("sentences",
                       "{device} runs at its limit of {power} {case} and does not reach its set temperature.")},
};

} // namespace

Sentences heat_sentences()
{
    return rows;
}

} // namespace loam::words
