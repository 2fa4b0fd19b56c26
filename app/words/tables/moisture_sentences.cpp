#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"humidity.level",
     QT_TRANSLATE_NOOP("sentences", "Humidity near the ground is {range:percent} {case}. The target is {band:percent} "
                                    "({species}).[ Misting counted in: {misting}.]")},
    {"humidity.level",
     QT_TRANSLATE_NOOP("sentences", "It is too damp {case}: {range:percent} near the ground. The target is "
                                    "{band:percent} ({species}); the likely value is {over_by:percent} over it."),
     Verdict::falls_short, Direction::above},
    {"humidity.level",
     QT_TRANSLATE_NOOP(
         "sentences", "It is too dry {case}: {range:percent} near the ground. The target is {band:percent} "
                      "({species}); the likely value is {short_by:percent} under it.[ Misting counted in: {misting}.]"),
     Verdict::falls_short, Direction::below},
    {"humidity.level",
     QT_TRANSLATE_NOOP("sentences", "It may get too damp {case}: {range:percent} near the ground. The target is "
                                    "{band:percent} ({species}); the upper end is {over_by:percent} over it."),
     Verdict::tight, Direction::above},
    {"humidity.level",
     QT_TRANSLATE_NOOP("sentences",
                       "It may get too dry {case}: {range:percent} near the ground. The target is {band:percent} "
                       "({species}); the lower end is {short_by:percent} under it.[ Misting counted in: {misting}.]"),
     Verdict::tight, Direction::below},
    {"humidity.not-known", QT_TRANSLATE_NOOP("sentences", "The humidity {case} is not known.")},
    {"humidity.target-not-known",
     QT_TRANSLATE_NOOP("sentences", "No target humidity is on file ({species}), so it is not judged.")},
    {"humidity.condensation",
     QT_TRANSLATE_NOOP("sentences", "Water condenses on the coldest pane {case}: the pane is at {pane}[, and the air "
                                    "gives off water below {dew_point}].")},
    {"humidity.no-dry-retreat",
     QT_TRANSLATE_NOOP(
         "sentences",
         "There is no dry place to rest {season}, by day or by night: humidity on the driest ground is about "
         "{likely:percent}, and {max:percent} is the most that suits ({species}). Mould grows in such air, "
         "and shell, skin and lungs suffer.")},
    {"humidity.misting-not-stated",
     QT_TRANSLATE_NOOP("sentences",
                       "How much is misted is not stated, so the humidity is only known within wide limits.")},
    {"moisture.bed-gains-water",
     QT_TRANSLATE_NOOP("sentences", "More is misted than dries off: the bed gets wetter by {by}, until it is sodden.")},
    {"water.bowl-small",
     QT_TRANSLATE_NOOP("sentences", "{fitting} is too small: its {side_name} is {side}, and {min} is what the largest "
                                    "animal needs to drink and bathe in it ({species}).")},
    {"water.bowl-small",
     QT_TRANSLATE_NOOP("sentences", "{fitting} may be too small: its {side_name} is {side}, and a large animal needs "
                                    "{min} to drink and bathe in it ({species})."),
     Verdict::tight, Direction::below},
    {"water.bowl-deep",
     QT_TRANSLATE_NOOP("sentences",
                       "The water in {fitting} is too deep: {range}. At most {max} is asked for ({species}).")},
    {"water.bowl-shallow",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The water in {fitting} is too shallow to bathe in: {range}. At least {min} is asked for ({species}).")},
    {"water.no-bowl",
     QT_TRANSLATE_NOOP("sentences", "There is no water bowl, and this species needs one ({species}).")},
    {"water.not-treated",
     QT_TRANSLATE_NOOP("sentences",
                       "The tap water is not treated, and chlorine harms the skin of an amphibian ({species}).")},
    {"water.filter-life-not-known",
     QT_TRANSLATE_NOOP("sentences", "How much water a cartridge is good for is not stated, so how often it is due is "
                                    "not known. {likely} pass it in a day.")},
};

} // namespace

Sentences moisture_sentences()
{
    return rows;
}

} // namespace loam::words
