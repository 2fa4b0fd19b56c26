#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"too-large", QT_TRANSLATE_NOOP("sentences", "The file is too large: {1:bytes}, and at most {0:bytes} are read.")},
    {"empty", QT_TRANSLATE_NOOP("sentences", "The file is empty.")},
    {"invalid-utf8",
     QT_TRANSLATE_NOOP("sentences", "The text is not valid UTF-8 at line {0}, column {1}. Save it as UTF-8.")},
    {"syntax",
     QT_TRANSLATE_NOOP(
         "sentences",
         "This is not valid JSON at line {0}, column {1}. Look for a missing comma, quote or brace just before.")},
    {"truncated",
     QT_TRANSLATE_NOOP("sentences", "The file ends too early, at line {0}, column {1}. A part of it is missing.")},
    {"not-finite",
     QT_TRANSLATE_NOOP("sentences", "The number at line {0}, column {1} is not an ordinary number, or far too large.")},
    {"too-deep",
     QT_TRANSLATE_NOOP("sentences", "Lists and objects are nested too deeply; at most {0} levels are read.")},
    {"too-many-values", QT_TRANSLATE_NOOP("sentences", "There are too many values; at most {0} are read.")},
    {"duplicate-key", QT_TRANSLATE_NOOP("sentences", "“{0}” stands here twice. Keep one of them.")},
    {"unknown-key",
     QT_TRANSLATE_NOOP("sentences",
                       "“{0}” is not a known key.[ Did you mean “{1}”?] A key of your own must begin with “x_”.")},
    {"missing", QT_TRANSLATE_NOOP("sentences", "“{0}” is missing.")},
    {"wrong-type", QT_TRANSLATE_NOOP("sentences", "Here stands {1:type}, and {0:type} is needed.")},
    {"not-whole", QT_TRANSLATE_NOOP("sentences", "{0} is not a whole number.")},
    {"below-minimum", QT_TRANSLATE_NOOP("sentences", "{0} is too small. It must lie between {1} and {2}.")},
    {"not-above", QT_TRANSLATE_NOOP("sentences", "{0} is too small. It must be more than {1} and at most {2}.")},
    {"above-maximum", QT_TRANSLATE_NOOP("sentences", "{0} is too large. It must lie between {1} and {2}.")},
    {"not-plain-decimal", QT_TRANSLATE_NOOP("sentences", "{0} is not a plain decimal. Write it in digits with a point, "
                                                         "without an exponent and with at most 12 decimals.")},
    {"too-short",
     QT_TRANSLATE_NOOP("sentences", "This text is too short: {0} characters, and at least {1} are needed.")},
    {"too-long", QT_TRANSLATE_NOOP("sentences", "This text is too long: {0} characters, and at most {1} are allowed.")},
    {"pattern", QT_TRANSLATE_NOOP("sentences", "“{0}” does not have the right form. It must be {1:pattern}.")},
    {"control-character",
     QT_TRANSLATE_NOOP("sentences", "This text holds a control character, such as a line break. Take it out.")},
    {"unknown-choice",
     QT_TRANSLATE_NOOP("sentences", "“{0}” is not one of the choices.[ Did you mean “{2}”?] The choices are: {1}.")},
    {"repeated-choice", QT_TRANSLATE_NOOP("sentences", "“{0}” stands in this list twice. Once is enough.")},
    {"wrong-constant", QT_TRANSLATE_NOOP("sentences", "Here must stand {0}, and there is {1}.")},
    {"too-few-items",
     QT_TRANSLATE_NOOP("sentences", "The list has too few entries: {0}, and at least {1} are needed.")},
    {"too-many-items",
     QT_TRANSLATE_NOOP("sentences", "The list has too many entries: {0}, and at most {1} are allowed.")},
    {"more-problems",
     QT_TRANSLATE_NOOP("sentences", "There are more problems that are not listed: {0}. Mend these first.")},

    {"newer-version",
     QT_TRANSLATE_NOOP("sentences",
                       "The file is of version {0}, and this program knows up to version {1}. Use a newer Loamstead.")},
    {"duplicate-id",
     QT_TRANSLATE_NOOP("sentences",
                       "The id “{0}” stands here a second time[; the first is at {1}]. Each needs its own.")},
    {"unknown-reference", QT_TRANSLATE_NOOP("sentences", "There is no {0} with the id “{1}” in the plan.")},
    {"two-panels", QT_TRANSLATE_NOOP("sentences", "There are two panels for the {0} wall. The first is {1}: remove one "
                                                  "of them, or name another wall.")},
    {"replaces-itself", QT_TRANSLATE_NOOP("sentences", "An enclosure can't take over from itself ({0}).")},
    {"feeding-cycle", QT_TRANSLATE_NOOP("sentences", "These strips feed each other in a circle: {0}.")},
    {"needed-here", QT_TRANSLATE_NOOP("sentences", "“{0}” is missing. With “{1}” it must be given.")},
    {"not-for-control",
     QT_TRANSLATE_NOOP("sentences",
                       "“{0}” means nothing for the control “{1}”. Take it out, or choose another control.")},
    {"distances-fall", QT_TRANSLATE_NOOP("sentences", "The distances must rise: {0} comes after {1}.")},
    {"outside-box",
     QT_TRANSLATE_NOOP("sentences",
                       "“{0}” lies wholly outside the box. Coordinates count from the front-left corner of the base.")},
    {"bed-fills-box", QT_TRANSLATE_NOOP("sentences", "The bed is {0} m deep, and the box is only {1} m high.")},
    {"no-day-or-night", QT_TRANSLATE_NOOP("sentences", "The lights go on and off at the same time, {0}.")},
    {"unknown-currency",
     QT_TRANSLATE_NOOP("sentences",
                       "“{0}” is not a known currency. Write the three letters of ISO 4217, such as USD or EUR.")},
};

} // namespace

Sentences file_problem_sentences()
{
    return rows;
}

} // namespace loam::words
