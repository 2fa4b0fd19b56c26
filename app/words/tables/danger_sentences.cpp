#include <QtGlobal>

#include "app/words/sentences.hpp"

namespace loam::words {

namespace {

constexpr Sentence rows[] = {
    {"danger.cover-near-lamp",
     QT_TRANSLATE_NOOP("sentences", "{cover} ({material}) is {distance} from {lamp}. It should be at least {clearance} "
                                    "away: {short_by} more.")},
    {"danger.cover-near-lamp",
     QT_TRANSLATE_NOOP("sentences", "{cover} ({material}) can catch fire: it is only {distance} from {lamp} and should "
                                    "be at least {clearance} away."),
     Verdict::danger},
    {"danger.cover-near-lamp",
     QT_TRANSLATE_NOOP("sentences", "How far {cover} ({material}) is from {lamp} is not known. It should be at least "
                                    "{clearance} away."),
     Verdict::not_known},
    {"danger.shell-near-lamp",
     QT_TRANSLATE_NOOP("sentences", "{lamp} is only {distance} from the {part} ({material}), which can scorch. It "
                                    "should be at least {clearance} away.")},
    {"danger.shell-near-lamp",
     QT_TRANSLATE_NOOP("sentences", "{lamp} is only {distance} from the {part} ({material}), which can catch fire. It "
                                    "should be at least {clearance} away."),
     Verdict::danger},
    {"danger.shell-near-lamp",
     QT_TRANSLATE_NOOP(
         "sentences",
         "How far {lamp} is from the {part} ({material}) is not known. It should be at least {clearance} away."),
     Verdict::not_known},
    {"danger.mat-under-bed",
     QT_TRANSLATE_NOOP("sentences", "An animal that digs down above {mat} meets {range} {case}. {regulated}")},
    {"danger.mat-under-bed",
     QT_TRANSLATE_NOOP("sentences",
                       "An animal that digs down above {mat} meets {range} {case}. That is warmer than the "
                       "{warn} it should lie on for long. {regulated}"),
     Verdict::tight},
    {"danger.mat-under-bed",
     QT_TRANSLATE_NOOP("sentences", "An animal that digs down above {mat} can be burnt: it meets {range} {case}, and "
                                    "{max} is the limit. {regulated}"),
     Verdict::danger},
    {"danger.mat-on-pane",
     QT_TRANSLATE_NOOP("sentences", "The pane at {mat} reaches {range} {case}; the limit is {max}.")},
    {"danger.mat-on-pane",
     QT_TRANSLATE_NOOP("sentences", "The pane at {mat} can burn an animal that leans on it: it reaches {range} {case}, "
                                    "and {max} is the limit."),
     Verdict::danger},
    {"danger.wall-near-lamp",
     QT_TRANSLATE_NOOP("sentences",
                       "The wall beside {lamp} can burn an animal that leans on it: {height} above the base "
                       "it reaches {range} {case}, and {max} is the limit.")},
    {"danger.climbing-reach",
     QT_TRANSLATE_NOOP("sentences",
                       "From {standing_on}, an animal reaches {reach} above the base and comes within {gap} "
                       "of {lamp}. It should stay at least {needed} away.")},
    {"danger.unguarded-lamp",
     QT_TRANSLATE_NOOP("sentences", "{lamp} burns at a touch and has no guard. From {standing_on}, an animal reaches "
                                    "{reach} above the base, {gap} from it.")},
    {"danger.sun-through-glass",
     QT_TRANSLATE_NOOP("sentences", "Sun reaches the enclosure. Behind glass it can overheat an animal within a short "
                                    "time.")},
    {"danger.sun-through-glass",
     QT_TRANSLATE_NOOP("sentences",
                       "It is not stated whether sun reaches the enclosure. Behind glass it can overheat an "
                       "animal within a short time."),
     Verdict::not_known},
    {"danger.sun-through-glass", QT_TRANSLATE_NOOP("sentences", "No sun reaches the enclosure."), Verdict::fits},
    {"danger.day-peak",
     QT_TRANSLATE_NOOP("sentences", "For a while on {course} the hottest surface gets hotter than it stays: {range}, "
                                    "{hour} after the lamps go on. The limit for animals that stay on it is {max}.")},
    {"danger.day-peak",
     QT_TRANSLATE_NOOP("sentences", "For a while on {course} a surface can burn an animal that stays on it: it reaches "
                                    "{range}, {hour} after the lamps go on, and {max} is the limit."),
     Verdict::danger},
    {"danger.lamp-dried-surface",
     QT_TRANSLATE_NOOP("sentences",
                       "Heated and dried by a lamp, the surface[ of {on}] reaches {range} {case}; the limit "
                       "for animals that stay on it is {max}.")},
    {"danger.lamp-dried-surface",
     QT_TRANSLATE_NOOP("sentences",
                       "Heated and dried by a lamp, the surface[ of {on}] can burn an animal that stays on "
                       "it: it reaches {range} {case}, and {max} is the limit."),
     Verdict::danger},
    {"danger.touch-burn",
     QT_TRANSLATE_NOOP("sentences", "The hottest surface that an animal can touch reaches {range} {case}; the limit is "
                                    "{max}.")},
    {"danger.touch-burn",
     QT_TRANSLATE_NOOP("sentences",
                       "The hottest surface that an animal can touch can burn it: {range} {case}, and {max} "
                       "is the limit."),
     Verdict::danger},
    {"danger.no-escape-from-heat",
     QT_TRANSLATE_NOOP("sentences",
                       "There is no place cool enough {case}: the coolest is {range}, and {max} is the most "
                       "an animal bears ({species}).")},
    {"danger.no-escape-from-cold",
     QT_TRANSLATE_NOOP("sentences",
                       "There is no place warm enough {case}: the warmest is {range}, and {min} is the least "
                       "an animal bears ({species}).")},
    {"danger.drill",
     QT_TRANSLATE_NOOP("sentences", "All of the box passes {limit}, what an animal bears ({species}), {case}: at worst "
                                    "after {earliest}.")},
    {"danger.drill",
     QT_TRANSLATE_NOOP("sentences", "The whole box is likely to grow too hot {case}: even the coolest place passes "
                                    "{limit}, the most an animal bears ({species})[, after {likely}], at worst after "
                                    "{earliest}."),
     Verdict::danger, Direction::above},
    {"danger.drill",
     QT_TRANSLATE_NOOP("sentences", "The whole box is likely to grow too cold {case}: even the warmest place falls "
                                    "below {limit}, the least an animal bears ({species})[, after {likely}], at worst "
                                    "after {earliest}."),
     Verdict::danger, Direction::below},
    {"danger.drill",
     QT_TRANSLATE_NOOP("sentences", "The whole box may grow too hot {case}: at worst even the coolest place passes "
                                    "{limit}, the most an animal bears ({species}), after {earliest}."),
     Verdict::tight, Direction::above},
    {"danger.drill",
     QT_TRANSLATE_NOOP("sentences", "The whole box may grow too cold {case}: at worst even the warmest place falls "
                                    "below {limit}, the least an animal bears ({species}), after {earliest}."),
     Verdict::tight, Direction::below},
    {"danger.circuit",
     QT_TRANSLATE_NOOP("sentences", "{circuit} is overloaded: {range} runs on it for hours, and {max} is the most that "
                                    "should ({rating} at {voltage}).")},
    {"danger.strip",
     QT_TRANSLATE_NOOP("sentences", "{strip} is overloaded: {range} runs on it for hours, and {max} is the most that "
                                    "should ({rating} at {voltage}).")},
    {"danger.stand",
     QT_TRANSLATE_NOOP("sentences", "{stand} is overloaded: it carries {range}, and it is rated for {max}.")},
    {"danger.uv-too-strong",
     QT_TRANSLATE_NOOP("sentences", "UV from {lamp} is too strong at {distance}, the nearest an animal comes: UV index "
                                    "{range}, and {max} is the most it should meet ({species}).")},
    {"danger.lamp-holder",
     QT_TRANSLATE_NOOP(
         "sentences",
         "{device} is too strong for its holder: {likely}, and the holder is rated for {max}. It overheats.")},
    {"danger.control-overload",
     QT_TRANSLATE_NOOP(
         "sentences",
         "{device} is too strong for its control: {likely}, and the control is rated for {max}. It overheats.")},
    {"danger.drowning",
     QT_TRANSLATE_NOOP("sentences", "The water in {fitting} is {range} deep, deeper than the smallest animal here is "
                                    "high, {max} ({species}). An animal that can't climb out drowns.")},
    {"danger.drowning",
     QT_TRANSLATE_NOOP("sentences", "How deep the water in {fitting} is is not stated. It may be deeper than the "
                                    "smallest animal here is high, {max} ({species}), which can drown it."),
     Verdict::not_known, Direction::none},
    {"danger.cool-season",
     QT_TRANSLATE_NOOP("sentences", "{animal} must not be cooled for the winter: {reason}. No rest is planned, and all "
                                    "figures are for an animal that stays warm.")},
};

} // namespace

Sentences danger_sentences()
{
    return rows;
}

} // namespace loam::words
