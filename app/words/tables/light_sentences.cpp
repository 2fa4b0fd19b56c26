#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"uv.level",
     QT_TRANSLATE_NOOP(
         "sentences",
         "UV index at the animal's back is {range} under {lamp}, at {distance}. The target is {band} ({species}).")},
    {"uv.level",
     QT_TRANSLATE_NOOP("sentences", "UV is too strong: index {range} at the animal's back under {lamp}, at {distance}. "
                                    "The target is {band} ({species})."),
     Verdict::falls_short, Direction::above},
    {"uv.level",
     QT_TRANSLATE_NOOP("sentences", "UV is too weak: index {range} at the animal's back under {lamp}, at {distance}. "
                                    "The target is {band} ({species})."),
     Verdict::falls_short, Direction::below},
    {"uv.level",
     QT_TRANSLATE_NOOP("sentences", "UV may be too strong: index {range} at the animal's back under {lamp}, at "
                                    "{distance}. The target is {band} ({species})."),
     Verdict::tight, Direction::above},
    {"uv.level",
     QT_TRANSLATE_NOOP("sentences", "UV may be too weak: index {range} at the animal's back under {lamp}, at "
                                    "{distance}. The target is {band} ({species})."),
     Verdict::tight, Direction::below},
    {"uv.not-known",
     QT_TRANSLATE_NOOP("sentences",
                       "The UV index at the animal's back is not known[ under {lamp}][ at {distance}]: {reason}.")},
    {"uv.strong-elsewhere",
     QT_TRANSLATE_NOOP("sentences", "On {standing_on} UV reaches an index of {range} under {lamp}. The most for "
                                    "{species} is {max}.")},
    {"uv.strong-elsewhere",
     QT_TRANSLATE_NOOP("sentences", "UV is too strong on {standing_on}: index {range} at the animal's back under "
                                    "{lamp}. The most for {species} is {max}."),
     Verdict::falls_short, Direction::above},
    {"uv.strong-elsewhere",
     QT_TRANSLATE_NOOP("sentences", "UV may be too strong on {standing_on}: index {range} at the animal's back under "
                                    "{lamp}. The most for {species} is {max}."),
     Verdict::tight, Direction::above},
    {"uv.nearest-not-known",
     QT_TRANSLATE_NOOP("sentences", "On {standing_on} an animal's back comes within {distance} of {lamp}, nearer than "
                                    "its UV readings reach. How strong it is there is not known.")},
    {"uv.read-after-age",
     QT_TRANSLATE_NOOP("sentences", "The UV of {lamp} was read after {burnt_when_read} of burning, but it is said to "
                                    "have burnt {burnt} so far. It is taken as just read.")},
    {"uv.no-lamp", QT_TRANSLATE_NOOP("sentences", "This species needs UV ({species}), and no lamp here gives any.")},
    {"uv.blocked", QT_TRANSLATE_NOOP("sentences", "{cover} keeps the UV of {lamp} from the animal.")},
    {"uv.not-needed",
     QT_TRANSLATE_NOOP(
         "sentences",
         "No species here has a UV target on file, and {lamp} gives UV[: index {likely} at the animal's back].")},
    {"uv.no-shade",
     QT_TRANSLATE_NOOP(
         "sentences",
         "There is hardly any shade from the UV of {lamp}: only {likely:percent} of the floor lies out of it.")},
    {"uv.no-shade",
     QT_TRANSLATE_NOOP("sentences", "There may be too little shade from the UV of {lamp}: only {likely:percent} of the "
                                    "floor surely lies out of it."),
     Verdict::tight, Direction::above},
    {"uv.compact-caution",
     QT_TRANSLATE_NOOP("sentences", "{lamp} is a compact UV lamp. Its light is strong close by and weak a little "
                                    "further: measure it before you rely on it.")},
    {"photoperiod.hours", QT_TRANSLATE_NOOP("sentences", "Light a day: {likely}. The target is {band} ({species}).")},
    {"photoperiod.hours",
     QT_TRANSLATE_NOOP("sentences", "The day is too long: {likely} of light. The target is {band} ({species})."),
     Verdict::falls_short, Direction::above},
    {"photoperiod.hours",
     QT_TRANSLATE_NOOP("sentences", "The day is too short: {likely} of light. The target is {band} ({species})."),
     Verdict::falls_short, Direction::below},
    {"photoperiod.not-stated", QT_TRANSLATE_NOOP("sentences", "It is not stated when the lamps go on and off.")},
    {"photoperiod.light-at-night", QT_TRANSLATE_NOOP("sentences", "{lamp} shines at night. Animals need dark nights.")},
    {"photoperiod.bad-times",
     QT_TRANSLATE_NOOP("sentences", "The lamps go on at {on} and off at {off}: that is no day.")},
    {"photoperiod.sky-not-known",
     QT_TRANSLATE_NOOP(
         "sentences",
         "The hours of light should follow the sky, and can't: {reason}. They are counted as the same on every day.")},
};

} // namespace

Sentences light_sentences()
{
    return rows;
}

} // namespace loam::words
